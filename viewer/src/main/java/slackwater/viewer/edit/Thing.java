package slackwater.viewer.edit;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/**
 * Something in a tank that can be selected.
 *
 * @param kind what it is
 * @param index among its kind, from 0; 0 for the return
 */
public record Thing(Kind kind, int index) {
    /** In the order in which a key goes through them. */
    public enum Kind { PUMP, RETURN, CORAL, ROCK }

    /** Everything that can be selected in a tank, in the order in which a key goes through them. */
    public static List<Thing> all(Scenario scenario) {
        return Stream.of(count(Kind.PUMP, scenario.pumps().size()),
                count(Kind.RETURN, scenario.returnLine().isPresent() ? 1 : 0),
                count(Kind.CORAL, scenario.corals().size()), count(Kind.ROCK, scenario.rocks().size()))
                .flatMap(things -> things).toList();
    }

    private static Stream<Thing> count(Kind kind, int count) {
        return IntStream.range(0, count).mapToObj(index -> new Thing(kind, index));
    }

    /** Whether a tank has it; after an undo it may not. */
    public boolean in(Scenario scenario) {
        return all(scenario).contains(this);
    }

    /** What the person calls it. */
    public String name(Scenario scenario) {
        return switch (kind) {
            case PUMP -> scenario.pumps().get(index).name();
            case RETURN -> "return";
            case CORAL -> scenario.corals().get(index).name();
            case ROCK -> scenario.rocks().get(index).name();
        };
    }

    /** Where it is, metres: the outlet of a pump, the seat of a coral, the middle of a rock's base. */
    public Vec3 atM(Scenario scenario) {
        return switch (kind) {
            case PUMP -> scenario.pumps().get(index).atM();
            case RETURN -> scenario.returnLine().orElseThrow().atM();
            case CORAL -> scenario.corals().get(index).atM();
            case ROCK -> base(scenario.rocks().get(index));
        };
    }

    private static Vec3 base(Rock rock) {
        Bounds bounds = rock.solid().bounds();
        return new Vec3(bounds.centre().x(), bounds.centre().y(), bounds.low().z());
    }

    /** Whether it has an aim that can be turned. */
    public boolean aims() {
        return kind == Kind.PUMP || kind == Kind.RETURN;
    }
}
