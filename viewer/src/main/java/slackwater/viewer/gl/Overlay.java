package slackwater.viewer.gl;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Lens;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Label;
import slackwater.viewer.scene.LabelPlan.Area;
import slackwater.viewer.scene.LabelPlan.Pin;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Units;

/** The words on a picture: title and notes at the top, labels beside things, legends and a ruler at the bottom. */
final class Overlay {
    private static final double EDGE = 20;
    private static final double TITLE = 18;
    private static final double TEXT = 12.5;
    private static final double LINE = 17;
    private static final double LEGEND_HEIGHT = 42;
    private static final double BAR_WIDTH = 240;
    private static final double BAR_HEIGHT = 11;
    private static final double TICK_GAP = 6;
    private static final double CARD_PAD = 5;
    private static final double ACCENT = 3;
    private static final double DASH = 4;
    private static final double PATCH = 25;
    private static final double LONGEST_RULER = 130;
    private static final double RULER_GAP = 16;
    private static final String BALL = "\u25cf";
    private static final Colour CARD = Colour.of(0xFFFFFF);

    private final Sheet sheet;
    private final Drawing drawing;
    private final Frame frame;
    private final Camera camera;

    Overlay(Sheet sheet, Drawing drawing, Frame frame, Camera camera) {
        this.sheet = sheet;
        this.drawing = drawing;
        this.frame = frame;
        this.camera = camera;
    }

    /** Room that the words need about the tank. */
    static Margins margins(Drawing drawing) {
        double top = EDGE + (drawing.title().isEmpty() ? 0 : TITLE + 8) + LINE * drawing.notes().size() + 16;
        double legends = drawing.legends().stream().mapToDouble(Overlay::height).max().orElse(LINE);
        return new Margins(EDGE + 16, EDGE + 16, top, EDGE + legends + 14);
    }

    private static double height(Legend legend) {
        return legend instanceof Legend.Patches patches ? LINE * patches.patches().size() : LEGEND_HEIGHT;
    }

    void put(Placing placing) {
        placing.cards().forEach(this::leader);
        placing.cards().forEach(this::card);
        double y = EDGE;
        if (!drawing.title().isEmpty()) {
            sheet.text(drawing.title(), EDGE, y, TITLE, Palette.INK);
            y += TITLE + 8;
        }
        for (String note : drawing.notes()) {
            sheet.text(note, EDGE, y, TEXT, Palette.SOFT_INK);
            y += LINE;
        }
        legends();
        ruler();
    }

    /** Side by side from the left; in a narrow picture, above each other. */
    private void legends() {
        double x = EDGE;
        double bottom = frame.heightUnits() - EDGE;
        double right = frame.widthUnits() - ruled().map(ruler -> units(ruler) + EDGE + RULER_GAP).orElse(6.0);
        if (!drawing.legends().isEmpty() && EDGE + width(drawing.legends().get(0)) > right) {
            right = frame.widthUnits() - 6;
            bottom -= LINE + RULER_GAP; // all of them above the ruler
        }
        for (Legend legend : drawing.legends()) {
            double width = width(legend);
            if (x > EDGE && x + width > right) {
                right = frame.widthUnits() - 6;
                x = EDGE;
                bottom -= LEGEND_HEIGHT + 14;
            }
            if (legend instanceof Legend.Bar bar) {
                bar(bar, x, bottom);
            } else {
                patches((Legend.Patches) legend, x, bottom);
            }
            x += 36 + width;
        }
    }

    private double width(Legend legend) {
        return legend instanceof Legend.Bar bar ? Math.max(barWidth() + 10, sheet.width(bar.title(), TEXT))
                : ((Legend.Patches) legend).patches().stream().flatMap(patch -> lines(patch).stream())
                .mapToDouble(line -> PATCH + sheet.width(line, TEXT)).max().orElse(0);
    }

    private double barWidth() {
        return Math.min(BAR_WIDTH, Math.max(BAR_WIDTH / 4, frame.widthUnits() - 2 * EDGE));
    }

    private void bar(Legend.Bar bar, double x, double bottom) {
        double y = bottom - LEGEND_HEIGHT;
        double wide = barWidth();
        sheet.text(bar.title(), x, y, TEXT, Palette.INK);
        sheet.bar(x, y + LINE, wide, BAR_HEIGHT, bar.scale().map());
        for (ColourScale.Tick tick : bar.scale().ticks(wide, TICK_GAP, text -> sheet.width(text, TEXT - 1))) {
            double at = x + tick.fraction() * wide;
            sheet.rectangle(at - 0.5, y + LINE + BAR_HEIGHT, 1, 3, Palette.INK);
            double width = sheet.width(tick.text(), TEXT - 1);
            sheet.text(tick.text(), Math.max(x, at - width / 2), y + LINE + BAR_HEIGHT + 3, TEXT - 1, Palette.INK);
        }
    }

