package slackwater.viewer.scene;

import java.util.Optional;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourMap;

/**
 * How a shape is coloured.
 *
 * @param colour of the whole shape, or its opacity alone where a map gives the colour
 * @param map turns the shape's own shades, 0..1, into colours
 * @param litFraction how much the light does: 0 for a colour that must stay readable against its legend, 1 for full
 * @param insideOnly whether it is seen only from behind, as the far panes of a tank are
 */
public record Paint(Colour colour, Optional<ColourMap> map, double litFraction, boolean insideOnly) {
    public static Paint flat(Colour colour, double litFraction) {
        return new Paint(colour, Optional.empty(), litFraction, false);
    }

    public static Paint mapped(ColourMap map) {
        return new Paint(Colour.of(0xFFFFFF), Optional.of(map), 0, false);
    }

    public Paint lit(double fraction) {
        return new Paint(colour, map, fraction, insideOnly);
    }

    /** Seen only where it turns its back. */
    public Paint fromInside() {
        return new Paint(colour, map, litFraction, true);
    }
}
