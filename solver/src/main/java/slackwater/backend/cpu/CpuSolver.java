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

/**
 * One copy of the populations, streamed in place: even steps read and write a cell's own populations, odd steps its
 * neighbours', so that a cell touches the same places when it reads as when it writes and no two cells share any
 * ([Bailey2009]). A step of a block is: kicks, sweep, links. Links follow the sweep as closely as they can, while cells
 * are in the cache; those of blocks that border on another thread's or on the far side of the tank wait until all have
 * swept.
 */
final class CpuSolver implements FlowSolver, Kicks.Populations {
    /** Work for a kick, roughly, where the sweep of a cell is 1. */
    private static final double KICK_WORK = 22;

    private final LatticeProblem problem;
    private final Layout layout;
    private final Links links;
    private final Spans spans;
    private final Shares shares;
    private final Sweep[] sweeps;
    private final Crew crew;
    private final float[] f;
    private final Reading reading;
    /** Room for the populations of a cell, for each thread. */
    private final double[][] rooms;
    private final Crew.Task sweepTask = this::sweepShare;
    private final Crew.Task lateTask = this::lateShare;
    private Kicks kicks;
    /** First kick of each block, and past the last one. */
    private final int[] firstKick;
    private long step;

    /** @param vectors whether to use the Java machine's vector module */
    CpuSolver(LatticeProblem problem, int threads, boolean vectors) {
        this.problem = problem;
        this.layout = new Layout(problem);
        this.spans = new Spans(problem, layout);
        this.links = new Links(problem, layout, spans, threads, vectors);
        this.kicks = new Kicks(problem);
        this.firstKick = kicksByBlock();
        this.shares = shares(threads);
        links.share(shares);
        Bgk operator = (Bgk) problem.operator();
        float[] eddy = links.eddy();
        this.sweeps = new Sweep[threads];
        Arrays.setAll(sweeps, worker -> vectors ? new BgkSweep(operator, eddy) : new PlainBgkSweep(operator, eddy));
        this.f = new float[layout.floats()];
        this.reading = new Reading(f, problem.solid(), vectors);
        this.rooms = new double[threads][VelocitySet.Q];
        this.crew = new Crew(threads);
    }

    private Shares shares(int threads) {
        double[] work = new double[spans.count()];
        Arrays.setAll(work, block -> spans.cells(block) + links.work(block)
                + KICK_WORK * (firstKick[block + 1] - firstKick[block]));
        return new Shares(work, threads);
    }

    private int[] kicksByBlock() {
        int[] first = new int[spans.count() + 1];
        for (int n = 0; n < kicks.count(); n++) {
            first[spans.blockOf(layout.home(problem, kicks.cell(n))) + 1]++;
        }
        for (int block = 0; block < spans.count(); block++) {
            first[block + 1] += first[block];
        }
        return first;
    }

    @Override
    public void initialise(Moments moments) {
        restart(0);
        for (int cell = 0; cell < problem.cells(); cell++) {
            boolean solid = problem.solid()[cell];
            int home = layout.home(problem, cell);
            for (int i = 0; i < VelocitySet.Q; i++) {
                f[layout.base(0, i) + home] = solid ? 0
                        : (float) Equilibrium.deviation(i, moments.densityDeviation()[cell], moments.ux()[cell],
                                moments.uy()[cell], moments.uz()[cell]);
            }
        }
    }

    private void restart(long atStep) {
        kicks = new Kicks(problem);
        step = atStep;
        links.clear();
    }

    @Override
    public void advance(int steps) {
        for (int n = 0; n < steps; n++) {
            kicks.prepare(step);
            crew.run(sweepTask);
            if (links.anyLate()) {
                crew.run(lateTask);
            }
            step++;
        }
    }

    private void sweepShare(int worker) {
        int[] base = layout.bases(parity());
        int linked = shares.first(worker);
        for (int block = linked; block < shares.first(worker + 1); block++) {
            kicks.apply(this, firstKick[block], firstKick[block + 1], rooms[worker]);
            spans.collide(sweeps[worker], f, base, block);
            for (; linked <= block && (links.late(linked) || links.lastNeeded(linked) <= block); linked++) {
                if (!links.late(linked)) {
                    links.apply(f, 1 - parity(), linked, worker);
                }
            }
        }
    }

    private void lateShare(int worker) {
        for (int block = shares.first(worker); block < shares.first(worker + 1); block++) {
            if (links.late(block)) {
                links.apply(f, 1 - parity(), block, worker);
            }
        }
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
        threads().over(problem.ny() * problem.nz(), (from, to) -> readRows(moments, from, to));
        kicks.addHalfForce(step, moments);
    }

    /** Row by row, so that every loop runs along memory. */
    private void readRows(Moments moments, int from, int to) {
        int[] base = layout.bases(parity());
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
        Arrays.fill(stress, 0);
        links.readStress(stress);
    }

    @Override
    public FlowState state() {
        int cells = problem.cells();
        float[] deviations = new float[cells * VelocitySet.Q];
        int[] base = layout.bases(parity());
        for (int cell = 0; cell < cells; cell++) {
            int home = layout.home(problem, cell);
            for (int i = 0; i < VelocitySet.Q; i++) {
                deviations[i * cells + cell] = problem.solid()[cell] ? 0 : f[base[i] + home];
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
        int[] base = layout.bases(parity());
        for (int cell = 0; cell < cells; cell++) {
            int home = layout.home(problem, cell);
            for (int i = 0; i < VelocitySet.Q && !problem.solid()[cell]; i++) {
                f[base[i] + home] = state.deviations()[i * cells + cell];
            }
        }
    }

    @Override
    public void get(int cell, double[] populations) {
        int[] base = layout.bases(parity());
        int home = layout.home(problem, cell);
        for (int i = 0; i < VelocitySet.Q; i++) {
            populations[i] = f[base[i] + home];
        }
    }

    @Override
    public void add(int cell, double[] changes) {
        int[] base = layout.bases(parity());
        int home = layout.home(problem, cell);
        for (int i = 0; i < VelocitySet.Q; i++) {
            f[base[i] + home] += (float) changes[i];
        }
    }

    @Override
    public void close() {
        crew.close();
    }
}
