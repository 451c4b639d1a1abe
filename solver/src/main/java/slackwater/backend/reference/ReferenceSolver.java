package slackwater.backend.reference;

import java.util.Arrays;
import slackwater.backend.Equilibrium;
import slackwater.backend.FlowSolver;
import slackwater.backend.FlowState;
import slackwater.backend.Kicks;
import slackwater.backend.Moments;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MixingLength;
import slackwater.lattice.Streaming;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/** Stream and collide on two arrays of populations, stored as deviations from the weights. */
final class ReferenceSolver implements FlowSolver, Kicks.Populations {
    private final LatticeProblem problem;
    private final Collision collision;
    private final Streaming streaming;
    private final WallFunction wall;
    private final double[] wallStress;
    private final double[] mixingLength;
    private Kicks kicks;
    private double[][] arrived;
    private double[][] next;
    private long step;

    ReferenceSolver(LatticeProblem problem) {
        this.problem = problem;
        this.collision = new Collision(problem.operator());
        this.streaming = new Streaming(problem);
        this.wall = new WallFunction(WallFriction.of(problem.operator()));
        this.wallStress = new double[problem.cells()];
        this.mixingLength = mixingLengths();
        this.kicks = new Kicks(problem);
        this.arrived = new double[problem.cells()][VelocitySet.Q];
        this.next = new double[problem.cells()][VelocitySet.Q];
    }

    private double[] mixingLengths() {
        double[] lengths = new double[problem.cells()];
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    boolean atWall = false;
                    for (int direction = 0; direction < VelocitySet.Q; direction++) {
                        atWall |= !problem.solid()[problem.index(i, j, k)]
                                && streaming.origin(i, j, k, direction).law().isPresent();
                    }
                    lengths[problem.index(i, j, k)] = MixingLength.of(problem.operator(), atWall);
                }
            }
        }
        return lengths;
    }

    @Override
    public void initialise(Moments moments) {
        kicks = new Kicks(problem);
        step = 0;
        Arrays.fill(wallStress, 0);
        for (int cell = 0; cell < problem.cells(); cell++) {
            for (int i = 0; i < VelocitySet.Q; i++) {
                arrived[cell][i] = problem.solid()[cell] ? 0
                        : Equilibrium.deviation(i, moments.densityDeviation()[cell], moments.ux()[cell],
                                moments.uy()[cell], moments.uz()[cell]);
            }
        }
    }

    @Override
    public void advance(int steps) {
        for (int n = 0; n < steps; n++) {
            kicks.prepare(step);
            kicks.apply(this, 0, kicks.count(), new double[VelocitySet.Q]);
            for (int cell = 0; cell < problem.cells(); cell++) {
                if (!problem.solid()[cell]) {
                    collision.collide(arrived[cell], mixingLength[cell]);
                }
            }
            stream();
            step++;
        }
    }

    private void stream() {
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    int cell = problem.index(i, j, k);
                    if (!problem.solid()[cell]) {
                        wall.clear();
                        for (int direction = 0; direction < VelocitySet.Q; direction++) {
                            Streaming.Origin origin = streaming.origin(i, j, k, direction);
                            next[cell][direction] = arrived[origin.cell()][origin.direction()] + origin.gain();
                            if (origin.law().isPresent()) {
                                wall.add(direction, origin.law().get());
                            }
                        }
                        wallStress[cell] = wall.apply(next[cell]);
                    }
                }
            }
        }
        double[][] spent = arrived;
        arrived = next;
        next = spent;
    }

    @Override
    public long step() {
        return step;
    }

    @Override
    public void read(Moments moments) {
        for (int cell = 0; cell < problem.cells(); cell++) {
            double deviation = 0;
            double jx = 0;
            double jy = 0;
            double jz = 0;
            for (int i = 0; i < VelocitySet.Q && !problem.solid()[cell]; i++) {
                double f = arrived[cell][i];
                deviation += f;
                jx += f * VelocitySet.cx(i);
                jy += f * VelocitySet.cy(i);
                jz += f * VelocitySet.cz(i);
            }
            moments.densityDeviation()[cell] = (float) deviation;
            moments.ux()[cell] = (float) (jx / (1 + deviation));
            moments.uy()[cell] = (float) (jy / (1 + deviation));
            moments.uz()[cell] = (float) (jz / (1 + deviation));
        }
        kicks.addHalfForce(step, moments);
    }

    @Override
    public void readWallStress(float[] stress) {
        for (int cell = 0; cell < stress.length; cell++) {
            stress[cell] = (float) wallStress[cell];
        }
    }

    @Override
    public FlowState state() {
        int cells = problem.cells();
        float[] deviations = new float[cells * VelocitySet.Q];
        for (int cell = 0; cell < cells; cell++) {
            for (int i = 0; i < VelocitySet.Q; i++) {
                deviations[i * cells + cell] = problem.solid()[cell] ? 0 : (float) arrived[cell][i];
            }
        }
        return new FlowState(step, deviations);
    }

    @Override
    public void resume(FlowState state) {
        int cells = problem.cells();
        state.requireCells(cells);
        kicks = new Kicks(problem);
        step = state.step();
        Arrays.fill(wallStress, 0);
        for (int cell = 0; cell < cells; cell++) {
            for (int i = 0; i < VelocitySet.Q; i++) {
                arrived[cell][i] = problem.solid()[cell] ? 0 : state.deviations()[i * cells + cell];
            }
        }
    }

    @Override
    public void get(int cell, double[] populations) {
        System.arraycopy(arrived[cell], 0, populations, 0, VelocitySet.Q);
    }

    @Override
    public void add(int cell, double[] changes) {
        for (int i = 0; i < VelocitySet.Q; i++) {
            arrived[cell][i] += changes[i];
        }
    }

    @Override
    public void close() {
        // Nothing to give back: one thread, plain arrays.
    }
}
