package slackwater.viewer.scene;

import slackwater.analysis.Verdict;
import slackwater.viewer.colour.Colour;

/**
 * The colours of things. Verdicts and kinds of water never rest on red against green: blue, amber and a dark plum, and
 * a sign or a word beside each.
 */
public final class Palette {
    public static final Colour GROUND = Colour.of(0xF7F9FA);
    public static final Colour INK = Colour.of(0x22282C);
    public static final Colour SOFT_INK = Colour.of(0x5A646B);
    public static final Colour GLASS = Colour.of(0x7B8C96);
    public static final Colour PANE = Colour.of(0xE6EEF2);
    public static final Colour WATER_LINE = Colour.of(0x4F7F9B);
    public static final Colour SAND = Colour.of(0xDBCFB4);
    public static final Colour ROCK = Colour.of(0xA8A49D);
    public static final Colour PUMP = Colour.of(0x394248);
    public static final Colour JET = Colour.of(0x3E7CB1);
    public static final Colour PLAIN = Colour.of(0x8B969C);
    public static final Colour STILL = Colour.of(0x7A2E6E);
    public static final Colour FAST = Colour.of(0xE3A21A);

    private Palette() {
    }

    public static Colour of(Verdict verdict) {
        return switch (verdict) {
            case PASS -> Colour.of(0x2C6DA4);
            case MARGINAL -> Colour.of(0xD99A1C);
            case FAIL -> Colour.of(0x8E2F2A);
            case NONE -> PLAIN;
        };
    }
}
