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
 * rock, sand, surface and periodic faces. Done before each sweep; no copy reads what another one writes, so their order
 * does not matter.
 *
 * <p>With populations stored in place ([Bailey2009]) an even step leaves f*_j(y) in slot opp(j) of y and the odd step
 * that follows looks for f_i(x) in slot opp(i) of x - c_i; an odd step leaves f*_j(y) in slot j of y + c_j and the even
 * step looks in slot i of x.
 */
final class Links {
    private final LatticeProblem problem;
    private final Layout layout;
    private final WallCells walls;
    private final WallCells kickedWalls;
    private final BitSet kicked = new BitSet();
    private final Copies even = new Copies();
    private final Copies odd = new Copies();
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
    Links(LatticeProblem problem, Layout layout, WallCells walls, WallCells kickedWalls, float[] eddy) {
        Arrays.fill(eddy, eddy(problem, false));
        this.problem = problem;
        this.layout = layout;
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
        even.pack();
        odd.pack();
    }

    /** The copies for the parity of the step that follows. */
    Copies copies(boolean evenStep) {
        return evenStep ? even : odd;
    }

    /** Adds what moving walls give; after the copies. */
    void push(float[] f, boolean evenStep) {
        int[] target = evenStep ? evenMoving : oddMoving;
        for (int n = 0; n < movingCount; n++) {
            f[target[n]] += gain[n];
        }
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
            even.add(evenTo, origin.direction() * layout.stride + left + layout.offset(origin.direction()));
            odd.add(oddTo, VelocitySet.opposite(origin.direction()) * layout.stride + left);
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
