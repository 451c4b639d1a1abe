package slackwater.viewer.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleConsumer;
import slackwater.units.Unit;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.panel.Page.Spot;
import slackwater.viewer.scene.Mark;
import slackwater.viewer.scene.Mark.Block;
import slackwater.viewer.scene.Mark.Words;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Type;
import slackwater.viewer.session.Action;
import slackwater.viewer.session.Session;

/** Writes controls line by line, from the top. */
final class Rows {
    static final double TEXT = 12.5;
    static final double ROW = 26;
    private static final double LINE = 17;
    private static final double SMALL = 11.5;
    private static final double GAP = 6;
    private static final Colour CARD = Colour.of(0xFFFFFF);
    private static final Colour IDLE = Colour.of(0xE9EEF1);
    private static final Colour HOVER = Colour.of(0xD8E2E8);
    private static final Colour OFF_INK = Colour.of(0xA3ADB3);

    private final List<Mark> marks = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private final Type type;
    private final double left;
    private final double width;
    private final double hoverX;
    private final double hoverY;
    private double y;

    /**
     * @param left where lines begin
     * @param width of a line
     * @param hover where the pointer is
     */
    Rows(Type type, double left, double top, double width, double[] hover) {
        this.type = type;
        this.left = left;
        this.width = width;
        this.y = top;
        this.hoverX = hover[0];
        this.hoverY = hover[1];
    }

    double y() {
        return y;
    }

    void gap(double units) {
        y += units;
    }

    void block(double x, double top, double wide, double high, Colour colour) {
        marks.add(new Block(x, top, wide, high, colour));
    }

    void words(double x, double top, double size, Colour colour, String text) {
        marks.add(new Words(x, top, size, colour, text));
    }

    void title(String text) {
        words(left, y, 15, Palette.INK, shortened(text, 15, width));
        y += 22;
    }

    void heading(String text) {
        y += GAP;
        block(left, y, width, 1, HOVER);
        y += GAP;
        words(left, y, SMALL, Palette.SOFT_INK, text);
        y += LINE;
    }

    /** Text on as many lines as it needs, at most some. */
    void text(String text, Colour colour, int most) {
        List<String> lines = wrapped(text, TEXT, width);
        for (int n = 0; n < Math.min(most, lines.size()); n++) {
            boolean cut = n == most - 1 && lines.size() > most;
            words(left, y, TEXT, colour, cut ? shortened(lines.get(n) + " \u2026", TEXT, width) : lines.get(n));
            y += LINE;
        }
    }

    /** Text with a coloured edge, for what should be seen. */
    void notice(String text, Colour edge) {
        double top = y;
        List<String> lines = wrapped(text, TEXT, width - 12);
        for (String line : lines) {
            words(left + 12, y + 2, TEXT, Palette.INK, line);
            y += LINE;
        }
        block(left, top, 4, y - top + 4, edge);
        y += 10;
    }

    /** A bar that fills from the left. */
    void bar(double share, Colour colour) {
        block(left, y + 3, width, 5, IDLE);
        if (share > 0) {
            block(left, y + 3, Math.max(1, share * width), 5, colour);
        }
        y += 14;
    }

    /** Name and value on a line. */
    void value(String name, String value, Colour colour) {
        words(left, y, TEXT, Palette.SOFT_INK, name);
        words(left + 92, y, TEXT, colour, shortened(value, TEXT, width - 92));
        y += LINE;
    }

    /** Buttons beside each other, all of one width. */
    void buttons(List<Button> buttons) {
        double wide = (width - GAP * (buttons.size() - 1)) / buttons.size();
        for (int n = 0; n < buttons.size(); n++) {
            button(buttons.get(n), left + n * (wide + GAP), wide);
        }
        y += ROW + 3;
    }

    /** A button: what it says, the key that does the same, whether it is on, whether it can be pressed. */
    record Button(String name, String words, String key, boolean on, boolean able, Runnable action) {
        /** One that does what a key does too. */
        static Button of(Session session, Action action, String words, boolean on, boolean able) {
            return new Button(action.name(), words, action.strokes().get(0).words(), on, able,
                    () -> session.perform(action));
        }
    }

    void button(Button button, double x, double wide) {
        boolean hover = button.able() && hoverX >= x && hoverX < x + wide && hoverY >= y && hoverY < y + ROW;
        block(x, y, wide, ROW, button.on() ? Palette.JET : hover ? HOVER : IDLE);
        Colour ink = button.on() ? CARD : button.able() ? Palette.INK : OFF_INK;
        double hint = button.key().isEmpty() ? 0 : type.width(button.key(), SMALL - 1) + 6;
        double room = wide - 12 - hint;
        words(x + 7, y + 5, TEXT, ink, shortened(button.words(), TEXT, room));
        if (hint > 0) {
            words(x + wide - hint, y + 6.5, SMALL - 1, button.on() ? CARD : OFF_INK, button.key());
        }
        if (button.able()) {
            spots.add(new Spot(button.name(), x, y, wide, ROW, button.action()));
        }
    }

    /** A number that can be stepped and typed. */
    record Field(String name, String words, String number, String unit, double step, DoubleConsumer take) {
        /** A length: shown, stepped and typed in a unit. */
        static Field of(String name, String words, Unit unit, double lengthM, double step, DoubleConsumer take) {
            return new Field(name, words, shown(unit.fromSi(lengthM)), unit.symbol(), step, take);
        }
    }

    /** To two decimals, without needless zeros. */
    static String shown(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value + 0.0);
        return text.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
    }

    void field(Field field, Typing typing, boolean able) {
        words(left, y + 5, TEXT, Palette.SOFT_INK, field.words());
        double x = left + 86;
        double value = Double.parseDouble(field.number());
        if (able) {
            button(new Button(field.name() + " less", "\u2212", "", false, true,
                    () -> field.take().accept(value - field.step())), x, 24);
            button(new Button(field.name() + " more", "+", "", false, true,
                    () -> field.take().accept(value + field.step())), x + 112, 24);
        }
        boolean typed = typing.in(field.name());
        block(x + 27, y, 82, ROW, typed ? Palette.JET : HOVER);
        block(x + 28, y + 1, 80, ROW - 2, CARD);
        words(x + 34, y + 5, TEXT, able ? Palette.INK : Palette.SOFT_INK,
                typed ? typing.text() + "|" : field.number());
        words(x + 142, y + 5, TEXT, Palette.SOFT_INK, field.unit());
        if (able) {
            spots.add(new Spot(field.name(), x + 27, y, 82, ROW,
                    () -> typing.begin(field.name(), field.number(), field.take())));
        }
        y += ROW + 3;
    }

    void spot(Spot spot) {
        spots.add(spot);
    }

    Page page() {
        return new Page(marks, spots, y);
    }

    List<String> wrapped(String text, double size, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && type.width(longer, size) > room) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(shortened(line, size, room));
        return lines;
    }

    private String shortened(String text, double size, double room) {
        String shown = text;
        while (shown.length() > 1 && type.width(shown, size) > room) {
            int end = shown.endsWith("\u2026") ? shown.length() - 2 : shown.length() - 1;
            shown = shown.substring(0, Math.max(1, end)) + "\u2026";
            if (end <= 1) {
                break;
            }
        }
        return shown;
    }
}
