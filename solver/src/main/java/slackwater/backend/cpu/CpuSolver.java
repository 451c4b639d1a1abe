package slackwater.backend.cpu;

import java.util.Arrays;
import slackwater.backend.Equilibrium;
import slackwater.backend.FlowSolver;
import slackwater.backend.FlowState;
import slackwater.backend.Kicks;
import slackwater.backend.Moments;
import slackwater.backend.Spread;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/**
 * One copy of the populations, streamed in place: even steps read and write a cell's own populations, odd steps its
 * neighbours', so that a cell touches the same places when it reads as when it writes and no two cells share any
 * ([Bailey2009]). A step is: links, walls, kicks, sweep. Links and
 * walls of cells that no source kicks wait for the sweep and go just before their block, which then finds them in the
 * cache: no cell's wall touches what another cell reads.
 */
final class CpuSolver implements FlowSolver, Kicks.Populations {
    private final LatticeProblem problem;
    private final Layout layout;
    private final WallCells walls;
    private final WallCells kickedWalls;
    private final Links links;
    private final Spans spans;
    private final Shares shares;
    private final Sweep[] sweeps;
    private final Crew crew;
    private final float[][] rooms;
    private final float[] f;
    private final Reading reading;
    private final int[] homes;
    private final int[][] readBase = new int[2][VelocitySet.Q];
    private final Crew.Task linkTask = this::linkShare;
    private final Crew.Task wallTask = this::wallShare;
    private final Crew.Task sweepTask = this::sweepShare;
    private Kicks kicks;
    private long step;
    /** Whether links and walls are done for the step that follows, as they are at the start. */
    private boolean arrived = true;

    /** @param vectors whether to use the Java machine's vector module */
    CpuSolver(LatticeProblem problem, int threads, boolean vectors) {
        this.problem = problem;
        this.layout = new Layout(problem);
        this.spans = new Spans(problem, layout);
        WallFriction law = WallFriction.of(problem.operator());
        this.walls = new WallCells(law, spans, vectors);
        this.kickedWalls = new WallCells(law, spans, vectors);
        float[] eddy = new float[layout.stride];
        this.links = new Links(problem, layout, spans, walls, kickedWalls, eddy);
        walls.pack();
        kickedWalls.pack();
        this.shares = shares(threads);
        links.pack(shares);
        Bgk operator = (Bgk) problem.operator();
        this.sweeps = new Sweep[threads];
        Arrays.setAll(sweeps, worker -> vectors ? new BgkSweep(operator, eddy) : new PlainBgkSweep(operator, eddy));
        this.f = new float[layout.floats()];
        this.reading = new Reading(f, problem.solid(), vectors);
        this.homes = layout.homes(problem);
        this.kicks = new Kicks(problem);
        for (int i = 0; i < VelocitySet.Q; i++) {
            readBase[0][i] = i * layout.stride;
            readBase[1][i] = VelocitySet.opposite(i) * layout.stride - layout.offset(i);
        }
        this.rooms = new float[threads][];
        Arrays.setAll(rooms, worker -> WallCells.room(vectors));
        this.crew = new Crew(threads);
    }

    private Shares shares(int threads) {
        double[] work = links.work();
        for (int block = 0; block < work.length; block++) {
            work[block] += spans.to(block) - spans.from(block) + walls.work(block);
        }
        return new Shares(work, threads);
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
        arrived = true;
        walls.clear();
        kickedWalls.clear();
    }

    @Override
    public void advance(int steps) {
        for (int n = 0; n < steps; n++) {
            if (!arrived) {
                applyEarlyLinks();
            }
            kicks.apply(step, this);
            crew.run(sweepTask);
            step++;
            arrived = false;
        }
    }

    /** What must be done before cells are kicked. */
    private void applyEarlyLinks() {
        links.applyEarly(f, parity());
        kickedWalls.apply(f, base(), 0, spans.count(), rooms[0]);
    }

    /** All that has to be done before populations can be read. */
    private void arrive() {
        if (!arrived) {
            applyEarlyLinks();
            crew.run(linkTask);
            crew.run(wallTask);
            arrived = true;
        }
    }

    private void linkShare(int worker) {
        links.apply(f, parity(), shares.first(worker), shares.first(worker + 1));
    }

    private void wallShare(int worker) {
        walls.apply(f, base(), shares.first(worker), shares.first(worker + 1), rooms[worker]);
    }

    private void sweepShare(int worker) {
        int[] base = base();
        for (int block = shares.first(worker); block < shares.first(worker + 1); block++) {
            if (!arrived) {
                links.apply(f, parity(), block, block + 1);
                walls.apply(f, base, block, block + 1, rooms[worker]);
            }
            sweeps[worker].collide(f, base, spans.from(block), spans.to(block));
        }
    }

    /** Where direction i of cell 0 is read in the step that follows. */
    private int[] base() {
        return readBase[parity()];
    }

    private int share(int count, int worker) {
        return (int) ((long) count * worker / crew.size());
    }

    /** 0 if the step that follows is even, 1 if it is odd. */
    private int parity() {
        return (int) (step & 1);
    }

    @Override
    public long step() {
        return step;
    }

    @Override
    public void read(Moments moments) {
        arrive();
        threads().over(problem.ny() * problem.nz(), (from, to) -> readRows(moments, from, to));
        kicks.addHalfForce(step, moments);
    }

    /** Row by row, so that every loop runs along memory. */
    private void readRows(Moments moments, int from, int to) {
        int[] base = base();
        for (int row = from; row < to; row++) {
            reading.row(base, layout.cell(0, row % problem.ny(), row / problem.ny()), problem.nx(), moments,
                    row * problem.nx());
        }
    }

    @Override
    public Spread threads() {
        return (count, part) -> crew.run(worker -> part.run(share(count, worker), share(count, worker + 1)));
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
