package slackwater.viewer.scene;

import slackwater.detritus.Place;
import slackwater.detritus.Scene;
import slackwater.viewer.shape.Floats;

/**
 * Grains of one kind as a picture shows them.
 *
 * @param what their kind, a word such as food
 * @param timeS since they were let go, seconds
 * @param driftingM where those in the water are, three coordinates each, metres
 * @param lyingM where those that lie are, likewise
 * @param onCorals how many of those lie on corals
 * @param filtered how many have left through the overflow
 * @param caught how many stay in a pump
 */
public record Crumbs(String what, double timeS, float[] driftingM, float[] lyingM, int onCorals, int filtered,
                     int caught) {
    /**
     * Those of some releases, at the places where they are to be seen.
     *
     * @param release the number of the release; below 0 for all
     */
    public static Crumbs of(String what, Scene scene, int release, Seats seats) {
        Floats drifting = new Floats();
        Floats lying = new Floats();
        int onCorals = 0;
        int filtered = 0;
        int caught = 0;
        for (int n = 0; n < scene.grains(); n++) {
            if (release >= 0 && scene.group()[n] != release) {
                continue;
            }
            Place place = scene.place(n);
            if (place == Place.FILTER || place == Place.PUMP) {
                filtered += place == Place.FILTER ? 1 : 0;
                caught += place == Place.PUMP ? 1 : 0;
                continue;
            }
            float[] at = place == Place.WATER ? new float[] {scene.xM()[n], scene.yM()[n], scene.zM()[n]}
                    : seats.of(scene, n);
            for (float coordinate : at) {
                (place == Place.WATER ? drifting : lying).add(coordinate);
            }
            onCorals += place == Place.CORAL ? 1 : 0;
        }
        return new Crumbs(what, scene.timeS(), drifting.array(), lying.array(), onCorals, filtered, caught);
    }

    public int drifting() {
        return driftingM.length / 3;
    }

    public int lying() {
        return lyingM.length / 3;
    }

    /** All of them, wherever they are. */
    public int all() {
        return drifting() + lying() + filtered + caught;
    }

    /** A share of all in words: 7 %, under 1 %, none. */
    String share(int some) {
        long percent = Math.round(100.0 * some / Math.max(1, all()));
        return some == 0 ? "none" : percent == 0 ? "under 1 %" : percent + " %";
    }
}
