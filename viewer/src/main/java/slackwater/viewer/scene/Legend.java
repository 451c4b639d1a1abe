package slackwater.viewer.scene;

import java.util.ArrayList;
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

    /** The same legends, their patches of colour one below the other at the place of the first. */
    static List<Legend> gathered(List<Legend> legends) {
        List<Patch> patches = legends.stream().filter(Patches.class::isInstance).map(Patches.class::cast)
                .filter(Legend::isColour).flatMap(all -> all.patches().stream()).toList();
        List<Legend> gathered = new ArrayList<>();
        boolean put = false;
        for (Legend legend : legends) {
            if (!(legend instanceof Patches some) || !isColour(some)) {
                gathered.add(legend);
            } else if (!put) {
                gathered.add(new Patches("", patches));
                put = true;
            }
        }
        return gathered;
    }

    private static boolean isColour(Patches patches) {
        return patches.patches().stream().allMatch(patch -> patch.sign() == Sign.FIELD);
    }
}
