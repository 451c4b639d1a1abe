package slackwater.simulation;

import slackwater.backend.Moments;
import slackwater.field.Grid;

/**
 * A look over all cells at one moment, lattice units.
 *
 * @param meanSpeed mean speed of the water
 * @param greatestSpeed greatest speed
 * @param fastestCell where
 * @param massDeviation sum of density less 1 over the water
 */
record Health(double meanSpeed, double greatestSpeed, int fastestCell, double massDeviation) {
    private static final double SOUND_SPEED = Math.sqrt(1.0 / 3);
    /** Beyond this Mach number the equilibrium is no longer one. */
    private static final double GREATEST_MACH = 0.6;

    static Health of(Moments moments, boolean[] solid) {
        double sum = 0;
        double mass = 0;
        double greatest = -1;
        int fastest = 0;
        int water = 0;
        for (int n = 0; n < solid.length; n++) {
            if (solid[n]) {
                continue;
            }
            double u = moments.ux()[n];
            double v = moments.uy()[n];
            double w = moments.uz()[n];
            double speed = Math.sqrt(u * u + v * v + w * w);
            water++;
            sum += speed;
            mass += moments.densityDeviation()[n];
            if (!(speed <= greatest) && !Double.isNaN(greatest)) {
                greatest = speed;
                fastest = n;
            }
        }
        return new Health(sum / water, greatest, fastest, mass);
    }

    double mach() {
        return greatestSpeed / SOUND_SPEED;
    }

    /** How a run of this health ended, on its grid, after some water time in seconds. */
    RunOutcome.Diverged divergedIn(Grid grid, double waterS) {
        return new RunOutcome.Diverged(grid.centreM(fastestCell), waterS,
                "Move the pump nearest to this place a few centimetres off walls, rock and other pumps, lower its"
                        + " output, widen a gap there that the return's water must pass, or use smaller cells.");
    }

    boolean diverged() {
        return !(mach() < GREATEST_MACH) || Double.isNaN(meanSpeed);
    }
}
