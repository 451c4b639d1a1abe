package slackwater.field;

import java.util.stream.Stream;

/**
 * The water's velocity at one moment, one value a cell in the order of the grid, metres per second; 0 in cells of rock
 * and sand.
 *
 * @param fluid true where there is water
 */
public record Velocity(Grid grid, boolean[] fluid, float[] u, float[] v, float[] w) {
    public Velocity {
        if (Stream.of(u, v, w).anyMatch(part -> part.length != grid.cells()) || fluid.length != grid.cells()) {
            throw new IllegalArgumentException("every array must hold one value for each of the " + grid.cells()
                    + " cells");
        }
    }
}
