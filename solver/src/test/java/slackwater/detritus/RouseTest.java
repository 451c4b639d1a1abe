package slackwater.detritus;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import slackwater.detritus.Release.From;

/**
 * Grains that sink in a channel whose eddies lift them again: the profile of Rouse 1937 (Trans. ASCE 102:463; the form
 * is exact for K = kappa u* z (1 - z/h), see Soulsby 1997, Dynamics of Marine Sands), C/C_a = ((h - z)/z a/(h - a))^P
 * with P = w/(kappa u*). Nothing rests on the bed, so that whatever happens there the flux through each level is zero.
 */
class RouseTest {
    private static final double DEPTH_M = 0.2;
    private static final double FRICTION_M_PER_S = 0.02;
    private static final double KAPPA = 0.41;
    private static final double EXPONENT = 0.5;
    private static final int GRAINS = 3000;
    private static final int LAYERS = 14;

    @Test
    void theProfileIsThatOfRouse() {
        MadeFlow channel = new MadeFlow(6, 6, LAYERS, DEPTH_M / LAYERS);
        channel.fill(channel.now.eddyViscosityM2PerS(), at -> Eddies.SCHMIDT * KAPPA * FRICTION_M_PER_S * at.z()
                * (1 - at.z() / DEPTH_M)).fill(channel.now.wallShear(), at -> 100);
        Release release = new Release(MadeFlow.grain(EXPONENT * KAPPA * FRICTION_M_PER_S, 1), new From.Everywhere(),
                GRAINS, 1);
        List<Double> looks = IntStream.rangeClosed(0, 12).mapToObj(n -> 60.0 + 5 * n).toList();
        Drift drift = Tracker.follow(channel.tank(), channel.steady(), List.of(release),
                new Schedule(120, 120, looks), new Tracker.Chance(1, 2));
        double[] layers = new double[LAYERS];
        for (Scene scene : drift.scenes()) {
            for (int n = 0; n < GRAINS; n++) {
                layers[(int) (scene.zM()[n] / DEPTH_M * LAYERS)]++;
            }
        }
        SimpleRegression fit = new SimpleRegression();
        for (int layer = 2; layer < LAYERS - 2; layer++) {
            double height = (layer + 0.5) / LAYERS;
            fit.addData(Math.log((1 - height) / height), Math.log(layers[layer]));
        }
        // 13 looks at 3000 grains, not independent: chance alone moves the slope by some 2 % and a layer by some 5 %
        assertEquals(EXPONENT, fit.getSlope(), 0.08 * EXPONENT, "Rouse number");
        for (int layer = 2; layer < LAYERS - 2; layer++) {
            double height = (layer + 0.5) / LAYERS;
            double rouse = fit.getIntercept() + EXPONENT * Math.log((1 - height) / height);
            assertEquals(1, layers[layer] / Math.exp(rouse), 0.15, "layer " + layer);
        }
    }
}
