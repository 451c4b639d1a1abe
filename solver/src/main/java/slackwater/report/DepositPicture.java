package slackwater.report;

import java.util.Locale;
import slackwater.analysis.ClearanceWords;
import slackwater.detritus.Fate;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.scenario.Scenario;

/** Where something comes to lie, seen from above: how much more than if it lay evenly all over the tank. */
final class DepositPicture {
    private static final double LEFT = 58;
    private static final double TOP = 22;
    private static final double RIGHT = 96;
    private static final double BOTTOM = 52;
    /** Grains are few: each is spread over a square of about this width, metres. */
    private static final double SPREAD_M = 0.04;
    /** Colours end at this many times the even share. */
    private static final double MOST_TIMES = 4;
    private static final double[] TIMES = {0, 0.5, 1, 2, 3, 4};
    private static final double PER_CENT = 100;

    private final Fate fate;
    private final Scenario scenario;
    private final FlowStatistics flow;
    private final Grid grid;

    DepositPicture(Fate fate, Scenario scenario, FlowStatistics flow) {
        this.fate = fate;
        this.scenario = scenario;
        this.flow = flow;
        this.grid = flow.grid();
    }

    String draw() {
        Scale scale = Scale.of(flow);
        Slice above = Slice.at(Plane.LEVEL, scenario.tank().waterLevelM(), flow);
        Colouring colouring = new Colouring(times(above), MOST_TIMES / PER_CENT, true, ticks(), "times", "+");
        String id = "deposit-" + fate.grain().name().replaceAll("[^A-Za-z0-9]", "-");
        double width = above.widthM() * scale.unitsPerM();
        double height = above.heightM() * scale.unitsPerM();
        String caption = "Where " + fate.grain().name() + " " + fate.from() + " lies after "
                + ClearanceWords.time(fate.last().timeS()) + ", seen from above; the front pane is"
                + " at the lower edge. Colour: how many times as much as if all of it lay evenly over the tank, dark"
                + " blue for nothing to yellow; grey lines: rock.";
        String rock = new Outline(grid.nx(), grid.ny(), this::hasRock)
                .path(scale.unitsPerM() * grid.cellSizeM());
        return String.format(Locale.ROOT, "<figure>\n<svg role=\"img\" aria-label=\"%s\" width=\"%.0f\""
                        + " viewBox=\"0 0 %.0f %.0f\">%s<g transform=\"translate(%.0f %.0f)\"><image width=\"%.1f\""
                        + " height=\"%.1f\" preserveAspectRatio=\"none\" href=\"%s\"/>", Html.escape(caption),
                LEFT + width + RIGHT, LEFT + width + RIGHT, TOP + height + BOTTOM, colours(id), LEFT, TOP, width,
                height, new SliceImage(above, colouring).address())
                + (rock.isEmpty() ? "" : "<path class=\"rock-line\" d=\"" + rock + "\"/>")
                + String.format(Locale.ROOT, "<rect class=\"frame\" width=\"%.1f\" height=\"%.1f\"/>", width, height)
                + new Marks(scenario).on(above, scale)
                + new Rulers(Plane.LEVEL, width, height, scale, colouring).draw(id)
                + "</g></svg>\n<figcaption>" + Html.escape(caption) + "</figcaption>\n</figure>\n";
    }

    private static double[] ticks() {
        double[] ticks = TIMES.clone();
        for (int n = 0; n < ticks.length; n++) {
            ticks[n] /= PER_CENT;
        }
        return ticks;
    }

    private static String colours(String id) {
        StringBuilder svg = new StringBuilder("<defs><linearGradient id=\"" + id
                + "-colours\" x1=\"0\" y1=\"1\" x2=\"0\" y2=\"0\">");
        for (int stop = 0; stop <= 32; stop++) {
            svg.append(String.format(Locale.ROOT, "<stop offset=\"%.5f\" stop-color=\"%s\"/>", stop / 32.0,
                    Cividis.css(stop / 32.0)));
        }
        return svg.append("</linearGradient></defs>").toString();
    }

    private boolean hasRock(int column, int row) {
        long sand = Math.round(scenario.tank().sandDepthM() / grid.cellSizeM());
        for (int k = (int) sand; k < grid.nz(); k++) {
            if (!flow.fluid()[grid.index(column, row, k)]) {
                return true;
            }
        }
        return false;
    }

    /** Times the even share, over 100, at the cells of a slice. */
    private float[] times(Slice above) {
        double[] columns = new double[grid.nx() * grid.ny()];
        for (int cell = 0; cell < grid.cells(); cell++) {
            columns[cell % columns.length] += fate.depositPerM2()[cell];
        }
        double areaM2 = columns.length * grid.cellSizeM() * grid.cellSizeM();
        int reach = (int) Math.round(SPREAD_M / grid.cellSizeM() / 2);
        float[] times = new float[grid.cells()];
        for (int row = 0; row < grid.ny(); row++) {
            for (int column = 0; column < grid.nx(); column++) {
                times[above.cell(column, row)] = (float) (mean(columns, column, row, reach) * areaM2 / PER_CENT);
            }
        }
        return times;
    }

    private double mean(double[] columns, int column, int row, int reach) {
        double sum = 0;
        int count = 0;
        for (int j = Math.max(0, row - reach); j <= Math.min(grid.ny() - 1, row + reach); j++) {
            for (int i = Math.max(0, column - reach); i <= Math.min(grid.nx() - 1, column + reach); i++) {
                sum += columns[j * grid.nx() + i];
                count++;
            }
        }
        return sum / count;
    }
}