    private void patches(Legend.Patches patches, double x, double bottom) {
        double y = bottom - LINE * patches.patches().stream().mapToInt(patch -> lines(patch).size()).sum();
        for (Legend.Patch patch : patches.patches()) {
            sign(patch, x, y + 2);
            for (String line : lines(patch)) {
                sheet.text(line, x + PATCH, y, TEXT, Palette.INK);
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

    /** The words beside a patch: more than a line in a picture that is narrower than they are. */
    private List<String> lines(Legend.Patch patch) {
        double room = frame.widthUnits() - EDGE - PATCH - 6;
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : patch.words().split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && sheet.width(longer, TEXT) > room) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
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
            sheet.text(ruler.words(), x + (length - width) / 2, y - LINE, TEXT, Palette.INK);
        });
    }

    /** The longest ruler that leaves room for the legends beside it. */
    private Optional<Units.Ruler> ruled() {
        List<Units.Ruler> rulers = drawing.rulers();
        return camera.lens() == Lens.PERSPECTIVE || rulers.isEmpty() ? Optional.empty()
                : rulers.stream().filter(ruler -> units(ruler) <= LONGEST_RULER).findFirst()
                .or(() -> Optional.of(rulers.get(rulers.size() - 1)));
    }

    private double units(Units.Ruler ruler) {
        return ruler.lengthM() / camera.heightM() * frame.heightUnits();
    }

    /** Where the labels stand; once found, it can be handed over again. */
    Placing placing() {
        return Placing.of(drawing, camera, frame, margins(drawing), label -> new double[] {width(label),
            height(label)});
    }

    private double width(Label label) {
        double words = Math.max(sheet.width(label.title(), TEXT), sheet.width(label.detail(), TEXT));
        return words + 2 * CARD_PAD + ACCENT + 2;
    }

    private static double height(Label label) {
        return (label.detail().isEmpty() ? 1 : 2) * (LINE - 1) + 2 * CARD_PAD - 2;
    }

    /** From the point to its words; broken, and with an open point, where the point is hidden. */
    private void leader(Placing.Card card) {
        Pin pin = card.pin();
        Area area = card.area();
        boolean hidden = card.hidden();
        double x = Math.max(area.x(), Math.min(area.x() + area.width(), pin.x()));
        double y = Math.max(area.y(), Math.min(area.y() + area.height(), pin.y()));
        sheet.line(new double[] {pin.x(), pin.y(), x, y}, 2.6, Colour.of(0xFFFFFF).withOpacity(0.7));
        double length = Math.hypot(x - pin.x(), y - pin.y());
        double step = hidden ? DASH : Math.max(length, DASH);
        for (double at = 0; at < length; at += 2 * step) {
            double from = at / length;
            double to = Math.min(1, (at + step) / length);
            sheet.line(new double[] {pin.x() + from * (x - pin.x()), pin.y() + from * (y - pin.y()),
                pin.x() + to * (x - pin.x()), pin.y() + to * (y - pin.y())}, 1, Palette.INK);
        }
        sheet.rectangle(pin.x() - 2.5, pin.y() - 2.5, 5, 5, Palette.INK);
        if (hidden) {
            sheet.rectangle(pin.x() - 1.5, pin.y() - 1.5, 3, 3, CARD);
        }
    }

    private void card(Placing.Card card) {
        Label label = card.label();
        Area area = card.area();
        Colour ink = label.pale() ? Palette.PLAIN : Palette.INK;
        sheet.frame(area.x(), area.y(), area.width(), area.height(), Palette.GLASS);
        sheet.rectangle(area.x(), area.y(), area.width(), area.height(), CARD);
        sheet.rectangle(area.x(), area.y(), ACCENT, area.height(), label.pale() ? Palette.PLAIN : label.accent());
        double x = area.x() + ACCENT + CARD_PAD + 1;
        sheet.text(label.title(), x, area.y() + CARD_PAD - 1, TEXT, ink);
        sheet.text(label.detail(), x, area.y() + CARD_PAD + LINE - 2, TEXT, label.pale() ? ink : Palette.SOFT_INK);
    }
}
