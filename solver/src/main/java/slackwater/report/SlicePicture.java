package slackwater.report;

import java.util.Locale;
import slackwater.analysis.Figures;
import slackwater.analysis.StillWater;
import slackwater.geometry.Vec3;
import slackwater.scenario.Tank;

/** One slice as SVG: values in colour, still water hatched, rock and sand, arrows of the mean flow, and the frame. */
final class SlicePicture {
    private static final double LEFT = 58;
    private static final double TOP = 22;
    private static final double RIGHT = 96;
    private static final double BOTTOM = 52;
    private static final int ARROWS_ALONG = 22;
    private static final double LEAST_SHOWN_M_PER_S = 0.002;

    private final Slice slice;
    private final Scale scale;
    private final Colouring colouring;
    private final float[] stillProbability;
    private final String id;
    private final double width;
    private final double height;
    private final StringBuilder svg = new StringBuilder();

    /**
     * @param stillProbability what the hatching follows, one value a cell
     * @param id a word that no other picture on the page has
     */
    SlicePicture(Slice slice, Scale scale, Colouring colouring, float[] stillProbability, String id) {
        this.slice = slice;
        this.scale = scale;
        this.colouring = colouring;
        this.stillProbability = stillProbability;
        this.id = id;
        this.width = slice.widthM() * scale.unitsPerM();
        this.height = slice.heightM() * scale.unitsPerM();
    }

    /** @param label what the picture shows, for those who cannot see it */
    String draw(String label, Tank tank, Marks marks) {
        double wholeWidth = LEFT + width + RIGHT;
        double wholeHeight = TOP + height + BOTTOM;
        add("<svg role=\"img\" aria-label=\"%s\" width=\"%.0f\" viewBox=\"0 0 %.0f %.0f\">", Html.escape(label),
                wholeWidth, wholeWidth, wholeHeight);
        definitions();
        add("<g transform=\"translate(%.0f %.0f)\">", LEFT, TOP);
        add("<image width=\"%.1f\" height=\"%.1f\" preserveAspectRatio=\"none\" href=\"%s\"/>", width, height,
                new SliceImage(slice, colouring).address());
        stillWater();
        solids(tank);
        arrows();
        add("<rect class=\"frame\" width=\"%.1f\" height=\"%.1f\"/>", width, height);
        svg.append(marks.on(slice, scale));
        svg.append(new Rulers(slice.plane(), width, height, scale, colouring).draw(id));
        return svg.append("</g></svg>\n").toString();
    }

    private void definitions() {
        add("<defs><pattern id=\"%s-hatch\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><path d=\"M0 0V6\" class=\"hatch\"/></pattern>", id);
        add("<linearGradient id=\"%s-colours\" x1=\"0\" y1=\"1\" x2=\"0\" y2=\"0\">", id);
        for (int stop = 0; stop <= 32; stop++) {
            add("<stop offset=\"%.5f\" stop-color=\"%s\"/>", stop / 32.0, Cividis.css(stop / 32.0));
        }
        svg.append("</linearGradient></defs>");
    }

    private void stillWater() {
        patch((column, row) -> stillProbability[slice.cell(column, row)] > StillWater.SURELY,
                "fill=\"url(#" + id + "-hatch)\" class=\"still\"");
        patch((column, row) -> stillProbability[slice.cell(column, row)] > StillWater.LIKELY,
                "class=\"likely-still\"");
    }

    private void solids(Tank tank) {
        patch((column, row) -> !slice.flow().fluid()[slice.cell(column, row)], "class=\"rock\"");
        double cellM = slice.flow().grid().cellSizeM();
        long sandRows = Math.round(tank.sandDepthM() / cellM);
        if (slice.plane() != Plane.LEVEL && sandRows > 0) {
            double depth = sandRows * cellM * scale.unitsPerM();
            add("<rect class=\"sand\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", height - depth, width, depth);
        }
    }

    private void patch(Outline.Patch patch, String attributes) {
        String path = new Outline(slice.columns(), slice.rows(), patch)
                .path(scale.unitsPerM() * slice.flow().grid().cellSizeM());
        if (!path.isEmpty()) {
            add("<path %s d=\"%s\"/>", attributes, path);
        }
    }

    private void arrows() {
        double cellUnits = scale.unitsPerM() * slice.flow().grid().cellSizeM();
        double spacing = scale.unitsPerM() * longestM() / ARROWS_ALONG;
        int stride = Math.max(1, (int) Math.round(spacing / cellUnits));
        svg.append("<g class=\"flow\">");
        for (int row = stride / 2; row < slice.rows(); row += stride) {
            for (int column = stride / 2; column < slice.columns(); column += stride) {
                int cell = slice.cell(column, row);
                if (slice.flow().fluid()[cell]) {
                    Vec3 velocity = slice.velocity(cell);
                    arrow((column + 0.5) * cellUnits, height - (row + 0.5) * cellUnits, velocity.x(), velocity.y(),
                            stride * cellUnits);
                }
            }
        }
        svg.append("</g>");
    }

    private double longestM() {
        return Math.max(slice.flow().grid().nx(), Math.max(slice.flow().grid().ny(), slice.flow().grid().nz()))
                * slice.flow().grid().cellSizeM();
    }

    /** A slim arrow centred on a place; its length grows with the root of the speed, so that slow water shows. */
    private void arrow(double x, double y, double across, double up, double room) {
        double speed = Math.hypot(across, up);
        if (speed < LEAST_SHOWN_M_PER_S) {
            return;
        }
        double length = room * 0.95 * Math.sqrt(Math.min(1, speed / scale.topMPerS()));
        double half = length / 2;
        double barb = Math.max(1.6, length * 0.17);
        double head = Math.min(length * 0.45, 2.4 * barb);
        add("<path transform=\"translate(%.1f %.1f) rotate(%.0f)\""
                + " d=\"M%.1f -.6H%.1fV-%.1fL%.1f 0L%.1f %.1fV.6H%.1fZ\"/>",
                x, y, -Math.toDegrees(Math.atan2(up, across)), -half, half - head, barb, half, half - head, barb,
                -half);
    }

    private void add(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values));
    }

    /** The speed that ends the colours, in words. */
    static String top(Scale scale) {
        return Figures.limitCmPerS(scale.topMPerS()) + " cm/s";
    }
}
