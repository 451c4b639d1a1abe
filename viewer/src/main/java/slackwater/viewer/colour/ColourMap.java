package slackwater.viewer.colour;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Published colour maps in 256 steps that rise evenly in lightness and are read alike with and without
 * colour-blindness; the source of each stands in the first line of its table. MANAGUA goes from one hue through dark to
 * another, for differences.
 */
public enum ColourMap {
    CIVIDIS, VIRIDIS, MANAGUA;

    private static final int STEPS = 256;
    private final int[] rgb = read(name().toLowerCase(Locale.ROOT));

    /** The colour of a value on 0..1; what lies outside takes the colour of the end. */
    public Colour at(double fraction) {
        return Colour.of(rgb[(int) Math.max(0, Math.min(STEPS - 1, Math.floor(fraction * STEPS)))]);
    }

    /** The table, 0xRRGGBB, from the low end to the high one. */
    public int[] table() {
        return rgb.clone();
    }

    private static int[] read(String name) {
        try (InputStream file = ColourMap.class.getResourceAsStream(name + ".txt")) {
            String text = new String(file.readAllBytes(), StandardCharsets.US_ASCII);
            String[] steps = text.substring(text.indexOf('\n')).trim().split("\\s+");
            int[] rgb = new int[STEPS];
            for (int n = 0; n < STEPS; n++) {
                rgb[n] = Integer.parseInt(steps[n], 16);
            }
            return rgb;
        } catch (IOException gone) {
            throw new IllegalStateException("the table of " + name + " is part of the program", gone);
        }
    }
}
