package slackwater.report;

import java.util.Locale;
import slackwater.analysis.Figures;

/** What a picture is measured with: rulers in centimetres, a bar of 10 cm, and the colours' bar in its unit. */
final class Rulers {
    private static final double[] STEPS_M = {0.05, 0.10, 0.20, 0.50, 1};
    private static final double LEAST_STEP_UNITS = 36;
    private static final double BAR_M = 0.10;
    private static final double LEAST_TICK_UNITS = 14;

    private final Plane plane;
    private final double width;
    private final double height;
    private final Scale scale;
    private final Colouring colouring;
    private final StringBuilder svg = new StringBuilder();

    Rulers(Plane plane, double width, double height, Scale scale, Colouring colouring) {
        this.plane = plane;
        this.width = width;
        this.height = height;
        this.scale = scale;
        this.colouring = colouring;
    }

    String draw(String id) {
        double step = step();
        for (double at = 0; at <= width / scale.unitsPerM() + 1e-9; at += step) {
            double x = at * scale.unitsPerM();
            add("<path class=\"tick\" d=\"M%.1f %.1fv4\"/><text class=\"number\" x=\"%.1f\" y=\"%.1f\""
                    + " text-anchor=\"middle\">%s</text>", x, height, x, height + 15, Figures.cm(at));
        }
        for (double at = 0; at <= height / scale.unitsPerM() + 1e-9; at += step) {
            double y = height - at * scale.unitsPerM();
            add("<path class=\"tick\" d=\"M-4 %.1fh4\"/><text class=\"number\" x=\"-7\" y=\"%.1f\""
                    + " text-anchor=\"end\">%s</text>", y, y + 3.5, Figures.cm(at));
        }
        words();
        scaleBar();
        colourBar(id);
        return svg.toString();
    }

    private double step() {
        for (double step : STEPS_M) {
            if (step * scale.unitsPerM() >= LEAST_STEP_UNITS) {
                return step;
            }
        }
        return STEPS_M[STEPS_M.length - 1];
    }

    private void words() {
        String across = plane == Plane.SIDE ? "from front to back, cm" : "from left to right, cm";
        String up = plane == Plane.LEVEL ? "from front to back, cm" : "height, cm";
        add("<text class=\"axis\" x=\"0\" y=\"%.1f\">%s</text>", height + 33, across);
        add("<text class=\"axis\" transform=\"translate(-38 %.1f) rotate(-90)\">%s</text>", height, up);
    }

    private void scaleBar() {
        double length = BAR_M * scale.unitsPerM();
        add("<path class=\"bar\" d=\"M%.1f %.1fv-5m0 2.5h%.1fm0 -2.5v5\"/>", width - length, height + 31, length);
        add("<text class=\"axis\" x=\"%.1f\" y=\"%.1f\" text-anchor=\"end\">10 cm</text>", width - length - 6,
                height + 33);
    }

    private void colourBar(String id) {
        double x = width + 22;
        add("<rect class=\"frame\" x=\"%.1f\" y=\"0\" width=\"14\" height=\"%.1f\" style=\"fill:url(#%s-colours)\"/>",
                x, height, id);
        double free = Double.POSITIVE_INFINITY;
        for (double value : colouring.ticks()) {
            double y = height * (1 - colouring.fraction(value));
            boolean top = value == colouring.top();
            if (value <= colouring.top() && free - y >= LEAST_TICK_UNITS && (top || y >= LEAST_TICK_UNITS)) {
                add("<path class=\"tick\" d=\"M%.1f %.1fh4\"/><text class=\"number\" x=\"%.1f\" y=\"%.1f\">%s%s</text>",
                        x + 14, y, x + 21, y + 3.5,
                        Figures.plain(value * 100), top ? colouring.over() : "");
                free = y;
            }
        }
        add("<text class=\"axis\" x=\"%.1f\" y=\"-8\">%s</text>", x, colouring.unit());
    }

    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values));
    }
}
