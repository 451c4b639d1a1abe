package slackwater.validation;

import java.util.List;
import java.util.Locale;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import slackwater.discretisation.Discretiser;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.Faces;
import slackwater.lattice.Modulation;

/**
 * An endless slot (along z) blows along x through a box of still water, from the middle of its height or along its
 * lower wall, smooth and of the law of the wall; the other walls have no friction. Means are over z and time; lattice
 * units.
 *
 * <p>The published laws are of jets into still water, so averages begin when the jet has long passed the places that
 * are fitted and end before the water it has stirred is back, as in {@link RoundJet}. The eddies with which a plane jet
 * starts pass the far end only 2 to 4 turnovers after, with half as much momentum again as the jet itself (measured),
 * hence a longer wait than for a round one. The counter-flow takes momentum from the first moment on:
 * M(x) = M - Q^2/H in a box of height H. With the flow Q = 0.55 sqrt(x/h) of the slot's (0.50 by Fischer et al. 1979,
 * 0.62 by Albertson et al. 1950, from memory) M(x)/M = 1 - 0.55^2 x/H (computed). A jet along a wall is half a jet in a
 * box twice as high.
 *
 * @param slotCells height h of the slot
 * @param onWall whether it lies on the lower wall
 * @param heightCells height H of the box
 * @param from from where on the jet is fitted, in slot heights: where it is self-similar
 * @param to how far
 * @param turnovers when averages end, in turnovers of the largest eddies at the far end, x/u there
 */
record PlaneJet(int slotCells, boolean onWall, int heightCells, int from, int to, double turnovers) {
    private static final double SPEED = 0.1;
    private static final double VISCOSITY = 1e-5;
    private static final double FLOW_GROWTH = 0.55;
    private static final int SPAN = 16;
    private static final int BEHIND = 12;
    private static final int BEYOND = 40;
    private static final int WAIT_TURNOVERS = 5;
    private static final int STEPS_PER_SAMPLE = 20;
    /** A disc of a jet as {@link Discretiser} cuts it: three cells thick, softly. */
    private static final float[] LAYERS = {0.25f, 1, 0.25f};

    /**
     * What a run showed at some distances, in slot heights.
     *
     * @param decay square of the slot's speed over the jet's
     * @param halfWidths distance from the axis, or the wall, at which the speed is half the jet's, in slot heights
     */
    record Found(double[] slots, double[] decay, double[] halfWidths) {
        /** K of u/U = K sqrt(h/(x - x0)), with the virtual origin x0 that fits best. */
        double slopeK() {
            return 1 / Math.sqrt(line(decay).getSlope());
        }

        /** Mean of u/U sqrt(x/h): the same with the slot for the origin. */
        double meanK() {
            double sum = 0;
            for (int n = 0; n < slots.length; n++) {
                sum += Math.sqrt(slots[n] / decay[n]) / slots.length;
            }
            return sum;
        }

        double spread() {
            return line(halfWidths).getSlope();
        }

        private SimpleRegression line(double[] y) {
            SimpleRegression line = new SimpleRegression();
            for (int n = 0; n < slots.length; n++) {
                line.addData(slots[n], y[n]);
            }
            return line;
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "K %.2f by slope, %.2f by mean, S %.4f", slopeK(), meanK(), spread());
        }
    }

    String grid() {
        return String.format(Locale.ROOT, "%d x %d x %d cells, slot %d cells high", length(), heightCells, SPAN,
                slotCells);
    }

    Found measure() {
        double[][] mean = new double[length()][heightCells];
        double far = to * slotCells;
        double turnover = far / (SPEED * (onWall ? 3.5 : 2.45) * Math.sqrt(slotCells / far));
        int samples = (int) ((turnovers - WAIT_TURNOVERS) * turnover / STEPS_PER_SAMPLE);
        try (Flow flow = Flow.of(Flow.box(new int[] {length(), heightCells, SPAN}, faces(), Flow.shipped(VISCOSITY),
                jet()))) {
            flow.advance((int) (WAIT_TURNOVERS * turnover));
            for (int n = 0; n < samples; n++) {
                add(flow.advance(STEPS_PER_SAMPLE), mean, samples * SPAN * SPEED);
            }
        }
        Found found = fit(mean);
        System.out.println("plane jet, " + grid() + ": " + found);
        return found;
    }

    private int length() {
        return BEHIND + to * slotCells + BEYOND;
    }

    private Faces faces() {
        BoundaryCondition slip = new FreeSlip();
        return new Faces(slip, slip, onWall ? new LogLaw(0) : slip, slip, new Periodic(), new Periodic());
    }

    /** A disc of twice the slot's area, whose slipstream is the slot's, with the noise that runs have. */
    private BodyForce jet() {
        int high = 2 * slotCells;
        int low = onWall ? 0 : heightCells / 2 - slotCells;
        int[] cells = new int[LAYERS.length * high * SPAN];
        float[] weights = new float[cells.length];
        for (int n = 0; n < cells.length; n++) {
            int layer = n % LAYERS.length;
            int j = low + n / LAYERS.length % high;
            cells[n] = (n / LAYERS.length / high * heightCells + j) * length() + BEHIND - 1 + layer;
            weights[n] = LAYERS[layer] / (1.5f * high * SPAN);
        }
        return new BodyForce(cells, weights, SPEED * SPEED * slotCells * SPAN, 0, 0, Discretiser.fluctuation(),
                high / SPEED, new Modulation.Steady());
    }

    private static void add(Flow flow, double[][] mean, double all) {
        for (int cell = 0; cell < flow.now.cells(); cell++) {
            mean[cell % flow.problem.nx()][cell / flow.problem.nx() % flow.problem.ny()] += flow.now.ux()[cell] / all;
        }
    }

    private Found fit(double[][] mean) {
        int first = from * slotCells;
        int points = to * slotCells - first + 1;
        Found found = new Found(new double[points], new double[points], new double[points]);
        for (int n = 0; n < points; n++) {
            double[] section = mean[BEHIND + first + n];
            double fastest = new Profile(section, 0, 0).greatest();
            double left = 1 - FLOW_GROWTH * FLOW_GROWTH * (first + n) / (onWall ? 2.0 * heightCells : heightCells);
            found.slots[n] = (double) (first + n) / slotCells;
            found.decay[n] = left / (fastest * fastest);
            double above = edge(section, fastest / 2, 1);
            found.halfWidths[n] = (onWall ? above : (above - edge(section, fastest / 2, -1)) / 2) / slotCells;
        }
        return found;
    }

    /** Height at which the speed falls to a value, going up (1) or down (-1) from the fastest cell. */
    private static double edge(double[] section, double value, int step) {
        int j = 0;
        for (int n = 1; n < section.length; n++) {
            j = section[n] > section[j] ? n : j;
        }
        while (section[j] > value) {
            j += step;
        }
        return j + 0.5 - step * (value - section[j]) / (section[j - step] - section[j]);
    }
}
