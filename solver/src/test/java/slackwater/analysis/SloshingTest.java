package slackwater.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

class SloshingTest {
    private static final double LAST_DIGIT = 0.001;

    /**
     * Linear standing waves, Lamb 1932, Hydrodynamics (from memory); the periods are of a table that was computed apart
     * from this code with g 9.81. Its last digit is cut or rounded, off by up to one: 1.718 stands for 1.71854.
     */
    @ParameterizedTest
    @CsvSource({"0.6,0.45,0.885,0.620,0.506", "0.9,0.50,1.107,0.760,0.620", "1.2,0.50,1.334,0.881,0.716",
        "1.2,0.60,1.295,0.878,0.716", "1.5,0.60,1.503,0.987,0.801", "1.8,0.60,1.718,1.090,0.878",
        "2.4,0.70,2.061,1.272,1.017", "1.0,0.10,2.052,1.072,0.762"})
    void periodsAreThoseOfTheTable(double lengthM, double depthM, double first, double second, double third) {
        assertEquals(first, Sloshing.periodS(lengthM, depthM, 1), LAST_DIGIT);
        assertEquals(second, Sloshing.periodS(lengthM, depthM, 2), LAST_DIGIT);
        assertEquals(third, Sloshing.periodS(lengthM, depthM, 3), LAST_DIGIT);
    }

    /** Merian's formula for shallow water, T = 2 L/sqrt(g h), is the limit (textbook, from memory). */
    @Test
    void shallowWaterHasMeriansPeriod() {
        assertEquals(2 / Math.sqrt(9.81 * 0.001), Sloshing.periodS(1, 0.001, 1), 1e-4 * 20);
    }

    @Test
    void pumpsInTimeWithAWaveAreToldWithTheNumber() {
        double wave = Sloshing.periodS(1.2, 0.5, 1);
        assertEquals(List.of(), Sloshing.warnings(tank(Pattern.STEADY)));
        assertEquals(List.of(), Sloshing.warnings(tank(pulse(8))));
        assertEquals(List.of(), Sloshing.warnings(tank(pulse(1.12 * wave))));
        String warning = Sloshing.warnings(tank(pulse(1.05 * wave))).get(0);
        assertTrue(warning.contains("1.33 s") && warning.contains("along"), warning);
        String twice = Sloshing.warnings(tank(pulse(wave / 2))).stream().filter(one -> one.contains("along"))
                .findFirst().orElseThrow();
        assertTrue(twice.contains("twice"), twice);
    }

    private static Pattern pulse(double periodS) {
        return new Pattern(Pattern.Kind.PULSE, periodS, 0, 0);
    }

    private static Scenario tank(Pattern pattern) {
        Pump pump = new Pump("p", 1e-3, new Outlet.Round(0.05), new Vec3(0.05, 0.2, 0.3), 0, 0, 0, 1, 0, 1, pattern);
        return new Scenario("invented", new Tank(new Vec3(1.2, 0.45, 0.6), 0.55, 0.05, 0.001), List.of(),
                List.of(pump), Optional.empty(), Optional.empty(), List.of());
    }
}
