package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Release.From;
import slackwater.field.FlowRecord;

/**
 * The well-mixed criterion (Thomson 1987, J. Fluid Mech. 180:529): what is evenly mixed must stay so, however unevenly
 * the eddies mix. A random walk without its drift would gather where K is small: by K itself, up to a hundredfold here.
 * Allowed is a deviation of 5 % from layer to layer beyond chance, r.m.s.: what is asked of the tank's shares.
 */
class MixedTest {
    private static final int GRAINS = 24_000;
    private static final int LAYERS = 24;
    private static final double ALLOWED = 0.05;

    @Test
    void unevenEddiesLeaveItMixed() {
        MadeFlow box = new MadeFlow(12, 12, LAYERS, 0.01);
        box.fill(box.now.eddyViscosityM2PerS(), at -> 2e-6 + 2e-4 * Math.pow(Math.sin(Math.PI * at.z() / 0.12), 2));
        assertTrue(unevenness(box, box.steady()) < ALLOWED * ALLOWED, () -> "" + unevenness(box, box.steady()));
    }

    @Test
    void aJumpOfTheEddiesLeavesItMixed() {
        MadeFlow box = new MadeFlow(12, 12, LAYERS, 0.01);
        box.fill(box.now.eddyViscosityM2PerS(), at -> at.z() < 0.12 ? 2e-4 : 2e-6);
        assertTrue(unevenness(box, box.steady()) < ALLOWED * ALLOWED, () -> "" + unevenness(box, box.steady()));
    }

    /** A whirl that fills the box and turns back and forth, free of divergence, with eddies that grow to one side. */
    @Test
    void aWhirlLeavesItMixed() {
        MadeFlow box = new MadeFlow(24, 4, LAYERS, 0.01);
        double k = Math.PI / 0.24;
        box.stream(at -> 0.2 * Math.sin(k * at.x()) * Math.cos(k * at.z()), at -> 0,
                        at -> -0.2 * Math.cos(k * at.x()) * Math.sin(k * at.z()))
                .fill(box.now.eddyViscosityM2PerS(), at -> 1e-5 + 5e-5 * at.x() / 0.24);
        FlowRecord record = box.recorded(List.of(1.0, 1.0, 0.2, -0.6, -0.6, 0.2));
        assertTrue(unevenness(box, record) < ALLOWED * ALLOWED, () -> "" + unevenness(box, record));
    }

    /** The mean square of the layers' relative deviations after 10 s, less what chance alone explains. */
    private static double unevenness(MadeFlow box, FlowRecord record) {
        Release release = new Release(MadeFlow.grain(0, 1), new From.Everywhere(), GRAINS, 1);
        Scene after = MadeFlow.follow(box.tank(), record, release, 10).scenes().get(0);
        int[] layers = new int[LAYERS];
        for (int n = 0; n < GRAINS; n++) {
            assertEquals(Place.WATER, after.place(n));
            layers[(int) (after.zM()[n] / 0.01)]++;
        }
        double expected = (double) GRAINS / LAYERS;
        double sum = 0;
        for (int layer : layers) {
            sum += (layer / expected - 1) * (layer / expected - 1);
        }
        return sum / (LAYERS - 1) - 1 / expected;
    }
}
