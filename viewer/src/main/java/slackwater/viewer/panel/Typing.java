package slackwater.viewer.panel;

import java.util.Optional;
import java.util.function.DoubleConsumer;
import slackwater.viewer.session.Stroke;

/** A number being typed into a field. Enter takes it, Esc leaves the field as it was. */
public final class Typing {
    private static final int LONGEST = 12;

    private Optional<String> field = Optional.empty();
    private String text = "";
    private boolean fresh;
    private DoubleConsumer take = value -> { };

    /** Begins with the number that stands in a field; the first letter typed replaces it. */
    public void begin(String name, String number, DoubleConsumer consumer) {
        field = Optional.of(name);
        text = number;
        fresh = true;
        take = consumer;
    }

    /** The field's name; empty where nothing is being typed. */
    public Optional<String> field() {
        return field;
    }

    public String text() {
        return text;
    }

    public boolean in(String name) {
        return field.equals(Optional.of(name));
    }

    /** A letter; what no number has is passed over. */
    public void letter(int letter) {
        String allowed = letter == ',' ? "." : Character.toString(letter);
        if (field.isPresent() && "0123456789.-".contains(allowed)) {
            text = fresh ? allowed : text.length() < LONGEST ? text + allowed : text;
            fresh = false;
        }
    }

    /** A key; tells whether it was meant for the field. */
    public boolean key(Stroke stroke) {
        if (field.isEmpty()) {
            return false;
        }
        switch (stroke.code()) {
            case Stroke.ENTER, Stroke.TAB -> end();
            case Stroke.ESCAPE -> field = Optional.empty();
            case Stroke.BACKSPACE, Stroke.DELETE -> {
                text = fresh || text.isEmpty() ? "" : text.substring(0, text.length() - 1);
                fresh = false;
            }
            default -> {
                return !stroke.command();
            }
        }
        return true;
    }

    /** Takes the number, where it is one, and leaves the field. */
    public void end() {
        if (field.isPresent()) {
            field = Optional.empty();
            if (text.matches("-?[0-9]*\\.?[0-9]+|-?[0-9]+\\.")) {
                take.accept(Double.parseDouble(text));
            }
        }
    }
}
