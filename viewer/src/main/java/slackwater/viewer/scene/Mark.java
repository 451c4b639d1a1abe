package slackwater.viewer.scene;

import slackwater.viewer.colour.Colour;

/** Something flat on a page of controls. Measures are units of type from the top left; later marks lie over earlier. */
public sealed interface Mark {
    /** A filled rectangle. */
    record Block(double x, double y, double width, double height, Colour colour) implements Mark {
    }

    /** A line of text, its top left corner at a place. */
    record Words(double x, double y, double size, Colour colour, String text) implements Mark {
    }
}
