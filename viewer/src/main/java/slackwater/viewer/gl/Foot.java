package slackwater.viewer.gl;

import java.util.List;
import java.util.Optional;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Lens;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.LegendPlan;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Units;

/** The foot of a picture: what colours and signs mean, and a ruler where lengths can be compared. */
final class Foot {
    private static final double TEXT = LegendPlan.TEXT;
    private static final double LINE = LegendPlan.LINE;
    private static final double EDGE = LegendPlan.EDGE;
    private static final double BAR_HEIGHT = 11;
    private static final double TICK_GAP = 6;
    private static final double LONGEST_RULER = 130;
    private static final double RULER_SHARE = 0.2;
    private static final String BALL = "\u25cf";

    private final Sheet sheet;
    private final Drawing drawing;
    private final Frame frame;
    private final Camera camera;

    Foot(Sheet sheet, Drawing drawing, Frame frame, Camera camera) {
        this.sheet = sheet;
        this.drawing = drawing;
        this.frame = frame;
        this.camera = camera;
    }

    static LegendPlan plan(Drawing drawing, Frame frame, Lens lens) {
        boolean ruled = lens == Lens.PARALLEL && !drawing.rulers().isEmpty();
        return LegendPlan.of(drawing.legends(), frame.widthUnits(), ruled ? longest(frame) : 0);
    }

    private static double longest(Frame frame) {
        return Math.min(LONGEST_RULER, RULER_SHARE * frame.widthUnits());
    }

    void put() {
        LegendPlan plan = plan(drawing, frame, camera.lens());
        for (LegendPlan.Spot spot : plan.spots()) {
            double top = frame.heightUnits() - spot.up() - spot.height();
            if (spot.legend() instanceof Legend.Bar bar) {
                bar(bar, spot.x(), top, plan.barWidth());
            } else {
                patches((Legend.Patches) spot.legend(), spot, top);
            }
        }
        ruler();
    }

    private void bar(Legend.Bar bar, double x, double y, double wide) {
        sheet.text(bar.title(), x, y, TEXT, Palette.INK);
        sheet.bar(x, y + LINE, wide, BAR_HEIGHT, bar.scale().map());
        for (ColourScale.Tick tick : bar.scale().ticks(wide, TICK_GAP, text -> sheet.width(text, TEXT - 1))) {
            double at = x + tick.fraction() * wide;
            sheet.rectangle(at - 0.5, y + LINE + BAR_HEIGHT, 1, 3, Palette.INK);
            double width = sheet.width(tick.text(), TEXT - 1);
            sheet.text(tick.text(), Math.max(x, at - width / 2), y + LINE + BAR_HEIGHT + 3, TEXT - 1, Palette.INK);
        }
    }

    private void patches(Legend.Patches patches, LegendPlan.Spot spot, double top) {
        double y = top;
        for (int n = 0; n < patches.patches().size(); n++) {
            sign(patches.patches().get(n), spot.x(), y + 2);
            for (String line : spot.lines().get(n)) {
                sheet.text(line, spot.x() + LegendPlan.PATCH, y, TEXT, Palette.INK);
                y += LINE;
            }
        }
    }

    private void sign(Legend.Patch patch, double x, double y) {
        switch (patch.sign()) {
            case FIELD -> {
                sheet.rectangle(x, y, 18, 11, Palette.GROUND);
                sheet.rectangle(x, y, 18, 11, patch.colour());
            }
            case DOT -> {
                double inset = (sheet.width(BALL, 13) - sheet.width(BALL, 9.5)) / 2;
                sheet.text(BALL, x + 4, y - 3, 13, Palette.INK);
                sheet.text(BALL, x + 4 + inset, y - 0.2, 9.5, patch.colour());
            }
            case CROSS -> {
                sheet.line(new double[] {x + 4, y + 3, x + 14, y + 9}, 1.4, patch.colour());
                sheet.line(new double[] {x + 4, y + 9, x + 14, y + 3}, 1.4, patch.colour());
            }
            case NONE -> { }
        }
    }

    /** A length to compare with, where lengths on the picture have one meaning. */
    private void ruler() {
        ruled().ifPresent(ruler -> {
            double length = units(ruler);
            double x = frame.widthUnits() - EDGE - length;
            double y = frame.heightUnits() - EDGE - 8;
            sheet.rectangle(x, y, length, 2, Palette.INK);
            sheet.rectangle(x, y - 3, 1.5, 8, Palette.INK);
            sheet.rectangle(x + length - 1.5, y - 3, 1.5, 8, Palette.INK);
            double width = sheet.width(ruler.words(), TEXT);
            double left = Math.min(x + (length - width) / 2, frame.widthUnits() - 6 - width);
            sheet.text(ruler.words(), left, y - LINE, TEXT, Palette.INK);
        });
    }

    /** The longest ruler that has room beside the legends. */
    private Optional<Units.Ruler> ruled() {
        List<Units.Ruler> rulers = drawing.rulers();
        return camera.lens() == Lens.PERSPECTIVE || rulers.isEmpty() ? Optional.empty()
                : rulers.stream().filter(ruler -> units(ruler) <= longest(frame)).findFirst()
                .or(() -> Optional.of(rulers.get(rulers.size() - 1)));
    }

    private double units(Units.Ruler ruler) {
        return ruler.lengthM() / camera.heightM() * frame.heightUnits();
    }
}
