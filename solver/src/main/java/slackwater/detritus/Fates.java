package slackwater.detritus;

import java.util.List;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;

/** Counts the grains of one release in each scene. */
final class Fates {
    private final Drift drift;
    private final Grid grid;
    private final int corals;

    Fates(Drift drift, Grid grid, int corals) {
        this.drift = drift;
        this.grid = grid;
        this.corals = corals;
    }

    Fate of(int release, String from) {
        List<Fate.Moment> moments = drift.scenes().stream().map(scene -> moment(scene, release)).toList();
        Release released = drift.releases().get(release);
        return new Fate(released.grain(), from, released.count(), moments,
                deposit(drift.scenes().get(drift.scenes().size() - 1), release));
    }

    private Fate.Moment moment(Scene scene, int release) {
        double one = 1.0 / drift.releases().get(release).count();
        double[] share = new double[Place.values().length];
        double[] onCoral = new double[corals];
        for (int n = 0; n < scene.grains(); n++) {
            if (scene.group()[n] == release) {
                share[scene.place()[n]] += one;
                if (scene.place(n) == Place.CORAL) {
                    onCoral[scene.at()[n]] += one;
                }
            }
        }
        return new Fate.Moment(scene.timeS(), share, onCoral);
    }

    private float[] deposit(Scene scene, int release) {
        float[] perM2 = new float[grid.cells()];
        double one = 1 / (drift.releases().get(release).count() * grid.cellSizeM() * grid.cellSizeM());
        for (int n = 0; n < scene.grains(); n++) {
            if (scene.group()[n] == release && lies(scene.place(n))) {
                perM2[grid.indexAt(new Vec3(scene.xM()[n], scene.yM()[n], scene.zM()[n]))] += (float) one;
            }
        }
        return perM2;
    }

    private static boolean lies(Place place) {
        return place == Place.SAND || place == Place.ROCK || place == Place.GLASS || place == Place.CORAL;
    }
}
