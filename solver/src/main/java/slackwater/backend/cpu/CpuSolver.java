package slackwater.backend.cpu;

import java.util.Arrays;
import slackwater.backend.Equilibrium;
import slackwater.backend.FlowSolver;
import slackwater.backend.FlowState;
import slackwater.backend.Kicks;
import slackwater.backend.Moments;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/**
 * One copy of the populations, streamed in place: even steps read and write a cell's own populations, odd steps its
 * neighbours', so that a cell touches the same places when it reads as when it writes and no two cells share any
 * ([Bailey2009]). A step is: links, walls, kicks, sweep. The walls
 * of cells that no source kicks wait for the sweep and go just before their block, which then finds them in the cache:
 * no cell's wall touches what another cell reads.
 */
final class CpuSolver implements FlowSolver, Kicks.Populations {
    private final LatticeProblem problem;
    private final Layout layout;
    private final WallCells walls;
    private final WallCells kickedWalls;
    private final Links links;
    private final Spans spans;
    private final Sweep[] sweeps;
    private final Crew crew;
    private final float[][] rooms;
    private final float[] f;
    private final int[] homes;
    private final int[][] readBase = new int[2][VelocitySet.Q];
    private final Crew.Task copyTask = this::copyShare;
    private final Crew.Task wallTask = this::wallShare;
    private final Crew.Task sweepTask = this::sweepShare;
    private Kicks kicks;
    private long step;
    private boolean fresh = true;

    CpuSolver(LatticeProblem problem, int threads) {
        this.problem = problem;
        this.layout = new Layout(problem);
        this.spans = new Spans(problem, layout);
        this.walls = new WallCells(WallFriction.of(problem.operator()), spans);
        this.kickedWalls = new WallCells(WallFriction.of(problem.operator()), spans);
        float[] eddy = new float[layout.stride];
        this.links = new Links(problem, layout, walls, kickedWalls, eddy);
        this.sweeps = new Sweep[threads];
        Arrays.setAll(sweeps, worker -> new BgkSweep((Bgk) problem.operator(), eddy));
        this.f = new float[layout.floats()];
        this.homes = layout.homes(problem);
        this.kicks = new Kicks(problem);
        for (int i = 0; i < VelocitySet.Q; i++) {
            readBase[0][i] = i * layout.stride;
            readBase[1][i] = VelocitySet.opposite(i) * layout.stride - layout.offset(i);
        }
        this.rooms = new float[threads][];
        Arrays.setAll(rooms, worker -> FlatWallSweep.room());
        this.crew = new Crew(threads);
    }

    @Override
    public void initialise(Moments moments) {
        restart(0);
        for (int cell = 0; cell < problem.cells(); cell++) {
            boolean solid = problem.solid()[cell];
            for (int i = 0; i < VelocitySet.Q; i++) {
                f[i * layout.stride + homes[cell]] = solid ? 0
                        : (float) Equilibrium.deviation(i, moments.densityDeviation()[cell], moments.ux()[cell],
                                moments.uy()[cell], moments.uz()[cell]);
            }
        }
    }

    private void restart(long atStep) {
        kicks = new Kicks(problem);
        step = atStep;
        fresh = true;
        walls.clear();
        kickedWalls.clear();
    }

    @Override
    public void advance(int steps) {
        for (int n = 0; n < steps; n++) {
            if (!fresh) {
                applyLinks();
            }
            kicks.apply(step, this);
            crew.run(sweepTask);
            step++;
            fresh = false;
        }
    }

    /**
     * Brings the populations that arrive at boundaries to where the next step reads them, and treats the walls of the
     * cells that are kicked; the start has all that done. Doing it again changes nothing.
     */
    private void applyLinks() {
        crew.run(copyTask);
        links.push(f, even());
        kickedWalls.apply(f, base(), 0, kickedWalls.rows(), rooms[0]);
    }

    /** All that has to be done before populations can be read; doing it again changes nothing. */
    private void arrive() {
        if (!fresh) {
            applyLinks();
            crew.run(wallTask);
        }
    }

    private void copyShare(int worker) {
        Copies copies = links.copies(even());
        copies.apply(f, share(copies.runs(), worker), share(copies.runs(), worker + 1));
    }

    private void wallShare(int worker) {
        walls.apply(f, base(), share(walls.rows(), worker), share(walls.rows(), worker + 1), rooms[worker]);
    }

    private void sweepShare(int worker) {
        int[] base = base();
        int last = share(spans.count(), worker + 1);
        for (int block = share(spans.count(), worker); block < last; block++) {
            if (!fresh) {
                walls.apply(f, base, walls.firstRow(block), walls.firstRow(block + 1), rooms[worker]);
            }
            sweeps[worker].collide(f, base, spans.from(block), spans.to(block));
        }
    }

    /** Where direction i of cell 0 is read in the step that follows. */
    private int[] base() {
        return readBase[even() ? 0 : 1];
    }

    private int share(int count, int worker) {
        return (int) ((long) count * worker / crew.size());
    }

    private boolean even() {
        return (step & 1) == 0;
    }

    @Override
    public long step() {
        return step;
    }

    @Override
    public void read(Moments moments) {
        arrive();
        crew.run(worker -> readShare(moments, share(problem.cells(), worker), share(problem.cells(), worker + 1)));
        kicks.addHalfForce(step, moments);
    }

    private void readShare(Moments moments, int from, int to) {
        int[] base = base();
        for (int cell = from; cell < to; cell++) {
            boolean solid = problem.solid()[cell];
            float deviation = 0;
            float jx = 0;
            float jy = 0;
            float jz = 0;
            for (int i = 0; i < VelocitySet.Q && !solid; i++) {
                float value = f[base[i] + homes[cell]];
                deviation += value;
                jx += value * VelocitySet.cx(i);
                jy += value * VelocitySet.cy(i);
                jz += value * VelocitySet.cz(i);
            }
            moments.densityDeviation()[cell] = deviation;
            moments.ux()[cell] = jx / (1 + deviation);
            moments.uy()[cell] = jy / (1 + deviation);
            moments.uz()[cell] = jz / (1 + deviation);
        }
    }

    @Override
    public void readWallStress(float[] stress) {
        arrive();
        Arrays.fill(stress, 0);
        walls.readStress(stress);
        kickedWalls.readStress(stress);
    }

    @Override
    public FlowState state() {
        arrive();
        int cells = problem.cells();
        float[] deviations = new float[cells * VelocitySet.Q];
        int[] base = base();
        for (int i = 0; i < VelocitySet.Q; i++) {
            for (int cell = 0; cell < cells; cell++) {
                deviations[i * cells + cell] = problem.solid()[cell] ? 0 : f[base[i] + homes[cell]];
            }
        }
        return new FlowState(step, deviations);
    }

    @Override
    public void resume(FlowState state) {
        int cells = problem.cells();
        state.requireCells(cells);
        restart(state.step());
        Arrays.fill(f, 0);
        int[] base = base();
        for (int i = 0; i < VelocitySet.Q; i++) {
            for (int cell = 0; cell < cells; cell++) {
                if (!problem.solid()[cell]) {
                    f[base[i] + homes[cell]] = state.deviations()[i * cells + cell];
                }
            }
        }
    }

    @Override
    public double get(int cell, int direction) {
        return f[base()[direction] + homes[cell]];
    }

    @Override
    public void add(int cell, int direction, double change) {
        f[base()[direction] + homes[cell]] += (float) change;
    }

    @Override
    public void close() {
        crew.close();
    }
}
