package slackwater.backend.cpu;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MixingLength;
import slackwater.lattice.Streaming;
import slackwater.lattice.VelocitySet;
import slackwater.lattice.WallFriction;

/**
 * The boundaries as copies within the array of populations: all that streaming at constant offsets gets wrong at glass,
 * rock, sand, surface and periodic faces. No copy reads what another one writes, so their order does not matter, but
 * each must be done before the sweep touches either of its two places. Most are: just before the first block that does,
 * while its cells are in the cache. A few are early, before the whole sweep: those of cells that a source kicks, those
 * of moving walls and those between two threads' blocks.
 *
 * <p>With populations stored in place ([Bailey2009]) an even step leaves f*_j(y) in slot opp(j) of y and the odd step
 * that follows looks for f_i(x) in slot opp(i) of x - c_i; an odd step leaves f*_j(y) in slot j of y + c_j and the even
 * step looks in slot i of x.
 */
final class Links {
    /** Work for a copy, roughly, where the sweep of a cell is 1. */
    private static final double WORK = 0.35;

    private final LatticeProblem problem;
    private final Layout layout;
    private final WallCells walls;
    private final WallCells kickedWalls;
    private final BitSet kicked = new BitSet();
    private final Spans spans;
    /** For even and for odd steps. */
    private final Copies[] copies;
    private int[] evenMoving = new int[16];
    private int[] oddMoving = new int[16];
    private float[] gain = new float[16];
    private int movingCount;

    /**
     * Lists the links of a problem and tells the walls of the law of the wall which cells touch them.
     *
     * @param walls gets the cells at walls but for those that a source kicks, which {@code kickedWalls} gets
     * @param eddy filled with 18 sqrt(2) l^2 of every cell, for its mixing length l, in the array's layout
     */
    Links(LatticeProblem problem, Layout layout, Spans spans, WallCells walls, WallCells kickedWalls, float[] eddy) {
        Arrays.fill(eddy, eddy(problem, false));
        this.problem = problem;
        this.layout = layout;
        this.spans = spans;
        this.copies = new Copies[] {new Copies(spans.count()), new Copies(spans.count())};
        this.walls = walls;
        this.kickedWalls = kickedWalls;
        problem.forces().forEach(force -> IntStream.of(force.cells()).forEach(kicked::set));
        problem.massSources().forEach(source -> IntStream.of(source.cells()).forEach(kicked::set));
        Streaming streaming = new Streaming(problem);
        int[] home = layout.homes(problem);
        for (int k = 0; k < problem.nz(); k++) {
            for (int j = 0; j < problem.ny(); j++) {
                for (int i = 0; i < problem.nx(); i++) {
                    if (!problem.solid()[problem.index(i, j, k)] && (onFace(problem, i, j, k)
                            || besideSolid(problem, i, j, k))) {
                        addLinks(streaming, home, eddy, i, j, k);
                    }
                }
            }
        }
    }

    /** Work for the links of each block, in sweeps of a cell; before they are packed. */
    double[] work() {
        return IntStream.of(copies[0].counts()).mapToDouble(count -> WORK * count).toArray();
    }

    /** Ends the listing, before the first step. */
    void pack(Shares shares) {
        copies[0].pack(shares);
        copies[1].pack(shares);
    }

    /** Does the early copies for a parity of the step that follows, and adds what moving walls give. */
    void applyEarly(float[] f, int parity) {
        copies[parity].applyEarly(f);
        int[] target = parity == 0 ? evenMoving : oddMoving;
        for (int n = 0; n < movingCount; n++) {
            f[target[n]] += gain[n];
        }
    }

    /** Does the copies that are due before the blocks [first, end) are swept. */
    void apply(float[] f, int parity, int first, int end) {
        copies[parity].apply(f, first, end);
    }

    private void addLinks(Streaming streaming, int[] home, float[] eddy, int i, int j, int k) {
        int cell = layout.cell(i, j, k);
        int turned = 0;
        double roughDrag = 0;
        for (int direction = 1; direction < VelocitySet.Q; direction++) {
            Streaming.Origin origin = streaming.origin(i, j, k, direction);
            int left = home[origin.cell()];
            if (origin.direction() == direction && left + layout.offset(direction) == cell) {
                continue;
            }
            int opposite = VelocitySet.opposite(direction);
            int evenTo = direction * layout.stride + cell;
            int oddTo = opposite * layout.stride + cell - layout.offset(direction);
            int here = spans.blockOf(cell);
            int beyond = left + layout.offset(origin.direction());
            int swept = spans.blockOf(beyond);
            int there = swept < 0 ? here : swept;
            int first = origin.gain() != 0 || kicked.get(problem.index(i, j, k)) ? -1 : Math.min(here, there);
            int last = Math.max(here, there);
            copies[0].add(first, last, evenTo, origin.direction() * layout.stride + beyond);
            copies[1].add(first, last, oddTo, VelocitySet.opposite(origin.direction()) * layout.stride + left);
            if (origin.gain() != 0) {
                addMoving(evenTo, oddTo, origin.gain());
            }
            if (origin.law().isPresent()) {
                turned |= 1 << direction;
                roughDrag = Math.max(roughDrag, WallFriction.roughDrag(origin.law().get()));
            }
        }
        if (turned != 0) {
            eddy[cell] = eddy(problem, true);
            int index = problem.index(i, j, k);
            (kicked.get(index) ? kickedWalls : walls).add(index, cell, turned, roughDrag);
        }
    }

    private static float eddy(LatticeProblem problem, boolean atWall) {
        double length = MixingLength.of(problem.operator(), atWall);
        return (float) (18 * Math.sqrt(2) * length * length);
    }

    private void addMoving(int evenTo, int oddTo, double value) {
        if (movingCount == gain.length) {
            evenMoving = Arrays.copyOf(evenMoving, 2 * movingCount);
            oddMoving = Arrays.copyOf(oddMoving, 2 * movingCount);
            gain = Arrays.copyOf(gain, 2 * movingCount);
        }
        evenMoving[movingCount] = evenTo;
        oddMoving[movingCount] = oddTo;
        gain[movingCount++] = (float) value;
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
