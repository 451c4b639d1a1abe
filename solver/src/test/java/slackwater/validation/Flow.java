package slackwater.validation;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretiser;
import slackwater.lattice.BodyForce;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;

/** A flow under way on the fast back end, in lattice units, and what validation cases ask of it. */
final class Flow implements AutoCloseable {
    /** A flow to start from: density less 1 and the three velocities at a place in cells. */
    interface Start {
        double[] at(double x, double y, double z);
    }

    /** Below this, threads wait for each other longer than they work. */
    private static final int FEW_CELLS = 30_000;

    final LatticeProblem problem;
    final Moments now;
    private final FlowSolver solver;

    private Flow(LatticeProblem problem) {
        this.problem = problem;
        this.now = new Moments(problem.cells());
        int threads = problem.cells() < FEW_CELLS ? 1 : Runtime.getRuntime().availableProcessors();
        this.solver = new CpuBackend(threads).solver(problem);
    }

    static Flow of(LatticeProblem problem) {
        return new Flow(problem);
    }

    /** The operator that runs use, for a kinematic viscosity. */
    static CollisionOperator shipped(double viscosity) {
        return Discretiser.operator(0.5 + 3 * viscosity);
    }

    /** The same without its eddy viscosity, which is for eddies below a cell: for flows that the cells resolve. */
    static CollisionOperator resolved(double viscosity) {
        return new CollisionOperator.Bgk(0.5 + 3 * viscosity, 0);
    }

    /** Water all through. */
    static LatticeProblem box(int[] size, Faces faces, CollisionOperator operator, BodyForce... forces) {
        return new LatticeProblem(size[0], size[1], size[2], new boolean[size[0] * size[1] * size[2]], faces, operator,
                List.of(forces), List.<MassSource>of(), 1);
    }

    /** The same force on each cell of a box. */
    static BodyForce everywhere(int[] size, double fx, double fy, double fz) {
        return BodyForce.uniform(IntStream.range(0, size[0] * size[1] * size[2]).toArray(), fx, fy, fz);
    }

    Flow start(Start start) {
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    int cell = problem.index(i, j, k);
                    if (!problem.solid()[cell]) {
                        double[] moments = start.at(i + 0.5, j + 0.5, k + 0.5);
                        now.densityDeviation()[cell] = (float) moments[0];
                        now.ux()[cell] = (float) moments[1];
                        now.uy()[cell] = (float) moments[2];
                        now.uz()[cell] = (float) moments[3];
                    }
                }
            }
        }
        solver.initialise(now);
        return this;
    }

    Flow advance(int steps) {
        solver.advance(steps);
        solver.read(now);
        return this;
    }

    /**
     * Goes on until no velocity changes by more than a limit from one look to the next, or to the last look.
     *
     * @return the greatest change between the last two looks
     */
    double settle(int stepsPerLook, double limit, int mostLooks) {
        float[][] before = new float[3][problem.cells()];
        double change = Double.POSITIVE_INFINITY;
        for (int look = 0; look < mostLooks && change >= limit; look++) {
            advance(stepsPerLook);
            change = 0;
            for (int axis = 0; axis < 3; axis++) {
                float[] after = component(axis);
                for (int cell = 0; cell < after.length; cell++) {
                    change = Math.max(change, Math.abs(after[cell] - before[axis][cell]));
                }
                before[axis] = Arrays.copyOf(after, after.length);
            }
        }
        return change;
    }

    long step() {
        return solver.step();
    }

    /** Velocity along an axis in every cell. */
    float[] component(int axis) {
        return axis == 0 ? now.ux() : axis == 1 ? now.uy() : now.uz();
    }

    double velocity(int axis, int i, int j, int k) {
        return component(axis)[problem.index(i, j, k)];
    }

    double fastest() {
        double fastest = 0;
        for (int cell = 0; cell < now.cells(); cell++) {
            fastest = Math.max(fastest, Math.hypot(now.ux()[cell], Math.hypot(now.uy()[cell], now.uz()[cell])));
        }
        return fastest;
    }

    double kineticEnergy() {
        double sum = 0;
        for (int cell = 0; cell < now.cells(); cell++) {
            sum += 0.5 * ((double) now.ux()[cell] * now.ux()[cell] + (double) now.uy()[cell] * now.uy()[cell]
                    + (double) now.uz()[cell] * now.uz()[cell]);
        }
        return sum;
    }

    /** r.m.s. of the difference to a velocity field, over the r.m.s. of that field. */
    double errorAgainst(Start exact) {
        double error = 0;
        double all = 0;
        for (int cell = 0; cell < now.cells(); cell++) {
            int plane = problem.nx() * problem.ny();
            double[] wanted = exact.at(cell % problem.nx() + 0.5, cell / problem.nx() % problem.ny() + 0.5,
                    cell / plane + 0.5);
            for (int axis = 0; axis < 3; axis++) {
                double difference = component(axis)[cell] - wanted[axis + 1];
                error += difference * difference;
                all += wanted[axis + 1] * wanted[axis + 1];
            }
        }
        return Math.sqrt(error / all);
    }

    /** Order of convergence between two errors. */
    static double order(double coarse, double fine, double ratio) {
        return Math.log(coarse / fine) / Math.log(ratio);
    }

    @Override
    public void close() {
        solver.close();
    }
}
