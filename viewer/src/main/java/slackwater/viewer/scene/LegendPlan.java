package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the legends of a picture stand, in units of type: side by side from the left, and above each other where that
 * is too wide. Letters are counted, not measured, so that a camera can be fitted before anything is drawn.
 *
 * @param spots one a legend
 * @param barWidth of every bar of colours
 * @param height from the lower edge of the picture to the top of the highest legend
 */
public record LegendPlan(List<Spot> spots, double barWidth, double height) {
    /** From the edges of the picture. */
    public static final double EDGE = 20;
    /** The size of the letters. */
    public static final double TEXT = 12.5;
    /** From line to line. */
    public static final double LINE = 17;
    /** From the left of a patch to its words. */
    public static final double PATCH = 25;
    /** Of a bar with its title and its numbers. */
    public static final double BAR_HEIGHT = 42;
    /** A letter is about so wide; a little more than most lines come to. */
    private static final double LETTER = 6.9;
    private static final double[] BAR_WIDTHS = {240, 185};
    private static final double LEAST_BAR = 60;
    private static final double GAP = 28;
    private static final double ROW_GAP = 14;
    private static final double RULER_GAP = 16;
    private static final double RULER_HEIGHT = LINE + RULER_GAP;
    private static final double RIGHT = 8;

    /**
     * A legend at its place.
     *
     * @param x its left
     * @param up its lower edge, from that of the picture
     * @param lines the words of each patch, on as many lines as they need
     */
    public record Spot(Legend legend, double x, double up, List<List<String>> lines) {
        /** How high it is. */
        public double height() {
            return LegendPlan.height(legend, lines);
        }
    }

    /**
     * @param widthUnits of the picture
     * @param rulerUnits of the room to leave for a ruler at the lower right; 0 for none
     */
    public static LegendPlan of(List<Legend> legends, double widthUnits, double rulerUnits) {
        double most = Math.max(LEAST_BAR, widthUnits - EDGE - RIGHT);
        LegendPlan wide = with(Math.min(BAR_WIDTHS[0], most), legends, widthUnits, rulerUnits);
        LegendPlan narrow = with(Math.min(BAR_WIDTHS[1], most), legends, widthUnits, rulerUnits);
        return narrow.height < wide.height ? narrow : wide;
    }

    private static LegendPlan with(double barWidth, List<Legend> legends, double widthUnits, double rulerUnits) {
        double right = widthUnits - (rulerUnits > 0 ? rulerUnits + EDGE + RULER_GAP : RIGHT);
        double up = EDGE;
        double room = widthUnits - EDGE - RIGHT;
        if (!legends.isEmpty() && EDGE + width(legends.get(0), barWidth, room) > right) {
            right = widthUnits - RIGHT;
            up += RULER_HEIGHT; // all of them above the ruler
        }
        double x = EDGE;
        double row = 0;
        List<Spot> spots = new ArrayList<>();
        for (Legend legend : legends) {
            double width = width(legend, barWidth, room);
            if (x > EDGE && x + width > right) {
                right = widthUnits - RIGHT;
                x = EDGE;
                up += row + ROW_GAP;
                row = 0;
            }
            Spot spot = new Spot(legend, x, up, lines(legend, room));
            spots.add(spot);
            row = Math.max(row, spot.height());
            x += width + GAP;
        }
        return new LegendPlan(spots, barWidth, up + Math.max(row, LINE));
    }

    private static double width(Legend legend, double barWidth, double room) {
        if (legend instanceof Legend.Bar bar) {
            return Math.max(barWidth + 10, Math.min(room, width(bar.title())));
        }
        return PATCH + lines(legend, room).stream().flatMap(List::stream).mapToDouble(LegendPlan::width).max()
                .orElse(0);
    }

    private static double height(Legend legend, List<List<String>> lines) {
        return legend instanceof Legend.Bar ? BAR_HEIGHT : LINE * lines.stream().mapToInt(List::size).sum();
    }

    private static double width(String line) {
        return LETTER * line.length();
    }

    private static List<List<String>> lines(Legend legend, double room) {
        return legend instanceof Legend.Patches patches
                ? patches.patches().stream().map(patch -> wrapped(patch.words(), room - PATCH)).toList() : List.of();
    }

    private static List<String> wrapped(String words, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > room) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }
}
