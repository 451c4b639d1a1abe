package slackwater.report;

import java.util.List;
import java.util.Locale;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

/**
 * A layout as an SVG, without water: the tank from above and from the front, rock in grey, pumps with the line that
 * they blow along, the layout before it dashed, and the corals with their numbers and verdicts.
 */
public final class LayoutPicture {
    private static final double PICTURE = 640;
    private static final double EDGE = 40;
    private static final double GAP = 46;
    private static final double STEP_M = 0.01;
    private static final double ARROW_M = 0.22;

    private final Scenario scenario;
    private final double unitsPerM;
    private final StringBuilder svg = new StringBuilder();

    private LayoutPicture(Scenario scenario) {
        this.scenario = scenario;
        this.unitsPerM = PICTURE / scenario.tank().insideM().x();
    }

    /**
     * The picture.
     *
     * @param before pumps of the layout that it is compared with; may be empty
     * @param verdicts one a coral, in the order of the scenario
     */
    public static String of(Scenario scenario, List<Pump> before, List<Verdict> verdicts) {
        return new LayoutPicture(scenario).draw(before, verdicts);
    }

    private String draw(List<Pump> before, List<Verdict> verdicts) {
        Tank tank = scenario.tank();
        double deep = tank.insideM().y() * unitsPerM;
        double high = tank.insideM().z() * unitsPerM;
        double legend = 20.0 * scenario.corals().size() + 70;
        double width = PICTURE + 2 * EDGE;
        double height = EDGE + deep + GAP + high + GAP + legend;
        put("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" height=\"%.0f\""
                + " font-family=\"sans-serif\" font-size=\"14\">", width, height, width, height);
        put("<rect width=\"%.0f\" height=\"%.0f\" fill=\"white\"/>", width, height);
        put("<text x=\"%.0f\" y=\"%.0f\">From above; the front pane is below</text>", EDGE, EDGE - 12);
        view(new View(EDGE, EDGE, deep, true), before, verdicts);
        double second = EDGE + deep + GAP;
        put("<text x=\"%.0f\" y=\"%.0f\">From the front</text>", EDGE, second - 12);
        view(new View(EDGE, second, high, false), before, verdicts);
        legend(second + high + GAP, verdicts);
        return svg.append("</svg>\n").toString();
    }

    /** A way of looking: from above, or from the front. */
    private record View(double left, double top, double height, boolean above) {
        double level(Vec3 point) {
            return above ? point.y() : point.z();
        }
    }

    private void view(View view, List<Pump> before, List<Verdict> verdicts) {
        put("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#f4f8fb\" stroke=\"black\""
                + " stroke-width=\"2\"/>", view.left(), view.top(), PICTURE, view.height());
        if (!view.above()) {
            Tank tank = scenario.tank();
            double sand = tank.sandDepthM() * unitsPerM;
            double surface = y(view, new Vec3(0, 0, tank.waterLevelM()));
            put("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#e8dcc0\"/>", view.left(),
                    view.top() + view.height() - sand, PICTURE, sand);
            put("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#0072b2\"/>", view.left(), surface,
                    view.left() + PICTURE, surface);
        }
        rocks(view);
        before.forEach(pump -> pump(view, pump, "#777777", " stroke-dasharray=\"4 4\""));
        scenario.pumps().forEach(pump -> pump(view, pump, "#d55e00", ""));
        for (int n = 0; n < scenario.corals().size(); n++) {
            coral(view, scenario.corals().get(n), n, verdicts);
        }
    }

    /** Rock as upright strips, one a column of the picture and stretch of rock in it. */
    private void rocks(View view) {
        Tank tank = scenario.tank();
        double far = view.above() ? tank.insideM().y() : tank.insideM().z();
        double through = view.above() ? tank.waterLevelM() : tank.insideM().y();
        for (double x = STEP_M / 2; x < tank.insideM().x(); x += STEP_M) {
            double from = -1;
            for (double up = STEP_M / 2; up < far + STEP_M; up += STEP_M) {
                boolean rock = up < far && isRock(view, x, up, through);
                if (rock && from < 0) {
                    from = up - STEP_M / 2;
                } else if (!rock && from >= 0) {
                    strip(view, x, from, up - STEP_M / 2);
                    from = -1;
                }
            }
        }
    }

    private void strip(View view, double x, double from, double to) {
        put("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"#bbbbbb\"/>",
                view.left() + (x - STEP_M / 2) * unitsPerM, view.top() + view.height() - to * unitsPerM,
                STEP_M * unitsPerM + 0.3, (to - from) * unitsPerM);
    }

    private boolean isRock(View view, double x, double up, double throughM) {
        for (double behind = STEP_M; behind < throughM; behind += 2 * STEP_M) {
            Vec3 point = view.above() ? new Vec3(x, up, behind) : new Vec3(x, behind, up);
            for (Rock rock : scenario.rocks()) {
                if (rock.solid().bounds().contains(point) && rock.solid().contains(point)) {
                    return true;
                }
            }
        }
        return false;
    }

    private void pump(View view, Pump pump, String colour, String dashes) {
        Vec3 tip = pump.atM().plus(pump.aim().times(reachM(pump)));
        double x = x(view, tip);
        double y = y(view, tip);
        put("<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\" stroke-width=\"3\"%s/>",
                x(view, pump.atM()), y(view, pump.atM()), x, y, colour, dashes);
        put("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>", x, y, colour);
        put("<rect x=\"%.1f\" y=\"%.1f\" width=\"14\" height=\"14\" fill=\"white\" stroke=\"%s\" stroke-width=\"3\""
                + "%s/>", x(view, pump.atM()) - 7, y(view, pump.atM()) - 7, colour, dashes);
    }

    /** Length of a pump's line: that of all, or to the pane that its jet meets before. */
    private double reachM(Pump pump) {
        Vec3 inside = scenario.tank().insideM();
        double[][] axes = {{pump.atM().x(), pump.aim().x(), inside.x()}, {pump.atM().y(), pump.aim().y(), inside.y()},
            {pump.atM().z(), pump.aim().z(), inside.z()}};
        double reach = ARROW_M;
        for (double[] axis : axes) {
            double room = axis[1] > 0 ? axis[2] - axis[0] : axis[0];
            reach = axis[1] == 0 ? reach : Math.min(reach, Math.max(0, room) / Math.abs(axis[1]));
        }
        return reach;
    }

    private void coral(View view, Coral coral, int n, List<Verdict> verdicts) {
        double x = x(view, coral.atM());
        double y = y(view, coral.atM());
        put("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"11\" fill=\"white\" stroke=\"black\"/>", x, y);
        put("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\" font-size=\"12\">%d%c</text>", x, y + 4, n + 1,
                verdicts.get(n).symbol());
    }

    private void legend(double top, List<Verdict> verdicts) {
        put("<text x=\"%.0f\" y=\"%.0f\">Pumps: full lines this layout, dashed the one before; a jet goes on along its"
                + " line.</text>", EDGE, top);
        for (int n = 0; n < scenario.corals().size(); n++) {
            put("<text x=\"%.0f\" y=\"%.0f\">%d %s %s: %s</text>", EDGE, top + 24 + 20 * n, n + 1,
                    verdicts.get(n).symbol(), verdicts.get(n).word(),
                    Html.escape(Html.shortened(scenario.corals().get(n).name(), 70)));
        }
    }

    private double x(View view, Vec3 point) {
        return view.left() + point.x() * unitsPerM;
    }

    private double y(View view, Vec3 point) {
        return view.top() + view.height() - view.level(point) * unitsPerM;
    }

    private void put(String format, Object... values) {
        svg.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
