package slackwater.viewer.scene;

import java.util.List;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourScale;

/** What colours in the picture mean. */
public sealed interface Legend {
    String title();

    /** A bar of colours with values; the unit stands in the title. */
    record Bar(String title, ColourScale scale) implements Legend {
    }

    /** Patches of colour with words. */
    record Patches(String title, List<Patch> patches) implements Legend {
    }

    /** What stands before the words of a patch. */
    enum Sign { FIELD, DOT, CROSS, NONE }

    /** One patch. */
    record Patch(Colour colour, String words, Sign sign) {
        /** A field of colour. */
        public Patch(Colour colour, String words) {
            this(colour, words, Sign.FIELD);
        }
    }
}
