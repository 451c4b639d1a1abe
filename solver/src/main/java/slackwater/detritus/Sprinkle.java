package slackwater.detritus;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import slackwater.field.FlowRecord;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;

/**
 * Grains let go in water that goes on, and in a layout that changes: they go the same way as those of a
 * {@link Tracker}, from one moment of the water to the next. The same seed and the same water give the same grains. Not
 * for use by more than one thread at a time.
 */
public final class Sprinkle {
    private final Dice dice;
    private final List<Release> releases = new ArrayList<>();
    private final Queue<Release> waiting = new ArrayDeque<>();
    private Scenario scenario;
    private Optional<Bed> bed = Optional.empty();
    private Cloud cloud = new Cloud(0);
    private long interval;
    private double timeS;

    /** What a layout has to lie on. */
    private record Bed(Ground ground, Slopes slopes, Openings openings) {
    }

    /** @param seed of all that is left to chance */
    public Sprinkle(Scenario scenario, long seed) {
        this.scenario = scenario;
        this.dice = new Dice(seed);
    }

    /** Lets more grains go, from the next {@link #follow} on. */
    public void letGo(Release release) {
        waiting.add(release);
    }

    /**
     * Goes over to another layout on cells of the same size. What lies somewhere falls anew, and lies again at once
     * where there is still something to lie on; grains that rock came upon are put beside it.
     */
    public void change(Scenario next) {
        scenario = next;
        bed = Optional.empty();
    }

    /**
     * Takes all grains from the first frame of a record to the second.
     *
     * @throws slackwater.field.UnfitGrid where grains were to be let go and there is no water; they are forgotten, and
     *     the others can be followed on
     */
    public void follow(FlowRecord record) {
        if (bed.isEmpty()) {
            Ground ground = new Ground(scenario, record.grid(), record.fluid());
            bed = Optional.of(new Bed(ground, Slopes.of(scenario.rocks(), record, ground),
                    new Openings(record.grid(), record.fluid())));
            loosen(record);
        }
        Ground ground = bed.get().ground();
        while (!waiting.isEmpty()) {
            Release release = waiting.remove();
            Cloud larger = cloud.enlarged(release.count());
            new Start(ground, record, dice, larger).put(cloud.size(), releases.size(), release);
            releases.add(release);
            cloud = larger;
        }
        new Walk(record, new Walk.Terrain(ground, bed.get().slopes(), new Water(record, bed.get().openings()),
                new Eddies(record)),
                releases.stream().map(Release::grain).toList(), cloud, dice).step(0, cloud.size(), 0, interval++);
        timeS += record.stepS(0);
    }

    /** Where every grain is, at the time since the first was let go; those that wait are not among them. */
    public Scene scene(double cellSizeM) {
        Scene scene = Scene.of(timeS, cloud);
        cloud.show(0, cloud.size(), cellSizeM, scene);
        return scene;
    }

    /** How many there are, those that wait included. */
    public int size() {
        return cloud.size() + waiting.stream().mapToInt(Release::count).sum();
    }

    private void loosen(FlowRecord record) {
        for (int n = 0; n < cloud.size(); n++) {
            Place place = Place.values()[cloud.place[n]];
            if (place != Place.FILTER && place != Place.PUMP) {
                cloud.place[n] = (byte) Place.WATER.ordinal();
                cloud.at[n] = -1;
                if (!record.fluid()[record.grid().index((int) cloud.x[n], (int) cloud.y[n], (int) cloud.z[n])]) {
                    putBeside(record, n);
                }
            }
        }
    }

    /** Into the middle of the nearest cell of water. */
    private void putBeside(FlowRecord record, int n) {
        double h = record.grid().cellSizeM();
        Vec3 from = new Vec3(cloud.x[n], cloud.y[n], cloud.z[n]).times(h);
        double least = Double.POSITIVE_INFINITY;
        for (int cell = 0; cell < record.grid().cells(); cell++) {
            Vec3 centre = record.grid().centreM(cell);
            double away = record.fluid()[cell] ? centre.minus(from).length() : Double.POSITIVE_INFINITY;
            if (away < least) {
                least = away;
                cloud.x[n] = (float) (centre.x() / h);
                cloud.y[n] = (float) (centre.y() / h);
                cloud.z[n] = (float) (centre.z() / h);
            }
        }
    }
}
