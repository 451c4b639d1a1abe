package slackwater.report;

import java.util.List;
import java.util.Locale;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Overflow;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.scenario.Wall;

/** Pumps, return, overflow and corals on a picture; what lies more than 6 cm before or behind the slice is pale. */
final class Marks {
    private static final double NEAR_M = 0.06;
    private static final double ARROW_UNITS = 34;
    private static final int LONGEST_NAME = 26;

    private final Scenario scenario;

    Marks(Scenario scenario) {
        this.scenario = scenario;
    }

    String on(Slice slice, Scale scale) {
        StringBuilder svg = new StringBuilder();
        if (slice.plane() == Plane.LEVEL) {
            scenario.overflow().ifPresent(overflow -> svg.append(overflow(overflow, slice, scale)));
        }
        for (Pump pump : scenario.pumps()) {
            String off = pump.outputFraction() > 0 ? "" : " (off)";
            svg.append(jet(pump.atM(), pump.aim(), Html.shortened(pump.name(), LONGEST_NAME) + off, slice, scale));
        }
        scenario.returnLine().ifPresent(line ->
                svg.append(jet(line.atM(), line.aim(), "return", slice, scale)));
        List<Coral> corals = scenario.corals();
        for (int n = 0; n < corals.size(); n++) {
            svg.append(coral(n + 1, corals.get(n), slice, scale));
        }
        return svg.toString();
    }

    private static String jet(Vec3 atM, Vec3 aim, String name, Slice slice, Scale scale) {
        double across = slice.plane().across(aim);
        double up = slice.plane().up(aim);
        double length = ARROW_UNITS * Math.hypot(across, up);
        double x = x(atM, slice, scale);
        double y = y(atM, slice, scale);
        boolean isNamed = slice.plane() == Plane.LEVEL || pale(atM, slice).isEmpty();
        boolean leftHalf = x < slice.widthM() * scale.unitsPerM() / 2;
        String arrow = length < 12 ? "" : String.format(Locale.ROOT,
                "<path transform=\"translate(%.1f %.1f) rotate(%.1f)\" d=\"M0 -2H%.1fV-6L%.1f 0L%.1f 6V2H0Z\"/>", x, y,
                -Math.toDegrees(Math.atan2(up, across)), length - 10, length, length - 10);
        return String.format(Locale.ROOT, "<g class=\"jet%s\">%s<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4.5\"/>"
                        + "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text></g>",
                pale(atM, slice), arrow, x, y, x + (leftHalf ? 2 : -2), y + (y > 24 ? -10 : 20),
                leftHalf ? "start" : "end", isNamed ? Html.escape(name) : "");
    }

    private static String coral(int number, Coral coral, Slice slice, Scale scale) {
        double x = x(coral.atM(), slice, scale);
        double y = y(coral.atM(), slice, scale);
        return String.format(Locale.ROOT, "<g class=\"coral%s\"><title>%s</title><circle cx=\"%.1f\" cy=\"%.1f\""
                        + " r=\"8.5\"/><text x=\"%.1f\" y=\"%.1f\" text-anchor=\"middle\">%d</text></g>",
                pale(coral.atM(), slice), Html.escape(coral.name()), x, y, x, y + 4, number);
    }

    private static String overflow(Overflow overflow, Slice slice, Scale scale) {
        double width = slice.widthM() * scale.unitsPerM();
        double height = slice.heightM() * scale.unitsPerM();
        double from = overflow.fromM() * scale.unitsPerM();
        double to = overflow.toM() * scale.unitsPerM();
        boolean along = overflow.wall() == Wall.FRONT || overflow.wall() == Wall.BACK;
        double x = overflow.wall() == Wall.RIGHT ? width : 0;
        double y = overflow.wall() == Wall.FRONT ? height : 0;
        return along
                ? String.format(Locale.ROOT, "<path class=\"overflow\" d=\"M%.1f %.1fH%.1f\"/><text class=\"number\""
                        + " x=\"%.1f\" y=\"%.1f\">overflow</text>", from, y, to, from, y == 0 ? -6 : y - 5)
                : String.format(Locale.ROOT, "<path class=\"overflow\" d=\"M%.1f %.1fV%.1f\"/>", x, height - from,
                        height - to);
    }

    private static String pale(Vec3 atM, Slice slice) {
        return Math.abs(slice.plane().depth(atM) - slice.placeM()) > NEAR_M ? " pale" : "";
    }

    private static double x(Vec3 atM, Slice slice, Scale scale) {
        return slice.plane().across(atM) * scale.unitsPerM();
    }

    private static double y(Vec3 atM, Slice slice, Scale scale) {
        return (slice.heightM() - slice.plane().up(atM)) * scale.unitsPerM();
    }
}
