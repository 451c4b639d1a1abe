package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.geometry.Vec3;
import slackwater.scenario.Pump;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;

/**
 * Layouts as numbers, for an optimiser: five a pump, each 0..1. The allowed panes are unrolled into one strip, from the
 * left end of the front pane against the clock (seen from above), so that one number says where on the glass; then come
 * the height, the aim sideways and up against the pane's straight-in, and the output.
 */
public final class Codec {
    static final int GENES = 5;
    private static final double MOST_YAW_RAD = Math.toRadians(75);
    private static final double MOST_PITCH_RAD = Math.toRadians(40);
    private static final double ON_PANE_M = 0.05;
    /** The panes in the order in which they meet. */
    private static final List<Wall> ROUND = List.of(Wall.FRONT, Wall.RIGHT, Wall.BACK, Wall.LEFT);

    private final Tank tank;
    private final List<Piece> pieces;
    private final Wishes wishes;

    /** A stretch of a pane for the middle of an outlet, metres along the pane; from may lie beyond to, walked back. */
    private record Stretch(Wall pane, double fromM, double toM) {
        double lengthM() {
            return Math.abs(toM - fromM);
        }
    }

    public Codec(Tank tank, List<Piece> pieces, Wishes wishes) {
        this.tank = tank;
        this.pieces = List.copyOf(pieces);
        this.wishes = wishes;
    }

    /** How many numbers a layout takes. */
    public int genes() {
        return GENES * pieces.size();
    }

    List<Piece> pieces() {
        return pieces;
    }

    /** The pumps that numbers stand for; numbers outside 0..1 count as the nearest inside. */
    public List<Pump> pumps(double[] genes) {
        List<Pump> pumps = new ArrayList<>();
        for (int n = 0; n < pieces.size(); n++) {
            pumps.add(pump(pieces.get(n), genes, GENES * n));
        }
        return pumps;
    }

    private Pump pump(Piece piece, double[] genes, int at) {
        List<Stretch> strip = strip(piece);
        double left = within(genes[at]) * strip.stream().mapToDouble(Stretch::lengthM).sum();
        int n = 0;
        while (n < strip.size() - 1 && left > strip.get(n).lengthM()) {
            left -= strip.get(n++).lengthM();
        }
        Stretch stretch = strip.get(n);
        double along = stretch.fromM() + Math.signum(stretch.toM() - stretch.fromM()) * left;
        double[] heights = heightsM(piece);
        Vec3 place = Pane.pointM(tank, stretch.pane(), along, piece.model().bodyM().x(),
                between(heights[0], heights[1], genes[at + 1]));
        double yaw = Pane.inwardYawRad(stretch.pane()) + between(-MOST_YAW_RAD, MOST_YAW_RAD, genes[at + 2]);
        return piece.placed(place, yaw, between(-MOST_PITCH_RAD, MOST_PITCH_RAD, genes[at + 3]),
                between(piece.model().leastOutputFraction(), 1, genes[at + 4]));
    }

    /** The numbers nearest to a layout; empty where a pump hangs on no pane that is allowed. */
    public Optional<double[]> genes(List<Pump> pumps) {
        double[] genes = new double[genes()];
        if (pumps.size() != pieces.size()) {
            return Optional.empty();
        }
        for (int n = 0; n < pumps.size(); n++) {
            if (!put(pumps.get(n), pieces.get(n), genes, GENES * n)) {
                return Optional.empty();
            }
        }
        return Optional.of(genes);
    }

    private boolean put(Pump pump, Piece piece, double[] genes, int at) {
        Wall pane = Pane.nearest(tank, pump.atM());
        List<Stretch> strip = strip(piece);
        double before = 0;
        int n = 0;
        while (n < strip.size() && strip.get(n).pane() != pane) {
            before += strip.get(n++).lengthM();
        }
        double off = Pane.offM(tank, pane, pump.atM()) - piece.model().bodyM().x();
        if (n == strip.size() || Math.abs(off) > ON_PANE_M) {
            return false;
        }
        Stretch stretch = strip.get(n);
        double along = (Pane.alongM(pane, pump.atM()) - stretch.fromM()) * Math.signum(stretch.toM() - stretch.fromM());
        double total = strip.stream().mapToDouble(Stretch::lengthM).sum();
        double[] heights = heightsM(piece);
        double yaw = Math.IEEEremainder(pump.yawRad() - Pane.inwardYawRad(pane), 2 * Math.PI);
        genes[at] = within((before + Math.max(0, Math.min(stretch.lengthM(), along))) / total);
        genes[at + 1] = share(heights[0], heights[1], pump.atM().z());
        genes[at + 2] = share(-MOST_YAW_RAD, MOST_YAW_RAD, yaw);
        genes[at + 3] = share(-MOST_PITCH_RAD, MOST_PITCH_RAD, pump.pitchRad());
        genes[at + 4] = share(piece.model().leastOutputFraction(), 1, pump.outputFraction());
        return true;
    }

    /** A plain layout to begin with: spread evenly along the strip, high up, straight in, full output. */
    public double[] spread() {
        double[] genes = new double[genes()];
        for (int n = 0; n < pieces.size(); n++) {
            genes[GENES * n] = (n + 0.5) / pieces.size();
            genes[GENES * n + 1] = 0.7;
            genes[GENES * n + 2] = 0.5;
            genes[GENES * n + 3] = 0.5;
            genes[GENES * n + 4] = 1;
        }
        return genes;
    }

    private List<Stretch> strip(Piece piece) {
        double edge = wishes.clearances().glassM() + piece.reachM();
        List<Stretch> strip = new ArrayList<>();
        for (Wall pane : ROUND) {
            double length = Pane.lengthM(tank, pane);
            if (wishes.panes().contains(pane)) {
                double low = Math.min(edge, length / 2);
                boolean onwards = pane == Wall.FRONT || pane == Wall.RIGHT;
                strip.add(onwards ? new Stretch(pane, low, length - low) : new Stretch(pane, length - low, low));
            }
        }
        return strip;
    }

    /** Least and greatest height of an outlet's middle, metres. */
    private double[] heightsM(Piece piece) {
        double top = tank.waterLevelM() - Math.max(piece.model().leastDepthM(),
                wishes.clearances().surfaceM() + piece.outletHalfM());
        double low = Math.max(tank.sandDepthM() + wishes.clearances().sandM() + piece.model().bodyM().z() / 2,
                tank.waterLevelM() - piece.model().greatestDepthM());
        return new double[] {Math.min(low, top), top};
    }

    private static double between(double low, double high, double gene) {
        return low + within(gene) * (high - low);
    }

    private static double share(double low, double high, double value) {
        return high == low ? 0.5 : within((value - low) / (high - low));
    }

    private static double within(double gene) {
        return Math.max(0, Math.min(1, gene));
    }
}
