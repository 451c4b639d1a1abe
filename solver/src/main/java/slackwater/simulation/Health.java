package slackwater.simulation;

import slackwater.backend.Moments;
import slackwater.backend.Spread;
import slackwater.discretisation.Voxels;
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

    /** Looks at each layer by itself, so that sums do not depend on the threads. */
    static Health of(Moments moments, Voxels voxels, Spread threads) {
        Layer[] layers = new Layer[voxels.grid().nz()];
        int size = voxels.grid().cells() / layers.length;
        threads.over(layers.length, (from, to) -> {
            for (int k = from; k < to; k++) {
                layers[k] = Layer.of(moments, voxels.solid(), k * size, (k + 1) * size);
            }
        });
        Layer all = layers[0];
        for (int k = 1; k < layers.length; k++) {
            all = all.and(layers[k]);
        }
        return new Health(all.speeds / all.water, all.greatest, all.fastest, all.mass);
    }

    /** Sums over some cells, and the fastest of them. */
    private record Layer(int water, double speeds, double greatest, int fastest, double mass) {
        static Layer of(Moments moments, boolean[] solid, int from, int to) {
            double sum = 0;
            double mass = 0;
            double greatest = -1;
            int fastest = from;
            int water = 0;
            for (int n = from; n < to; n++) {
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
            return new Layer(water, sum, greatest, fastest, mass);
        }

        Layer and(Layer next) {
            boolean faster = !(next.greatest <= greatest) && !Double.isNaN(greatest);
            return new Layer(water + next.water, speeds + next.speeds, faster ? next.greatest : greatest,
                    faster ? next.fastest : fastest, mass + next.mass);
        }
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
