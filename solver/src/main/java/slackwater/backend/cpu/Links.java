package slackwater.backend.cpu;

import java.util.Arrays;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MixingLength;
import slackwater.lattice.Streaming;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/**
 * The boundaries: all that streaming at constant offsets gets wrong at glass, rock, sand, surface and periodic faces.
 * Walls of the law of the wall are put right together with the law ({@link WallCells}); all else, before that, by
 * copies within the array of populations, to which moving walls add. It is done block by block of the sweep, as soon as
 * all that a block depends on has been swept.
 *
 * <p>With populations stored in place ([Bailey2009]) an even step leaves f*_j(y) in slot opp(j) of y and the odd step
 * that follows looks for f_i(x) in slot opp(i) of x - c_i; an odd step leaves f*_j(y) in slot j of y + c_j and the even
 * step looks in slot i of x. So half-way bounce-back, f_i(x) = f*_opp(i)(x), is a copy to where a step looks from where
 * the next step will.
 */
final class Links {
    /** Work for a run of copies, roughly, where the sweep of a cell is 1. */
    private static final double RUN_WORK = 2;

    private final LatticeProblem problem;
    private final Layout layout;
    private final Spans spans;
    /** How far in the array a step may bring the populations of a cell, but for periodic faces. */
    private final int reach;
    private final WallCells walls;
    private final WallRoom[] rooms;
    /** For even and for odd steps. */
    private final Copies[] copies;
    private final MovingWalls moving;
    private final boolean[] late;
    private boolean anyLate;
    private final int[] lastNeeded;
    private final float[] eddy;

    /**
     * Lists the links of a problem.
     *
     * @param threads how many will go through them
     * @param vectors whether the Java machine has its vector module
     */
    Links(LatticeProblem problem, Layout layout, Spans spans, int threads, boolean vectors) {
        this.problem = problem;
        this.layout = layout;
        this.spans = spans;
        this.reach = layout.offset(VelocitySet.direction(1, 1, 1));
        this.walls = new WallCells(WallFriction.of(problem.operator()), spans, vectors);
        this.rooms = new WallRoom[threads];
        Arrays.setAll(rooms, thread -> WallCells.room(vectors));
        this.copies = new Copies[] {new Copies(spans.count()), new Copies(spans.count())};
        this.moving = new MovingWalls(spans.count());
        this.late = new boolean[spans.count()];
        this.lastNeeded = new int[spans.count()];
        Arrays.setAll(lastNeeded, block -> spans.lastBefore(spans.end(block) + reach));
        this.eddy = new float[layout.stride];
        Arrays.fill(eddy, eddy(problem, false));
        addAll();
        walls.pack();
        copies[0].pack();
        copies[1].pack();
        moving.pack();
    }

    private void addAll() {
        Streaming streaming = new Streaming(problem);
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    if (!problem.solid()[problem.index(i, j, k)] && (onFace(problem, i, j, k)
                            || besideSolid(problem, i, j, k))) {
                        add(streaming, i, j, k);
                    }
                }
            }
        }
    }

    private void add(Streaming streaming, int i, int j, int k) {
        int cell = layout.cell(i, j, k);
        int block = spans.blockOf(cell);
        int turned = 0;
        int rubbed = 0;
        double roughDrag = 0;
        for (int direction = 1; direction < VelocitySet.Q; direction++) {
            Streaming.Origin origin = streaming.origin(i, j, k, direction);
            int left = layout.home(problem, origin.cell());
            boolean back = left == cell && origin.direction() == VelocitySet.opposite(direction);
            if (back && origin.gain() == 0) {
                turned |= 1 << direction;
            } else if (origin.direction() != direction || left + layout.offset(direction) != cell) {
                addCopy(block, cell, direction, left, origin.direction());
                late[block] |= Math.abs(left - cell) > reach;
            }
            if (origin.gain() != 0) {
                moving.add(block, layout.base(0, direction) + cell, layout.base(1, direction) + cell, origin.gain());
            }
            if (origin.law().isPresent()) {
                rubbed |= 1 << direction;
                roughDrag = Math.max(roughDrag, WallFriction.roughDrag(origin.law().get()));
            }
        }
        if (rubbed != 0) {
            eddy[cell] = eddy(problem, true);
        }
        if (rubbed == 0 || !walls.add(problem.index(i, j, k), cell, turned, rubbed, roughDrag)) {
            for (int links = turned; links != 0; links &= links - 1) {
                int direction = Integer.numberOfTrailingZeros(links);
                addCopy(block, cell, direction, cell, VelocitySet.opposite(direction));
            }
        }
    }

    /** The population that arrives at a cell in a direction left another one, in a direction of its own. */
    private void addCopy(int block, int cell, int direction, int left, int leaving) {
        int back = VelocitySet.opposite(leaving);
        copies[0].add(block, layout.base(0, direction) + cell, layout.base(1, back) + left);
        copies[1].add(block, layout.base(1, direction) + cell, layout.base(0, back) + left);
    }

    /** 18 sqrt(2) l^2 of every cell, for its mixing length l, in the array's layout. */
    float[] eddy() {
        return eddy;
    }

    private static float eddy(LatticeProblem problem, boolean atWall) {
        double length = MixingLength.of(problem.operator(), atWall);
        return (float) (18 * Math.sqrt(2) * length * length);
    }

    /** Work for the links of a block, in sweeps of a cell. */
    double work(int block) {
        return walls.work(block) + RUN_WORK * copies[0].runs(block);
    }

    /** Notes whose block is whose: those that depend on blocks of other threads have to wait for the whole sweep. */
    void share(Shares shares) {
        for (int block = 0; block < late.length; block++) {
            int thread = shares.thread(block);
            late[block] |= shares.thread(spans.firstReaching(spans.from(block) - reach)) != thread
                    || shares.thread(lastNeeded[block]) != thread;
            anyLate |= late[block];
        }
    }

    /** Whether the links of a block have to wait for the whole sweep. */
    boolean late(int block) {
        return late[block];
    }

    /** Whether the links of any do. */
    boolean anyLate() {
        return anyLate;
    }

    /** The last block to be swept before the links of a block that is not late. */
    int lastNeeded(int block) {
        return lastNeeded[block];
    }

    /**
     * Does the links of a block.
     *
     * @param f all populations, as deviations from the weights
     * @param parity of the step that follows
     */
    void apply(float[] f, int parity, int block, int thread) {
        copies[parity].apply(f, block);
        moving.apply(f, parity, block);
        walls.apply(f, layout.bases(parity), layout.bases(1 - parity), block, rooms[thread]);
    }

    /** No stress at walls, as before the first step. */
    void clear() {
        walls.clear();
    }

    /** Writes rho u_tau^2 of the cells at walls into a field, x fastest. */
    void readStress(float[] target) {
        walls.readStress(target);
    }

    private static boolean onFace(LatticeProblem problem, int i, int j, int k) {
        return i == 0 || j == 0 || k == 0 || i == problem.nx() - 1 || j == problem.ny() - 1 || k == problem.nz() - 1;
    }

    private static boolean besideSolid(LatticeProblem problem, int i, int j, int k) {
        for (int direction = 1; direction < VelocitySet.Q; direction++) {
            int neighbour = problem.index(i + VelocitySet.cx(direction), j + VelocitySet.cy(direction),
                    k + VelocitySet.cz(direction));
            if (problem.solid()[neighbour]) {
                return true;
            }
        }
        return false;
    }
}
