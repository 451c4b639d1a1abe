package slackwater.viewer.session;

/**
 * A key with those held beside it. Codes are those of the window's library: capital letters and digits are themselves.
 *
 * @param code of the key
 * @param shift whether shift is held
 * @param command whether the control key is held (the command key on a Mac)
 */
public record Stroke(int code, boolean shift, boolean command) {
    public static final int SPACE = 32;
    public static final int ESCAPE = 256;
    public static final int ENTER = 257;
    public static final int TAB = 258;
    public static final int BACKSPACE = 259;
    public static final int DELETE = 261;
    public static final int RIGHT = 262;
    public static final int LEFT = 263;
    public static final int DOWN = 264;
    public static final int UP = 265;
    public static final int PAGE_UP = 266;
    public static final int PAGE_DOWN = 267;
    public static final int HOME = 268;
    public static final int F1 = 290;
    public static final int F12 = 301;

    public static Stroke of(int code) {
        return new Stroke(code, false, false);
    }

    public static Stroke shift(int code) {
        return new Stroke(code, true, false);
    }

    public static Stroke command(int code) {
        return new Stroke(code, false, true);
    }

    /** What people call it: Ctrl Z, Shift Tab, Page up. */
    public String words() {
        String name = switch (code) {
            case SPACE -> "Space";
            case ESCAPE -> "Esc";
            case ENTER -> "Enter";
            case TAB -> "Tab";
            case BACKSPACE -> "Backspace";
            case DELETE -> "Delete";
            case RIGHT -> "Right";
            case LEFT -> "Left";
            case DOWN -> "Down";
            case UP -> "Up";
            case PAGE_UP -> "Page up";
            case PAGE_DOWN -> "Page down";
            case HOME -> "Home";
            default -> code >= F1 && code <= F12 ? "F" + (code - F1 + 1) : String.valueOf((char) code);
        };
        return (command ? "Ctrl " : "") + (shift ? "Shift " : "") + name;
    }
}
