package slackwater.viewer.scene;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a picture can show beside the tank itself. */
public enum Layer {
    STILL_WATER("still-water", true), SPEED("speed", true), STREAMLINES("streamlines", true),
    FAST_WATER("fast-water", true), TRACERS("tracers", true), SHEAR("shear", true), DEPOSIT("deposit", true),
    GRAINS("grains", true), JETS("jets", false), NAMES("names", false);

    private final String word;
    private final boolean needsWater;

    Layer(String word, boolean needsWater) {
        this.word = word;
        this.needsWater = needsWater;
    }

    /** Its name on the command line. */
    public String word() {
        return word;
    }

    /** Whether it shows what water does, which a layout alone cannot tell. */
    public boolean needsWater() {
        return needsWater;
    }

    public static Optional<Layer> of(String word) {
        return Arrays.stream(values()).filter(layer -> layer.word.equals(word)).findFirst();
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Layer::word).toList();
    }
}
