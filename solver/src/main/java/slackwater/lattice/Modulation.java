package slackwater.lattice;

/**
 * The speed of a jet over time, as a share of its full speed. The force goes with the square.
 */
public sealed interface Modulation {
    /** Share of the full speed at a step, 0..1. */
    double factor(long step);

    /** Always full. */
    record Steady() implements Modulation {
        @Override
        public double factor(long step) {
            return 1;
        }
    }

    /** Full for the first half of a period, low for the second. Phase in periods. */
    record Square(double periodSteps, double low, double phase) implements Modulation {
        @Override
        public double factor(long step) {
            return cycle(step, periodSteps, phase) < 0.5 ? 1 : low;
        }
    }

    /** A smooth swing between low and full, full at phase 0. */
    record Sine(double periodSteps, double low, double phase) implements Modulation {
        @Override
        public double factor(long step) {
            double angle = 2 * Math.PI * cycle(step, periodSteps, phase);
            return low + (1 - low) * 0.5 * (1 + Math.cos(angle));
        }
    }

    private static double cycle(long step, double periodSteps, double phase) {
        double cycles = step / periodSteps + phase;
        return cycles - Math.floor(cycles);
    }
}
