package slackwater.detritus;

import java.util.List;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;

/**
 * What became of one feeding.
 *
 * @param atM where it was let go, metres
 * @param massKg how much it was
 * @param fate the shares at 1, 5 and 15 minutes
 * @param drift every grain
 */
public record Feeding(Vec3 atM, double massKg, Fate fate, Drift drift) {
    private static final int GRAINS = 20_000;
    private static final double RADIUS_M = 0.015;
    private static final double COUNT_S = 5;
    private static final List<Double> SHOWN_S = List.of(60.0, 300.0, 900.0);

    /** A handful of something. */
    public record Portion(Grain grain, double massKg, Vec3 atM) {
    }

    /**
     * Feeds, and follows the food for a quarter of an hour.
     *
     * @throws slackwater.field.UnfitGrid if there is no water about the place
     */
    public static Feeding of(Scenario scenario, FlowRecord record, Portion portion, Tracker.Chance chance) {
        Release release = new Release(portion.grain(), new From.Pinch(portion.atM(), RADIUS_M), GRAINS, 1);
        Drift drift = Tracker.follow(scenario, record, List.of(release),
                new Schedule(SHOWN_S.get(SHOWN_S.size() - 1), COUNT_S, SHOWN_S), chance);
        Fate fate = new Fates(drift, record.grid(), scenario.corals().size()).of(0, "fed at one place");
        return new Feeding(portion.atM(), portion.massKg(), fate, drift);
    }

    /**
     * Share of the grains that lie or drift in some cells, at each of the times of the fate.
     *
     * @param record for its grid
     * @param cells true for the cells that count
     */
    public List<Double> within(FlowRecord record, boolean[] cells) {
        return drift.scenes().stream().map(scene -> within(scene, record, cells)).toList();
    }

    private static double within(Scene scene, FlowRecord record, boolean[] cells) {
        int count = 0;
        for (int n = 0; n < scene.grains(); n++) {
            Vec3 at = new Vec3(scene.xM()[n], scene.yM()[n], scene.zM()[n]);
            boolean gone = scene.place(n) == Place.FILTER || scene.place(n) == Place.PUMP;
            count += !gone && cells[record.grid().indexAt(at)] ? 1 : 0;
        }
        return (double) count / scene.grains();
    }
}
