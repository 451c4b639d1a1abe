package slackwater.backend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import slackwater.lattice.BodyForce;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.VelocitySet;

/**
 * Jets, inlets and outlets: once a step, before the collision, each of their cells gains momentum and mass by the exact
 * difference of two equilibria, so that what is put in is exact whatever the operator. Source: [Kupershtokh2009].
 * The same object serves every back end.
 */
public final class Kicks {
    /** How a back end hands out the populations of a cell (index as in the problem), as deviations from the weights. */
    public interface Populations {
        /** Puts the populations of a cell down, one a direction. */
        void get(int cell, double[] populations);

        /** Adds to each population of a cell. */
        void add(int cell, double[] changes);
    }

    private static final double[] CX = each(VelocitySet::cx);
    private static final double[] CY = each(VelocitySet::cy);
    private static final double[] CZ = each(VelocitySet::cz);
    private static final double[] WEIGHT = each(VelocitySet::weight);

    /** Arrays, since going through a list allocates in every step. */
    private final Jet[] jets;
    private final MassSource[] massSources;
    private final Kick[] order;

    /** A cell of a source, the n-th; sources are numbered, jets first. */
    private record Kick(int cell, int source, int n) {
    }

    private static double[] each(IntToDoubleFunction value) {
        return IntStream.range(0, VelocitySet.Q).mapToDouble(value).toArray();
    }

    public Kicks(LatticeProblem problem) {
        SplittableRandom seeds = new SplittableRandom(problem.seed());
        jets = problem.forces().stream().map(force -> new Jet(force, seeds.split())).toArray(Jet[]::new);
        massSources = problem.massSources().toArray(MassSource[]::new);
        List<Kick> kicks = new ArrayList<>();
        for (int source = 0; source < jets.length + massSources.length; source++) {
            int[] cells = source < jets.length ? jets[source].force.cells()
                    : massSources[source - jets.length].cells();
            for (int n = 0; n < cells.length; n++) {
                kicks.add(new Kick(cells[n], source, n));
            }
        }
        kicks.sort(Comparator.comparingInt(Kick::cell));
        order = kicks.toArray(Kick[]::new);
    }

    /** How many kicks there are in a step, in the order of their cells. */
    public int count() {
        return order.length;
    }

    /** The cell of the n-th kick, index as in the problem; several in a row may have the same. */
    public int cell(int n) {
        return order[n].cell;
    }

    /** Moves the random part on; once a step, before the sources are applied. */
    public void prepare(long step) {
        for (Jet jet : jets) {
            jet.prepare(step);
        }
    }

    /**
     * Applies kicks [from, to) for one step. All kicks of one cell are one thread's, in their order.
     *
     * @param room for the populations of a cell
     */
    public void apply(Populations populations, int from, int to, double[] room) {
        for (int n = from; n < to; n++) {
            Kick kick = order[n];
            if (kick.source < jets.length) {
                Jet jet = jets[kick.source];
                kick(populations, kick.cell, 0, false, jet.fx(kick.n), jet.fy(kick.n), jet.fz(kick.n), room);
            } else {
                MassSource source = massSources[kick.source - jets.length];
                double mass = source.rate() * source.weights()[kick.n];
                kick(populations, kick.cell, mass, mass < 0, 0, 0, 0, room);
            }
        }
    }

    /** Adds half a step's mean force to the velocity of the forced cells: the velocity in the middle of the kick. */
    public void addHalfForce(long step, Moments moments) {
        for (Jet jet : jets) {
            double half = 0.5 * jet.strength(step);
            BodyForce force = jet.force;
            for (int n = 0; n < force.cells().length; n++) {
                int cell = force.cells()[n];
                double share = half * force.weights()[n] / (1 + moments.densityDeviation()[cell]);
                moments.ux()[cell] += (float) (share * force.fx());
                moments.uy()[cell] += (float) (share * force.fy());
                moments.uz()[cell] += (float) (share * force.fz());
            }
        }
    }

    private static void kick(Populations populations, int cell, double mass, boolean carriesVelocity, double fx,
                             double fy, double fz, double[] f) {
        populations.get(cell, f);
        double deviation = 0;
        double jx = 0;
        double jy = 0;
        double jz = 0;
        for (int i = 0; i < VelocitySet.Q; i++) {
            deviation += f[i];
            jx += f[i] * CX[i];
            jy += f[i] * CY[i];
            jz += f[i] * CZ[i];
        }
        double density = 1 + deviation;
        double keep = carriesVelocity ? (density + mass) / density : 1;
        double kx = jx * keep + fx;
        double ky = jy * keep + fy;
        double kz = jz * keep + fz;
        double before = 1 / density;
        double after = 1 / (density + mass);
        double common = mass - 1.5 * ((kx * kx + ky * ky + kz * kz) * after - (jx * jx + jy * jy + jz * jz) * before);
        for (int i = 0; i < VelocitySet.Q; i++) {
            double cj = CX[i] * jx + CY[i] * jy + CZ[i] * jz;
            double ck = CX[i] * kx + CY[i] * ky + CZ[i] * kz;
            f[i] = WEIGHT[i] * (common + 3 * (ck - cj) + 4.5 * (ck * ck * after - cj * cj * before));
        }
        populations.add(cell, f);
    }

    /**
     * One force and its random part: at every cell an Ornstein-Uhlenbeck process in each direction, less the mean over
     * the cells, so that the total stays exactly the given force.
     */
    private static final class Jet {
        private final BodyForce force;
        private final SplittableRandom random;
        private final double[][] noise;
        private final double[] mean = new double[3];
        private final double magnitude;
        private double strength;

        Jet(BodyForce force, SplittableRandom random) {
            this.force = force;
            this.random = random;
            this.noise = new double[3][force.fluctuation() > 0 ? force.cells().length : 0];
            this.magnitude = Math.sqrt(force.fx() * force.fx() + force.fy() * force.fy() + force.fz() * force.fz());
            for (double[] component : noise) {
                for (int n = 0; n < component.length; n++) {
                    component[n] = random.nextGaussian();
                }
            }
        }

        double strength(long step) {
            double factor = force.modulation().factor(step);
            return factor * factor;
        }

        void prepare(long step) {
            strength = strength(step);
            double memory = Math.exp(-1 / force.correlationSteps());
            double fresh = Math.sqrt(1 - memory * memory);
            for (double[] component : noise) {
                for (int n = 0; n < component.length; n++) {
                    component[n] = memory * component[n] + fresh * random.nextGaussian();
                }
            }
            for (int axis = 0; axis < 3; axis++) {
                mean[axis] = weightedMean(noise[axis]);
            }
        }

        private double weightedMean(double[] component) {
            double sum = 0;
            for (int n = 0; n < component.length; n++) {
                sum += component[n] * force.weights()[n];
            }
            return sum;
        }

        double fx(int n) {
            return local(n, force.fx(), 0);
        }

        double fy(int n) {
            return local(n, force.fy(), 1);
        }

        double fz(int n) {
            return local(n, force.fz(), 2);
        }

        private double local(int n, double total, int axis) {
            double random = noise[axis].length == 0 ? 0
                    : force.fluctuation() * magnitude * (noise[axis][n] - mean[axis]);
            return strength * force.weights()[n] * (total + random);
        }
    }
}
