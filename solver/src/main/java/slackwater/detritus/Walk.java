package slackwater.detritus;

import java.util.List;
import slackwater.field.FlowRecord;
import slackwater.field.Grid;

/**
 * Moves grains. Between two frames each takes as many steps as it needs, by the midpoint rule through the water, with
 * its settling speed added, and then a random step for the eddies below a cell:
 *
 * <p>dx = (u + w) dt, then dx = B(x + B(x) dW) dW with B = sqrt(2 K). Taking the size of the step from where it leads
 * is the drift dK/dx of a random walk that keeps mixed what is well mixed ([Thomson1987]), without a derivative, and it
 * holds where K jumps as well ([LaBolle2000]).
 */
final class Walk {
    /** The longest step through the water and the longest random one, one standard deviation, in cells. */
    private static final double REACH = 0.5;
    private static final double LONGEST_KICK = 0.25;
    private static final Place[] PLACES = Place.values();
    /** Far more than any water needs between two frames, and any step faces: beyond, the record is not sound. */
    private static final int MOST_STEPS = 100_000;
    private static final int MOST_FACES = 1000;
    private final FlowRecord record;
    private final Grid grid;
    private final Ground ground;
    private final Slopes slopes;
    private final Water water;
    private final Eddies eddies;
    private final List<Grain> grains;
    private final Dice dice;
    private final Cloud cloud;
    private final Drag drag;
    private final int[] count;
    private final double[] at = new double[3];
    private final double[] way = new double[3];
    private final int[] cell = new int[3];
    private int frame;
    private double share;
    private long draw;
    private boolean stopped;
    private boolean sinks;
    private boolean slides;

    /** What there is to land on, and to go in. */
    record Terrain(Ground ground, Slopes slopes, Water water, Eddies eddies) {
    }

    /** @param grains the kind of each group of the cloud */
    Walk(FlowRecord record, Terrain terrain, List<Grain> grains, Cloud cloud, Dice dice) {
        this.record = record;
        this.grid = record.grid();
        this.ground = terrain.ground();
        this.slopes = terrain.slopes();
        this.water = terrain.water().again();
        this.eddies = terrain.eddies().again();
        this.drag = new Drag(record, water, ground);
        this.grains = grains;
        this.cloud = cloud;
        this.dice = dice;
        this.count = new int[] {grid.nx(), grid.ny(), grid.nz()};
    }

    /** Takes some grains from a frame to the next. */
    void step(int from, int to, int atFrame, long interval) {
        frame = atFrame;
        water.turnTo(frame);
        double dt = record.stepS(frame);
        for (int n = from; n < to; n++) {
            draw = interval << 24;
            Place place = PLACES[cloud.place[n]];
            if (place == Place.SAND || place == Place.ROCK || place == Place.GLASS || place == Place.CORAL) {
                share = 0;
                lift(n, place);
            }
            if (cloud.place[n] == Place.WATER.ordinal()) {
                swim(n, dt);
            }
        }
    }

    private void lift(int n, Place place) {
        if (shearPa(n, place) > holdPa(n, place, cloud.at[n])) {
            cloud.place[n] = (byte) Place.WATER.ordinal();
            cloud.at[n] = -1;
        }
    }

    private double holdPa(int n, Place place, int coral) {
        return grains.get(cloud.group[n]).liftPa(ground.footing(place, coral)) * cloud.hold[n];
    }

    private double shearPa(int n, Place place) {
        return place == Place.CORAL ? coralShearPa(n, cloud.at[n])
                : record.floorShearPa(frame, water.cell(cloud.x[n], cloud.y[n], cloud.z[n]));
    }

    private double coralShearPa(int n, int coral) {
        return drag.pa(coral, cloud.x[n], cloud.y[n], cloud.z[n], share);
    }

    private void swim(int n, double intervalS) {
        double left = intervalS;
        for (int steps = 0; steps < MOST_STEPS && left > 0 && cloud.place[n] == Place.WATER.ordinal(); steps++) {
            share = 1 - left / intervalS;
            left -= stroke(n, left, intervalS);
        }
        if (cloud.place[n] == Place.WATER.ordinal() && !(left <= 0)) {
            throw lost(n, "after " + MOST_STEPS + " steps " + left + " s of " + intervalS + " s were left");
        }
    }

