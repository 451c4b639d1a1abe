package slackwater.detritus;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.field.Grid;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;

/** Puts grains where they start. */
final class Start {
    private static final int MOST_TRIES = 1000;
    /** Draws of the dice that the start may use; those of the way begin far beyond. */
    private static final long FIRST_DRAW = 1L << 62;

    private final Ground ground;
    private final Grid grid;
    private final Dice dice;
    private final Cloud cloud;
    private final int[] water;
    private final int[] surface;
    private long draw;

    /** @param cloud where they are put */
    Start(Ground ground, FlowRecord record, Dice dice, Cloud cloud) {
        this.ground = ground;
        this.grid = record.grid();
        this.dice = dice;
        this.cloud = cloud;
        this.water = IntStream.range(0, grid.cells()).filter(cell -> record.fluid()[cell]).toArray();
        int layer = grid.nx() * grid.ny();
        this.surface = Arrays.stream(water).filter(cell -> cell >= grid.cells() - layer).toArray();
    }

    static Cloud of(List<Release> releases, Ground ground, FlowRecord record, Dice dice) {
        Cloud cloud = new Cloud(Tracker.size(releases));
        Start start = new Start(ground, record, dice, cloud);
        int n = 0;
        for (int group = 0; group < releases.size(); group++) {
            n = start.put(n, group, releases.get(group));
        }
        return cloud;
    }

    /** Puts a release from a grain on; returns the number of the grain after its last. */
    int put(int first, int group, Release release) {
        for (int n = first; n < first + release.count(); n++) {
            start(n, group, release);
        }
        return first + release.count();
    }

    private void start(int n, int group, Release release) {
        draw = FIRST_DRAW;
        Grain grain = release.grain();
        cloud.group[n] = (short) group;
        cloud.at[n] = -1;
        cloud.settlingMPerS[n] = (float) (grain.settlingMPerS() * logNormal(n, grain.spreadFraction()));
        cloud.hold[n] = (float) (release.hold() * logNormal(n, Grain.THRESHOLD_SPREAD));
        Vec3 at = first(n, release.from());
        cloud.x[n] = clear(at.x());
        cloud.y[n] = clear(at.y());
        cloud.z[n] = clear(at.z());
    }

    private Vec3 first(int n, From from) {
        if (from instanceof From.OnCoral own) {
            cloud.place[n] = (byte) Place.CORAL.ordinal();
            cloud.at[n] = (short) own.coral();
            return onCoral(n, ground.coral(own.coral()));
        }
        cloud.place[n] = (byte) Place.WATER.ordinal();
        return from instanceof From.Pinch pinch ? pinch(n, pinch) : within(n, from instanceof From.Surface ? surface
                : water);
    }

    /** A point of the disc, moved out of the steps of rock about it. */
    private Vec3 onCoral(int n, Disc disc) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Vec3 point = disc.point(dice.uniform(n, draw++), 2 * Math.PI * dice.uniform(n, draw++));
            for (double lift = 0.05; lift < 1; lift += 0.3) {
                Vec3 lifted = point.plus(disc.facing().times(lift));
                if (ground.isWater(lifted)) {
                    return lifted;
                }
            }
        }
        throw new UnfitGrid("a coral has no water before it on this grid: use smaller cells");
    }

    private Vec3 pinch(int n, From.Pinch pinch) {
        Vec3 centre = pinch.atM().times(1 / grid.cellSizeM());
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            Vec3 way = new Vec3(side(n), side(n), side(n));
            Vec3 point = centre.plus(way.times(pinch.radiusM() / grid.cellSizeM()));
            if (way.length() <= 1 && ground.isWater(point)) {
                return point;
            }
        }
        throw new UnfitGrid("there is no water where the grains are to be let go: choose another place");
    }

    private Vec3 within(int n, int[] cells) {
        if (cells.length == 0) {
            throw new UnfitGrid("there is no water to let grains go in");
        }
        int cell = cells[(int) (dice.uniform(n, draw++) * cells.length)];
        return new Vec3(cell % grid.nx() + dice.uniform(n, draw++),
                cell / grid.nx() % grid.ny() + dice.uniform(n, draw++),
                cell / (grid.nx() * grid.ny()) + dice.uniform(n, draw++));
    }

    private double side(int n) {
        return 2 * dice.uniform(n, draw++) - 1;
    }

    private double logNormal(int n, double spread) {
        draw += 2;
        return spread == 0 ? 1 : Math.exp(spread * dice.normal(n, draw - 2));
    }

    /** Off the border between two cells. */
    private static float clear(double at) {
        double cell = Math.floor(at);
        return (float) Math.max(cell + Cloud.EDGE, Math.min(cell + 1 - Cloud.EDGE, at));
    }
}
