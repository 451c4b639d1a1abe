package slackwater.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A small plot as SVG: ours as lines, published values as points. Colours by Okabe and Ito, for every eye. */
final class Plot {
    /**
     * An axis.
     *
     * @param label what is drawn, with its unit
     * @param logarithmic decades instead of even steps
     */
    record Axis(String label, boolean logarithmic) {
        static Axis even(String label) {
            return new Axis(label, false);
        }

        static Axis decades(String label) {
            return new Axis(label, true);
        }

        double scaled(double value) {
            return logarithmic ? Math.log10(value) : value;
        }
    }

    private record Series(String name, double[] x, double[] y, boolean points) {
    }

    private static final String[] LINES = {"#0072b2", "#d55e00", "#009e73", "#cc79a7"};
    private static final String[] DASHES = {"", "7 3", "2 3", "9 3 2 3"};
    private static final int WIDTH = 560;
    private static final int HEIGHT = 360;
    private static final int LEFT = 70;
    private static final int RIGHT = 15;
    private static final int TOP = 46;
    private static final int BOTTOM = 46;

    private final String title;
    private final Axis xAxis;
    private final Axis yAxis;
    private final List<Series> all = new ArrayList<>();
    private final StringBuilder out = new StringBuilder();

    Plot(String title, Axis xAxis, Axis yAxis) {
        this.title = title;
        this.xAxis = xAxis;
        this.yAxis = yAxis;
    }

    Plot line(String name, double[] x, double[] y) {
        all.add(new Series(name, x.clone(), y.clone(), false));
        return this;
    }

    Plot points(String name, double[] x, double[] y) {
        all.add(new Series(name, x.clone(), y.clone(), true));
        return this;
    }

    String svg() {
        out.setLength(0);
        out.append(String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" \
                font-family="sans-serif" font-size="12">
                <title>%s</title>
                <rect width="%d" height="%d" fill="#ffffff"/>
                """, WIDTH, HEIGHT, WIDTH, HEIGHT, escape(title), WIDTH, HEIGHT));
        Scale across = Scale.of(all.stream().map(Series::x).toList(), xAxis, LEFT, WIDTH - RIGHT);
        Scale up = Scale.of(all.stream().map(Series::y).toList(), yAxis, HEIGHT - BOTTOM, TOP);
        frame(across, up);
        int lines = 0;
        int marks = 0;
        for (int n = 0; n < all.size(); n++) {
            Series series = all.get(n);
            if (series.points) {
                points(series, across, up, marks++, n);
            } else {
                line(series, across, up, lines++, n);
            }
        }
        return out.append("</svg>\n").toString();
    }

    private void frame(Scale across, Scale up) {
        add("<rect x='%d' y='%d' width='%d' height='%d' fill='none' stroke='#888888'/>", LEFT, TOP,
                WIDTH - RIGHT - LEFT, HEIGHT - BOTTOM - TOP);
        for (double tick : across.ticks()) {
            double x = across.place(tick);
            add("<path d='M%.1f %d V%d' stroke='#dddddd'/>", x, TOP, HEIGHT - BOTTOM);
            text(x, HEIGHT - BOTTOM + 16, "middle", "", Digits.of(tick));
        }
        for (double tick : up.ticks()) {
            double y = up.place(tick);
            add("<path d='M%d %.1f H%d' stroke='#dddddd'/>", LEFT, y, WIDTH - RIGHT);
            text(LEFT - 6, y + 4, "end", "", Digits.of(tick));
        }
        text((LEFT + WIDTH - RIGHT) / 2.0, HEIGHT - 10, "middle", "", xAxis.label);
        double middle = (TOP + HEIGHT - BOTTOM) / 2.0;
        text(16, middle, "middle", String.format(Locale.ROOT, " transform='rotate(-90 16 %.1f)'", middle),
                yAxis.label);
    }

    private void line(Series series, Scale across, Scale up, int style, int place) {
        StringBuilder path = new StringBuilder();
        boolean pen = false;
        for (int n = 0; n < series.x.length; n++) {
            double x = across.place(series.x[n]);
            double y = up.place(series.y[n]);
            if (Double.isFinite(x) && Double.isFinite(y)) {
                path.append(String.format(Locale.ROOT, "%s%.1f %.1f", pen ? " L" : " M", x, y));
                pen = true;
            } else {
                pen = false;
            }
        }
        String look = String.format(Locale.ROOT, "fill='none' stroke='%s' stroke-width='2' stroke-dasharray='%s'",
                LINES[style % LINES.length], DASHES[style % DASHES.length]);
        add("<path d='%s' %s/>", path.toString().trim(), look);
        add("<path d='M%d %d h24' %s/>", legendX(place), legendY(place), look);
        text(legendX(place) + 30, legendY(place) + 4, "start", "", series.name);
    }

    private void points(Series series, Scale across, Scale up, int style, int place) {
        for (int n = 0; n < series.x.length; n++) {
            mark(across.place(series.x[n]), up.place(series.y[n]), style);
        }
        mark(legendX(place) + 12, legendY(place), style);
        text(legendX(place) + 30, legendY(place) + 4, "start", "", series.name);
    }

    private void mark(double x, double y, int style) {
        if (style == 0) {
            add("<circle cx='%.1f' cy='%.1f' r='3.5' fill='#ffffff' stroke='#000000' stroke-width='1.2'/>", x, y);
        } else {
            add("<path d='M%.1f %.1f l4 7 h-8 z' fill='#ffffff' stroke='#000000' stroke-width='1.2'/>", x, y - 4);
        }
    }

    private static int legendX(int place) {
        return LEFT + place % 2 * (WIDTH - LEFT - RIGHT) / 2;
    }

    private static int legendY(int place) {
        return 14 + place / 2 * 18;
    }

    private void text(double x, double y, String anchor, String more, String words) {
        add("<text x='%.1f' y='%.1f' text-anchor='%s'%s>%s</text>", x, y, anchor, more, escape(words));
    }

    private void add(String form, Object... values) {
        out.append(String.format(Locale.ROOT, form, values)).append('\n');
    }

    private static String escape(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
