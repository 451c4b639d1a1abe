package slackwater.viewer.gl;

import slackwater.viewer.camera.Camera;
import slackwater.viewer.camera.Frame;
import slackwater.viewer.camera.Lens;
import slackwater.viewer.camera.Margins;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Label;
import slackwater.viewer.scene.LabelPlan.Area;
import slackwater.viewer.scene.LabelPlan.Pin;
import slackwater.viewer.scene.Palette;

/** The words on a picture: title and notes at the top, labels beside things, legends and a ruler at the bottom. */
final class Overlay {
    private static final double EDGE = 20;
    private static final double TITLE = 18;
    private static final double TEXT = 12.5;
    private static final double LINE = 17;
    private static final double CARD_PAD = 5;
    private static final double ACCENT = 3;
    private static final double DASH = 4;
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
    static Margins margins(Drawing drawing, Frame frame, Lens lens) {
        double top = EDGE + (drawing.title().isEmpty() ? 0 : TITLE + 8) + LINE * drawing.notes().size() + 16;
        return new Margins(EDGE + 16, EDGE + 16, top, Foot.plan(drawing, frame, lens).height() + 14);
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
        new Foot(sheet, drawing, frame, camera).put();
    }

    /** Where the labels stand; once found, it can be handed over again. */
    Placing placing() {
        return Placing.of(drawing, camera, frame, margins(drawing, frame, camera.lens()),
                label -> new double[] {width(label), height(label)});
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