    private IllegalStateException lost(int n, String found) {
        return new IllegalStateException("grain " + n + " at " + cloud.x[n] + ", " + cloud.y[n] + ", " + cloud.z[n]
                + " cells, frame " + frame + ": " + found + "; the recorded water must be finite and pass a cell in no"
                + " less than " + 1.0 / MOST_STEPS + " of a frame; look for a run that ran away");
    }

    /** One step, with the water and then at random; returns how long it took. */
    private double stroke(int n, double mostS, double intervalS) {
        double x = cloud.x[n];
        double y = cloud.y[n];
        double z = cloud.z[n];
        double sink = cloud.settlingMPerS[n] / grid.cellSizeM();
        water.read(x, y, z, share);
        double kick = eddies.kick(x, y, z);
        double speed = Math.max(Math.abs(water.u), Math.max(Math.abs(water.v), Math.abs(water.w) + sink));
        double dt = Math.min(mostS, Math.min(REACH / (speed + 1e-9), LONGEST_KICK * LONGEST_KICK
                / (kick * kick + 1e-9)));
        dt = mostS - dt < 1e-6 ? mostS : dt;
        double halfX = x + water.u * dt / 2;
        double halfY = y + water.v * dt / 2;
        double halfZ = z + (water.w - sink) * dt / 2;
        if (water.isWater(halfX, halfY, halfZ)) {
            water.read(halfX, halfY, halfZ, share + dt / 2 / intervalS);
        }
        head(water.u * dt, water.v * dt, (water.w - sink) * dt);
        sinks = true;
        go(n, sink * dt);
        if (kick > 0 && cloud.place[n] == Place.WATER.ordinal()) {
            wander(n, Math.sqrt(dt));
        }
        drain(n, dt);
        return dt;
    }

    /** The eddies below a cell. They bring nothing to rest: at a floor they die away, and only what sinks arrives. */
    private void wander(int n, double root) {
        double x = cloud.x[n];
        double y = cloud.y[n];
        double z = cloud.z[n];
        double a = dice.kick(n, draw++) * root;
        double b = dice.kick(n, draw++) * root;
        double c = dice.kick(n, draw++) * root;
        double kick = eddies.kick(x, y, z);
        if (water.isWater(x + kick * a, y + kick * b, z + kick * c)) {
            kick = eddies.kick(x + kick * a, y + kick * b, z + kick * c);
        }
        head(kick * a, kick * b, kick * c);
        sinks = false;
        go(n, 0);
    }

    private void head(double dx, double dy, double dz) {
        way[0] = dx;
        way[1] = dy;
        way[2] = dz;
    }

    private void go(int n, double sunk) {
        discs(n, sunk);
        if (cloud.place[n] == Place.WATER.ordinal()) {
            move(n);
        }
    }

    /** Water that leaves through the overflow takes its grains along. */
    private void drain(int n, double dt) {
        float outflow = record.outflowPerS()[water.cell(cloud.x[n], cloud.y[n], cloud.z[n])];
        if (outflow > 0 && cloud.place[n] == Place.WATER.ordinal()
                && dice.uniform(n, draw++) < -Math.expm1(-outflow * dt)) {
            cloud.place[n] = (byte) Place.FILTER.ordinal();
        }
    }

    /**
     * What the way through a disc does: a pump may catch the grain; a coral keeps what sinks onto it, C w, and no more,
     * since the water that seems to pass through a coral in truth goes round it.
     */
    private void discs(int n, double sunk) {
        int here = water.cell(cloud.x[n], cloud.y[n], cloud.z[n]);
        int pump = ground.pumpNear(here);
        if (pump >= 0 && grains.get(cloud.group[n]).caughtFraction() > 0
                && passes(n, ground.pump(pump)) > 0
                && dice.uniform(n, draw++) < grains.get(cloud.group[n]).caughtFraction()) {
            cloud.place[n] = (byte) Place.PUMP.ordinal();
            cloud.at[n] = (short) pump;
            return;
        }
        int coral = ground.coralNear(here);
        if (coral >= 0) {
            Disc disc = ground.coral(coral);
            double through = -passes(n, disc);
            if (through > 0 && dice.uniform(n, draw++) < sunk * disc.facing().z() / through
                    && coralShearPa(n, coral) <= holdPa(n, Place.CORAL, coral)) {
                cloud.place[n] = (byte) Place.CORAL.ordinal();
                cloud.at[n] = (short) coral;
            }
        }
    }

