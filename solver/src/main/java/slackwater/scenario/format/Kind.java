package slackwater.scenario.format;

import java.util.List;
import slackwater.units.Dimension;

/** What a key's value is. */
public sealed interface Kind {
    /** Free text on one line, not empty. */
    record Text(int longest) implements Kind {
    }

    /** One word of a list. */
    record Word(List<String> words) implements Kind {
    }

    /** One number, or a list of so many. */
    record Numbers(Dimension dimension, int count, Limits limits) implements Kind {
    }

    /** One word of a list, or a direction [x, y, z] of any length above 0. */
    record WordOrDirection(List<String> words) implements Kind {
    }
}
