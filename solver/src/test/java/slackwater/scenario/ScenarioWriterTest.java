package slackwater.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Solid;
import slackwater.geometry.Union;
import slackwater.geometry.Vec3;
import slackwater.units.Unit;

class ScenarioWriterTest {
    private static final Tank TANK = new Tank(new Vec3(2, 1, 1), 0.9, 0.05, 0.001);

    @Test
    void whatPeopleWroteComesBackExactly() {
        ForAll.seeds(300, random -> {
            Scenario scenario = scenario(random, random.nextBoolean());
            assertEquals(scenario, read(ScenarioWriter.write(scenario)));
        });
    }

    @Test
    void aTankInWhichNothingMovesComesBack() {
        Scenario still = new Scenario("Still \"water\" \\ ü", TANK, List.of(), List.of(), Optional.empty(),
                Optional.empty(), List.of());
        assertEquals(still, read(ScenarioWriter.write(still)));
    }

    @Test
    void computedNumbersComeBackToTheLastPlace() {
        ForAll.seeds(300, random -> {
            Vec3 at = new Vec3(0.5 + random.nextDouble(), 0.3 + random.nextDouble() / 3, 0.3 + random.nextDouble() / 3);
            Pump pump = new Pump("p", 1e-3 * (1 + random.nextDouble()), new Outlet.Round(0.05), at, random.nextDouble(),
                    0, 0, random.nextDouble(), 0, 1, Pattern.STEADY);
            Scenario moved = new Scenario("Moved", TANK, List.of(), List.of(pump), Optional.empty(), Optional.empty(),
                    List.of());
            Pump back = read(ScenarioWriter.write(moved)).pumps().get(0);
            assertEquals(0, back.atM().minus(at).length(), 1e-15);
            assertEquals(pump.flowM3PerS(), back.flowM3PerS(), 1e-17);
            assertEquals(pump.yawRad(), back.yawRad(), 1e-15);
        });
    }

    @Test
    void inchesStayInches() {
        Scenario scenario = scenario(new Random(1), true);
        assertTrue(ScenarioWriter.write(scenario).contains("at_in = ["));
    }

    @Test
    void aUnionHasNoWord() {
        Rock two = new Rock("two", new Union(List.of(new Ellipsoid(Vec3.ZERO, new Vec3(1, 1, 1)))));
        Scenario scenario = new Scenario("Two", TANK, List.of(two), List.of(), Optional.empty(), Optional.empty(),
                List.of());
        assertThrows(IllegalArgumentException.class, () -> ScenarioWriter.write(scenario));
    }

    private static Scenario read(String text) {
        try {
            return ScenarioReader.read(text, "written.toml", Path.of("."));
        } catch (ScenarioFaults faults) {
            throw new AssertionError(faults.getMessage() + "\n" + text, faults);
        }
    }

    /** Numbers as people give them: to a tenth of a centimetre, or to a quarter inch. */
    private static Scenario scenario(Random random, boolean inches) {
        List<Rock> rocks = List.of(new Rock("lies low", solid(random, inches)));
        List<Pump> pumps = IntStream.range(0, 3).mapToObj(i -> pump(random, inches, i)).toList();
        boolean sump = random.nextBoolean();
        Optional<Return> line = sump ? Optional.of(new Return(Unit.LITRE_PER_HOUR.toSi(100 + random.nextInt(4000)),
                Unit.MM.toSi(10 + random.nextInt(20)), new Vec3(length(random, inches, 60, 80), 0.5, 0.8),
                Unit.DEGREE.toSi(random.nextInt(360)), 0)) : Optional.empty();
        Optional<Overflow> weir = sump ? Optional.of(new Overflow(Wall.values()[random.nextInt(4)], 0.1,
                length(random, inches, 20, 80))) : Optional.empty();
        Vec3 facing = random.nextBoolean() ? new Vec3(0, 0, 1)
                : new Vec3(random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextDouble()).normalised();
        Coral coral = new Coral("coral 1", CoralGroup.values()[random.nextInt(4)],
                new Vec3(length(random, inches, 150, 190), 0.5, 0.3), facing, length(random, inches, 2, 20),
                random.nextBoolean() ? Optional.of(new SpeedRange(0.02, Unit.CM_PER_S.toSi(5 + random.nextInt(30)),
                        CoralTable.OWN_RANGE)) : Optional.empty());
        Material material = new Material("grit", Unit.MM.toSi(1 + random.nextInt(40) / 10.0),
                1030 + random.nextInt(1800), perhaps(random, 0.01), perhaps(random, 0.02), perhaps(random, 0.04),
                perhaps(random, 0.5), Unit.PERCENT.toSi(random.nextInt(101)));
        return new Scenario("Random", TANK, rocks, pumps, line, weir, List.of(coral), List.of(material));
    }

    private static OptionalDouble perhaps(Random random, double value) {
        return random.nextBoolean() ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static Solid solid(Random random, boolean inches) {
        Vec3 at = new Vec3(length(random, inches, 5, 150), 0.1, 0);
        return switch (random.nextInt(3)) {
            case 0 -> new Box(at, new Vec3(length(random, inches, 155, 180), 0.4, 0.1));
            case 1 -> new Cylinder(at, new Vec3(0, 1, 0), length(random, inches, 5, 50), 0.05);
            default -> new Ellipsoid(at, new Vec3(length(random, inches, 5, 10), 0.05, 0.1));
        };
    }

    private static Pump pump(Random random, boolean inches, int number) {
        Outlet outlet = random.nextBoolean() ? new Outlet.Round(Unit.MM.toSi(10 + random.nextInt(50)))
                : new Outlet.Slot(Unit.MM.toSi(50 + random.nextInt(50)), Unit.MM.toSi(5 + random.nextInt(20)));
        Pattern pattern = random.nextBoolean() ? Pattern.STEADY : new Pattern(
                Pattern.Kind.values()[1 + random.nextInt(3)], 1 + random.nextInt(60),
                Unit.PERCENT.toSi(random.nextInt(100)), random.nextInt(100) / 100.0);
        double flow = inches ? Unit.GALLON_PER_HOUR.toSi(100 + random.nextInt(5000))
                : Unit.LITRE_PER_HOUR.toSi(100 + random.nextInt(20000));
        return new Pump("pump " + (number + 1), flow, outlet,
                new Vec3(length(random, inches, 20, 180), inches ? 0.508 : 0.5, (inches ? 0.254 : 0.3) * (number + 1)),
                Unit.DEGREE.toSi(random.nextInt(720) / 10.0), Unit.DEGREE.toSi(random.nextInt(20)), 0,
                Unit.PERCENT.toSi(random.nextInt(101)), Unit.PERCENT.toSi(random.nextInt(90)),
                1 + random.nextInt(101) / 100.0, pattern);
    }

    private static double length(Random random, boolean inches, int lowCm, int highCm) {
        double cm = lowCm + random.nextInt(10 * (highCm - lowCm)) / 10.0;
        return inches ? Unit.INCH.toSi(Math.round(cm / 2.54 * 4) / 4.0) : Unit.CM.toSi(cm);
    }
}
