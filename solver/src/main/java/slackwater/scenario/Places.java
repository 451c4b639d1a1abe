package slackwater.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.geometry.Vec3;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** Points and directions as the format has them. */
final class Places {
    /** Far enough for a rock that reaches in through the glass; what must be inside the tank is checked against it. */
    private static final Limits ANYWHERE = Limits.between(-1000, 1000);
    private static final double ALREADY_UNIT = 1e-12;
    private static final Map<String, Vec3> DIRECTIONS = directions();

    private Places() {
    }

    static Key point(String base, String about) {
        return Key.numbers(base, Dimension.LENGTH, 3, ANYWHERE, about);
    }

    static Key direction(String base, String about) {
        return Key.wordOrDirection(base, List.copyOf(DIRECTIONS.keySet()), about);
    }

    static Vec3 vector(Entry entry, Key key) {
        return vector(entry.numbers(key));
    }

    /** The unit vector; one that is of length 1 already, to rounding, stays as written and so comes back the same. */
    static Vec3 unitVector(Entry entry, Key key) {
        if (entry.numbers(key).isEmpty()) {
            return DIRECTIONS.get(entry.word(key));
        }
        Vec3 written = vector(entry, key);
        return Math.abs(written.dot(written) - 1) < ALREADY_UNIT ? written : written.normalised();
    }

    static List<Double> numbers(Vec3 vector) {
        return List.of(vector.x(), vector.y(), vector.z());
    }

    static void write(TableWriter writer, Key key, Vec3 direction) {
        DIRECTIONS.entrySet().stream().filter(named -> named.getValue().equals(direction)).findFirst()
                .ifPresentOrElse(named -> writer.put(key, named.getKey()),
                        () -> writer.put(key, numbers(direction)));
    }

    private static Vec3 vector(List<Double> numbers) {
        return new Vec3(numbers.get(0), numbers.get(1), numbers.get(2));
    }

    private static Map<String, Vec3> directions() {
        Map<String, Vec3> named = new LinkedHashMap<>();
        named.put("up", new Vec3(0, 0, 1));
        named.put("down", new Vec3(0, 0, -1));
        named.put("front", new Vec3(0, -1, 0));
        named.put("back", new Vec3(0, 1, 0));
        named.put("left", new Vec3(-1, 0, 0));
        named.put("right", new Vec3(1, 0, 0));
        return named;
    }
}
