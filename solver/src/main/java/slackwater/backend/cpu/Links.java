package slackwater.backend.cpu;

import java.util.Arrays;
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
    private int[] evenTo = new int[1024];
    private int[] evenFrom = new int[1024];
    private int[] oddTo = new int[1024];
    private int[] oddFrom = new int[1024];
    private int count;
    private int[] moving = new int[16];
    private float[] gain = new float[16];
    private int movingCount;

    /**
     * Lists the links of a problem and tells the walls of the law of the wall which cells touch them.
     *
     * @param eddy filled with 18 sqrt(2) l^2 of every cell, for its mixing length l, in the array's layout
     */
    Links(LatticeProblem problem, Layout layout, WallCells walls, float[] eddy) {
        Arrays.fill(eddy, eddy(problem, false));
        this.problem = problem;
        this.layout = layout;
        this.walls = walls;
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

    int count() {
        return count;
    }

    /** Does the copies from one link to another for the parity of the step that follows. */
    void copy(float[] f, boolean even, int from, int to) {
        int[] target = even ? evenTo : oddTo;
        int[] source = even ? evenFrom : oddFrom;
        for (int n = from; n < to; n++) {
            f[target[n]] = f[source[n]];
        }
    }

    /** Adds what moving walls give; after the copies. */
    void push(float[] f, boolean even) {
        int[] target = even ? evenTo : oddTo;
        for (int n = 0; n < movingCount; n++) {
            f[target[moving[n]]] += gain[n];
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
            ensureRoom();
            evenTo[count] = direction * layout.stride + cell;
            evenFrom[count] = origin.direction() * layout.stride + left + layout.offset(origin.direction());
            oddTo[count] = opposite * layout.stride + cell - layout.offset(direction);
            oddFrom[count] = VelocitySet.opposite(origin.direction()) * layout.stride + left;
            if (origin.gain() != 0) {
                addMoving(origin.gain());
            }
            if (origin.law().isPresent()) {
                turned |= 1 << direction;
                roughDrag = Math.max(roughDrag, WallFriction.roughDrag(origin.law().get()));
            }
            count++;
        }
        if (turned != 0) {
            eddy[cell] = eddy(problem, true);
            walls.add(problem.index(i, j, k), cell, turned, roughDrag);
        }
    }

    private static float eddy(LatticeProblem problem, boolean atWall) {
        double length = MixingLength.of(problem.operator(), atWall);
        return (float) (18 * Math.sqrt(2) * length * length);
    }

    private void addMoving(double value) {
        if (movingCount == moving.length) {
            moving = Arrays.copyOf(moving, 2 * movingCount);
            gain = Arrays.copyOf(gain, 2 * movingCount);
        }
        moving[movingCount] = count;
        gain[movingCount++] = (float) value;
    }

    private void ensureRoom() {
        if (count == evenTo.length) {
            int room = 2 * count;
            evenTo = Arrays.copyOf(evenTo, room);
            evenFrom = Arrays.copyOf(evenFrom, room);
            oddTo = Arrays.copyOf(oddTo, room);
            oddFrom = Arrays.copyOf(oddFrom, room);
        }
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