    /** How far a straight way goes through a disc along its facing, in cells: below 0 against it, 0 if it does not. */
    private double passes(int n, Disc disc) {
        double from = disc.before(cloud.x[n], cloud.y[n], cloud.z[n]);
        double to = disc.before(cloud.x[n] + way[0], cloud.y[n] + way[1], cloud.z[n] + way[2]);
        if (from * to > 0 || from == to) {
            return 0;
        }
        double part = from / (from - to);
        boolean hit = disc.beside(cloud.x[n] + part * way[0], cloud.y[n] + part * way[1],
                cloud.z[n] + part * way[2]) <= disc.across();
        return hit ? to - from : 0;
    }

    /** Goes along a straight line from face to face of the cells; walls turn it round, floors may keep it. */
    private void move(int n) {
        at[0] = cloud.x[n];
        at[1] = cloud.y[n];
        at[2] = cloud.z[n];
        for (int a = 0; a < 3; a++) {
            cell[a] = (int) at[a];
        }
        stopped = false;
        slides = false;
        for (int faces = 0; ; faces++) {
            if (faces == MOST_FACES) {
                throw lost(n, "a single step met " + MOST_FACES + " faces of cells");
            }
            int axis = -1;
            double part = 1;
            for (int a = 0; a < 3; a++) {
                double ahead = way[a] > 0 ? (cell[a] + 1 - at[a]) / way[a] : way[a] < 0 ? (cell[a] - at[a]) / way[a]
                        : 2;
                if (ahead < part) {
                    part = ahead;
                    axis = a;
                }
            }
            for (int a = 0; a < 3; a++) {
                at[a] += part * way[a];
                way[a] *= 1 - part;
            }
            if (axis < 0) {
                break;
            }
            cross(n, axis);
            if (stopped) {
                break;
            }
        }
        cloud.x[n] = inside(at[0], cell[0]);
        cloud.y[n] = inside(at[1], cell[1]);
        cloud.z[n] = inside(at[2], cell[2]);
    }

    private static float inside(double at, int cell) {
        return (float) Math.max(cell + Cloud.EDGE, Math.min(cell + 1 - Cloud.EDGE, at));
    }

    /** Goes on into the next cell if that is water; else comes to rest on a floor, slides off it or turns round. */
    private void cross(int n, int axis) {
        int step = way[axis] > 0 ? 1 : -1;
        cell[axis] += step;
        if (cell[axis] >= 0 && cell[axis] < count[axis] && record.fluid()[grid.index(cell[0], cell[1], cell[2])]) {
            return;
        }
        cell[axis] -= step;
        way[axis] = -way[axis];
        if (slides && axis < 2) {
            slides = false;
            int here = grid.index(cell[0], cell[1], cell[2]);
            if (record.hasFloor(here)) {
                land(n, here, true);
            }
            return;
        }
        if (axis == 2 && step < 0 && sinks) {
            land(n, grid.index(cell[0], cell[1], cell[2]), false);
        }
    }

    /** @param wedged whether it slid until something stood in its way, which holds it on steep rock too */
    private void land(int n, int floor, boolean wedged) {
        int coral = ground.coralAt(floor, at[0], at[1], at[2]);
        Place place = coral >= 0 ? Place.CORAL : ground.under(floor);
        double shear = coral >= 0 ? coralShearPa(n, coral) : record.floorShearPa(frame, floor);
        if (shear > holdPa(n, place, coral)) {
            return;
        }
        if (place == Place.ROCK && slopes.isSteep(floor) && !wedged) {
            slides = true;
            way[0] = slopes.x(floor) * way[2];
            way[1] = slopes.y(floor) * way[2];
            way[2] = 0;
        } else {
            rest(n, place, coral);
        }
    }

    private void rest(int n, Place place, int coral) {
        cloud.place[n] = (byte) place.ordinal();
        cloud.at[n] = (short) coral;
        stopped = true;
    }
}
