package slackwater.viewer.panel;

import java.util.List;
import java.util.Optional;
import slackwater.viewer.scene.Mark;

/**
 * Controls: what is drawn and what can be clicked. Measures are units of type from the top left of the window.
 *
 * @param marks in the order of drawing
 * @param spots places to click; later ones lie over earlier ones
 * @param heightUnits how far down they reach
 */
public record Page(List<Mark> marks, List<Spot> spots, double heightUnits) {
    public Page {
        marks = List.copyOf(marks);
        spots = List.copyOf(spots);
    }

    /**
     * A place to click.
     *
     * @param name what it is, the same from one picture to the next
     * @param action what a click does
     */
    public record Spot(String name, double x, double y, double width, double height, Runnable action) {
        public boolean holds(double atX, double atY) {
            return atX >= x && atY >= y && atX < x + width && atY < y + height;
        }
    }

    /** The topmost spot at a place. */
    public Optional<Spot> at(double x, double y) {
        return spots.stream().filter(spot -> spot.holds(x, y)).reduce((below, above) -> above);
    }

    /** A spot by its name. */
    public Optional<Spot> named(String name) {
        return spots.stream().filter(spot -> spot.name().equals(name)).findFirst();
    }
}
