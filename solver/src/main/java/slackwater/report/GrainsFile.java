package slackwater.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.StringTokenizer;
import slackwater.detritus.Clearance;
import slackwater.detritus.Place;
import slackwater.detritus.Scene;
import slackwater.result.UnreadableResult;

/** Reads grains as {@link VtkGrains} writes them. */
final class GrainsFile {
    private static final long MOST_BYTES = 64L << 20;

    private final Path file;
    private final String text;

    private GrainsFile(Path file, String text) {
        this.file = file;
        this.text = text;
    }

    /** Where the grains of a run were at its end; empty where there is no such file or nothing was let go. */
    static Optional<Scene> read(Path file) throws IOException, UnreadableResult {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        if (Files.size(file) > MOST_BYTES) {
            throw new UnreadableResult(file + ": has more than 64 MB, is none of ours");
        }
        GrainsFile grains = new GrainsFile(file, new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        Scene scene = grains.scene();
        return scene.grains() == 0 ? Optional.empty() : Optional.of(scene);
    }

    private Scene scene() throws UnreadableResult {
        float[] points = numbers("NumberOfComponents=\"3\"");
        int count = points.length / 3;
        float[] x = new float[count];
        float[] y = new float[count];
        float[] z = new float[count];
        for (int n = 0; n < count; n++) {
            x[n] = points[3 * n];
            y[n] = points[3 * n + 1];
            z[n] = points[3 * n + 2];
        }
        short[] places = whole("place", count, 0, Place.values().length - 1);
        byte[] place = new byte[count];
        for (int n = 0; n < count; n++) {
            place[n] = (byte) places[n];
        }
        short[] at = whole("at", count, -1, Short.MAX_VALUE);
        for (int n = 0; n < count; n++) {
            if (place[n] == Place.CORAL.ordinal() && at[n] < 0) {
                throw broken("a grain lies on a coral, and at does not say on which");
            }
        }
        return new Scene(Clearance.WATCHED_S, x, y, z, place, at,
                whole("release", count, 0, Short.MAX_VALUE));
    }

    private short[] whole(String name, int count, int least, int most) throws UnreadableResult {
        float[] values = numbers("Name=\"" + name + "\"");
        short[] whole = new short[count];
        for (int n = 0; n < Math.min(count, values.length); n++) {
            if (values[n] < least || values[n] > most || values[n] != Math.rint(values[n])) {
                throw broken(name + " holds " + values[n] + ", must be a whole number, " + least + " to " + most);
            }
            whole[n] = (short) values[n];
        }
        if (values.length != count) {
            throw broken(name + " has " + values.length + " values for " + count + " grains");
        }
        return whole;
    }

    /** The numbers of the array that has something among its attributes. */
    private float[] numbers(String attribute) throws UnreadableResult {
        int named = text.indexOf(attribute);
        int start = named < 0 ? -1 : text.indexOf('>', named);
        int end = start < 0 ? -1 : text.indexOf('<', start);
        if (end < 0) {
            throw broken("has no array with " + attribute);
        }
        StringTokenizer words = new StringTokenizer(text.substring(start + 1, end));
        float[] numbers = new float[words.countTokens()];
        for (int n = 0; n < numbers.length; n++) {
            String word = words.nextToken();
            try {
                numbers[n] = Float.parseFloat(word);
            } catch (NumberFormatException odd) {
                throw broken("found " + word + ", must be a number");
            }
            if (!Float.isFinite(numbers[n])) {
                throw broken("found " + word + ", must be a finite number");
            }
        }
        return numbers;
    }

    private UnreadableResult broken(String why) {
        return new UnreadableResult(file + ": " + why + "; run the scenario again, or remove this file to look at the"
                + " rest");
    }
}
