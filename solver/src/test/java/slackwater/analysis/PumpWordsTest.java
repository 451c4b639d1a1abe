package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

class PumpWordsTest {
    private static final Vec3 AT = new Vec3(0.1, 0.2, 0.3);

    @Test
    void warnsOfTheJetThatIsWeakAndOfNoOther() {
        Pump strong = MadeUpTank.pump("strong", AT, 0, 0, 1);
        Pump weak = MadeUpTank.pump("weak", AT, 0, 0, 0.05);
        Pump off = MadeUpTank.pump("off", AT, 0, 0, 0);
        String words = words(List.of(strong, weak, off), List.of(), 0.2);
        // 8000 l/h at 5 % through 6 cm: 3.93 cm/s, times 0.06 m over 0.937e-6 m2/s
        assertTrue(words.contains("'weak' is weak: its Reynolds number is about 2516,"), words);
        assertTrue(!words.contains("'strong'") && !words.contains("'off'"), words);
    }

    @Test
    void saysWhatAFifthWouldMeanForTheCoralClosestToALimit() {
        CoralReading safe = coral("safe", 0.15);
        CoralReading close = coral("close", 0.045);
        String words = words(List.of(), List.of(safe, close), 0);
        // 4.5 cm/s, the root of 0.3 and 0.9 in squares is 0.95
        assertTrue(words.contains("up to 20 % off, close, the coral closest to a limit, would have 3.5 to 5.5 cm/s:"
                + " Marginal."), words);
        assertTrue(!words(List.of(), List.of(safe, close), 0.2).contains("closest"), words);
        assertEquals(Verdict.PASS, close.verdict());
    }

    private static CoralReading coral(String name, double speed) {
        Coral coral = MadeUpTank.coral(name, CoralGroup.PLATING, AT, 0.1);
        return new CoralReading(coral, new Reading(speed, speed, speed, 0.001, 0.003),
                new Doubt(0.003, OptionalDouble.empty(), 0), CoralNeeds.rangeFor(coral), Verdict.PASS, "");
    }

    private static String words(List<Pump> pumps, List<CoralReading> corals, double fraction) {
        return String.join(" ", PumpWords.of(new Scenario("pumps", MadeUpTank.TANK, List.of(), pumps,
                Optional.empty(), Optional.empty(), List.of()), corals, fraction));
    }
}
