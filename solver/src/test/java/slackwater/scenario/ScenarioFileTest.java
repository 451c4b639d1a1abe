package slackwater.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.MatchResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.ForAll;
import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Vec3;
import slackwater.units.Unit;

/** Changed layouts in the text they came from. The laws are our own: nothing lost, nothing else touched. */
class ScenarioFileTest {
    private static final Path EXAMPLES = Path.of("..", "scenarios");
    private static final List<String> FILES = List.of("terrace-120.toml", "nano-30.toml", "peninsula-100.toml",
            "lagoon-150.toml", "scanned-rock-90.toml");
    /** As people type: odd blanks, quotes, signs, a list over several lines, text that looks like a table. */
    private static final String TYPED = """
            # A file with habits.
            name = "odd [[pump]] # ways"   # a name

            [tank]
            inside_cm = [ 100 , 50,50 ]
            water_level_cm = 45   # to the comb

            # the pumps
            [[pump]] # left one
              flow_l_per_h = 5_000
              outlet_mm = 50.0 # as measured
              "at_cm" = [
                10,   # from the left
                25.50,
                +30.0 ]

            # the other
            # one
            [[ pump ]]
            name = 'two "b"'
            flow_gph = 1e3
            outlet_slot_mm = [100, 10]
            at_in = [30, 10, 12]
            yaw_deg = 180
            pattern = "pulse" # every now and then
            period_s = 10

            [[coral]]
            group = "soft"
            at_cm = [50, 25, 5]
            # a last word
            """;

    @Test
    void nothingChangedIsTheSameText() throws Exception {
        for (String name : FILES) {
            ScenarioFile file = ScenarioFile.open(EXAMPLES.resolve(name));
            assertEquals(Files.readString(EXAMPLES.resolve(name)), file.with(file.scenario()).text());
        }
    }

    /** A scan can be large: while a layout is changed, it is not read again, only looked for. */
    @Test
    void aScanIsReadOnce(@TempDir Path folder) throws Exception {
        Files.createDirectories(folder.resolve("meshes"));
        Path scan = folder.resolve("meshes/rock.stl");
        Files.copy(EXAMPLES.resolve("meshes/rock.stl"), scan);
        Files.copy(EXAMPLES.resolve("scanned-rock-90.toml"), folder.resolve("tank.toml"));
        ScenarioFile file = ScenarioFile.open(folder.resolve("tank.toml"));
        Scenario changed = pumps(file, at(file.scenario().pumps().get(0), new Vec3(0.05, 0.2, 0.3)),
                file.scenario().pumps().get(1));
        Files.writeString(scan, "no scan any more");
        assertTrue(file.with(changed).text().contains("at_cm = [5, 20, 30]"));
        Files.delete(scan);
        assertTrue(assertThrows(ScenarioFaults.class, () -> file.with(changed)).getMessage().contains("is missing"));
    }

    /** What was said beside a key that goes, or within its list, stays. */
    @Test
    void commentsOutliveTheirKeys() throws Exception {
        ScenarioFile file = typed(TYPED.replace("period_s = 10", "period_s = 10 # slow").replace("[[coral]]", """
                [[rock]]
                shape = "cylinder"
                base_cm = [80, 25, 0]
                height_cm = 10
                radius_cm = 5
                axis = [ # leans
                  1, # to the # right
                  0, 1]   # a branch
                """ + "\n[[coral]]"));
        Pump pump = file.scenario().pumps().get(1);
        Scenario steady = pumps(file, file.scenario().pumps().get(0), new Pump(pump.name(), pump.flowM3PerS(),
                pump.outlet(), pump.atM(), pump.yawRad(), pump.pitchRad(), pump.rollRad(), pump.outputFraction(),
                pump.foulingFraction(), pump.thrustFactor(),
                Pattern.STEADY));
        String text = file.with(steady).text();
        assertTrue(text.contains("\n# slow\n"), text);
        assertFalse(text.contains("period_s"), text);
        Rock rock = file.scenario().rocks().get(0);
        Scenario upright = new Scenario(steady.name(), steady.tank(), List.of(new Rock(rock.name(),
                new Cylinder(new Vec3(0.8, 0.25, 0), new Vec3(0, 0, 1), 0.1, 0.05))), steady.pumps(),
                steady.returnLine(), steady.overflow(), steady.corals(), steady.materials());
        String stands = file.with(upright).text();
        assertEquals(comments(text), comments(stands));
        Scenario boxed = new Scenario(steady.name(), steady.tank(), List.of(new Rock(rock.name(),
                new Box(new Vec3(0.7, 0.2, 0), new Vec3(0.8, 0.3, 0.1)))), steady.pumps(),
                steady.returnLine(), steady.overflow(), steady.corals(), steady.materials());
        String box = file.with(boxed).text();
        assertTrue(box.contains("# leans\n# to the # right\n# a branch\n") && !box.contains("axis"), box);
    }

    @Test
    void oneNumberIsAllThatChanges() throws Exception {
        ScenarioFile file = typed(TYPED);
        Pump moved = at(file.scenario().pumps().get(0), new Vec3(0.12, 0.255, 0.3));
        assertEquals(TYPED.replace("10,   # from", "12,   # from"), file.with(pumps(file, moved,
                file.scenario().pumps().get(1))).text());
    }

    @Test
    void theUnitStays() throws Exception {
        ScenarioFile file = typed(TYPED);
        Pump moved = at(file.scenario().pumps().get(1), new Vec3(Unit.INCH.toSi(29.5), Unit.INCH.toSi(10), 0.3048));
        assertEquals(TYPED.replace("[30, 10, 12]", "[29.5, 10, 12]"),
                file.with(pumps(file, file.scenario().pumps().get(0), moved)).text());
    }

    @Test
    void keysThatGoAndKeysThatCome() throws Exception {
        ScenarioFile file = typed(TYPED);
        Pump one = file.scenario().pumps().get(0);
        Pump two = file.scenario().pumps().get(1);
        Pump turned = new Pump(one.name(), one.flowM3PerS(), one.outlet(), one.atM(), Unit.DEGREE.toSi(30), 0, 0, 0.5,
                0, 1, Pattern.STEADY);
        Pump steady = new Pump(two.name(), two.flowM3PerS(), two.outlet(), two.atM(), 0, 0, 0, 1, 0, 1,
                Pattern.STEADY);
        assertEquals(TYPED.replace("    +30.0 ]\n", "    +30.0 ]\n  yaw_deg = 30\n  output_percent = 50\n")
                        .replace("yaw_deg = 180", "yaw_deg = 0").replace("\"pulse\" # every", "\"steady\" # every")
                        .replace("period_s = 10\n", ""),
                file.with(pumps(file, turned, steady)).text());
    }

    @Test
    void aTableGoesWithItsComments() throws Exception {
        ScenarioFile file = typed(TYPED);
        int from = TYPED.indexOf("# the other");
        assertEquals(TYPED.substring(0, from) + TYPED.substring(TYPED.indexOf("[[coral]]")),
                file.with(pumps(file, file.scenario().pumps().get(0))).text());
    }

    @Test
    void aNameThatWasCountedIsKept() throws Exception {
        String text = TYPED.replace("name = 'two \"b\"'\n", "");
        ScenarioFile file = typed(text);
        ScenarioFile left = file.with(pumps(file, file.scenario().pumps().get(1)));
        assertEquals("pump 2", left.scenario().pumps().get(0).name());
        assertTrue(left.text().contains("# the pumps\n\n# the other") || left.text().contains("name = \"pump 2\""));
    }

    @Test
    void theLastPumpLeavesAWord() throws Exception {
        ScenarioFile file = typed(TYPED);
        ScenarioFile still = file.with(pumps(file));
        assertTrue(still.text().contains("ways\"   # a name\npump = []\n"), still.text());
        Pump again = file.scenario().pumps().get(0);
        ScenarioFile back = still.with(pumps(still, again));
        assertFalse(back.text().contains("pump = []"));
        assertEquals(List.of(again), back.scenario().pumps());
    }

    @Test
    void braceTablesAreRefusedInWords() throws Exception {
        ScenarioFile file = typed("""
                name = "braces"
                coral = [{ group = "soft", at_cm = [50, 25, 5] }]
                tank = { inside_cm = [100, 50, 50], water_level_cm = 45 }
                pump = []
                """);
        Scenario was = file.scenario();
        Scenario none = new Scenario(was.name(), was.tank(), was.rocks(), was.pumps(), was.returnLine(),
                was.overflow(), List.of());
        assertTrue(assertThrows(ScenarioFaults.class, () -> file.with(none)).getMessage().contains("[[coral]]"));
    }

    @Test
    void whatCheckRefusesIsNotMade() throws Exception {
        ScenarioFile file = typed(TYPED);
        Pump outside = at(file.scenario().pumps().get(0), new Vec3(3, 0.25, 0.3));
        assertTrue(assertThrows(ScenarioFaults.class, () -> file.with(pumps(file, outside))).getMessage()
                .contains("outside the tank"));
    }

    @Test
    void randomChangesAreReadBackAsMeant() {
        AtomicInteger taken = new AtomicInteger();
        ForAll.seeds(300, random -> {
            ScenarioFile file = opened(random);
            for (int round = 0; round < 3; round++) {
                Scenario wanted = randomly(file.scenario(), random);
                try {
                    ScenarioFile changed = file.with(wanted);
                    assertTrue(ScenarioText.same(wanted, changed.scenario()));
                    assertUntouched(file, changed);
                    file = changed;
                    taken.incrementAndGet();
                } catch (ScenarioFaults refused) {
                    // Allowed only where the wanted layout is unsound by itself.
                    assertThrows(ScenarioFaults.class, () -> ScenarioReader.read(ScenarioWriter.write(wanted), "w",
                            EXAMPLES), refused.getMessage());
                }
            }
        });
        assertTrue(taken.get() > 300, "only " + taken + " of 900 changes could be tried");
    }

    @Test
    void thereAndBackIsTheSameText() {
        FILES.forEach(name -> {
            ScenarioFile file = example(name);
            List<Pump> moved = file.scenario().pumps().stream().map(pump -> at(pump,
                    pump.atM().plus(new Vec3(0.01, 0, -0.01)))).toList();
            try {
                ScenarioFile there = file.with(pumps(file, moved.toArray(Pump[]::new)));
                assertEquals(file.text(), there.with(file.scenario()).text());
            } catch (ScenarioFaults faults) {
                throw new AssertionError(faults);
            }
        });
    }

    @Test
    void theFileIsReplacedWhole(@TempDir Path folder) throws Exception {
        Path path = folder.resolve("tank.toml");
        Files.writeString(path, "\uFEFF" + TYPED.replace("\n", "\r\n"));
        ScenarioFile file = ScenarioFile.open(path);
        assertFalse(file.changedOnDisk());
        ScenarioFile changed = file.with(pumps(file, file.scenario().pumps().get(0)));
        assertTrue(changed.changedOnDisk());
        changed.write();
        assertFalse(changed.changedOnDisk());
        String written = Files.readString(path);
        assertTrue(written.startsWith("\uFEFF# A file") && !written.replace("\r\n", "").contains("\n"));
        try (var files = Files.list(folder)) {
            assertEquals(List.of(path), files.toList());
        }
    }

    @Test
    void whatCannotBeWrittenLeavesTheOldFile(@TempDir Path folder) throws IOException, ScenarioFaults {
        Path path = folder.resolve("tank.toml");
        Files.writeString(path, TYPED);
        ScenarioFile file = ScenarioFile.open(path);
        ScenarioFile elsewhere = new ScenarioFile(folder.resolve("gone").resolve("tank.toml"), TYPED, false,
                file.scenario());
        assertThrows(IOException.class, elsewhere::write);
        assertEquals(TYPED, Files.readString(path));
    }

    /** Every comment of the old text is still there, in order, unless its table went. */
    private static void assertUntouched(ScenarioFile before, ScenarioFile after) {
        boolean removed = after.scenario().pumps().size() < before.scenario().pumps().size()
                || after.scenario().corals().size() < before.scenario().corals().size()
                || after.scenario().rocks().size() < before.scenario().rocks().size();
        if (!removed && names(before.scenario()).equals(names(after.scenario()))) {
            assertEquals(comments(before.text()), comments(after.text()));
        }
    }

    private static List<String> names(Scenario scenario) {
        List<String> names = new ArrayList<>(scenario.pumps().stream().map(Pump::name).toList());
        scenario.rocks().forEach(rock -> names.add(rock.name()));
        scenario.corals().forEach(coral -> names.add(coral.name()));
        return names;
    }

    /** All comments, those beside a value too; what looks like one within quotes is none. */
    private static List<String> comments(String text) {
        return java.util.regex.Pattern.compile("\"[^\"\\n]*\"|'[^'\\n]*'|#[^\\n]*").matcher(text).results()
                .map(MatchResult::group)
                .filter(found -> found.startsWith("#")).map(String::strip).toList();
    }

    private static ScenarioFile opened(Random random) {
        int number = random.nextInt(FILES.size() + 1);
        return number == FILES.size() ? typed(TYPED) : example(FILES.get(number));
    }

    private static ScenarioFile example(String name) {
        try {
            return ScenarioFile.open(EXAMPLES.resolve(name));
        } catch (ScenarioFaults faults) {
            throw new AssertionError(faults);
        }
    }

    private static Scenario randomly(Scenario scenario, Random random) {
        List<Rock> rocks = new ArrayList<>(scenario.rocks());
        List<Pump> pumps = new ArrayList<>(scenario.pumps());
        List<Coral> corals = new ArrayList<>(scenario.corals());
        if (random.nextBoolean() && !rocks.isEmpty()) {
            rocks.remove(random.nextInt(rocks.size()));
        }
        if (random.nextBoolean()) {
            double x = random.nextInt(20) / 100.0;
            rocks.add(random.nextInt(rocks.size() + 1), new Rock("new " + random.nextInt(1000),
                    new Box(new Vec3(x, 0.01, 0), new Vec3(x + 0.05, 0.05, 0.05))));
        }
        pumps.replaceAll(pump -> random.nextBoolean() ? pump : randomly(pump, random));
        if (random.nextInt(4) == 0 && !pumps.isEmpty()) {
            pumps.remove(random.nextInt(pumps.size()));
        }
        corals.replaceAll(coral -> random.nextBoolean() ? coral : new Coral(coral.name(), coral.group(),
                coral.atM().plus(new Vec3(0.01 * random.nextInt(3), 0, 0)), coral.facing(), random.nextDouble() / 10
                + 0.01, random.nextBoolean() ? coral.range() : Optional.empty()));
        if (random.nextBoolean() && !corals.isEmpty()) {
            corals.add(random.nextInt(corals.size() + 1), new Coral("c" + random.nextInt(1000), CoralGroup.SOFT,
                    corals.get(0).atM(), new Vec3(0, 0, 1), 0.05, Optional.empty()));
            corals.remove(random.nextInt(corals.size()));
        }
        return new Scenario(scenario.name(), scenario.tank(), rocks, pumps, scenario.returnLine(),
                scenario.overflow(), corals);
    }

    private static Pump randomly(Pump pump, Random random) {
        Pattern pattern = random.nextBoolean() ? pump.pattern()
                : new Pattern(Pattern.Kind.SINE, 1 + random.nextInt(9), 0.2, random.nextInt(10) / 10.0);
        Outlet outlet = random.nextInt(3) > 0 ? pump.outlet() : new Outlet.Slot(0.06, 0.01);
        Vec3 moved = pump.atM().plus(new Vec3(random.nextInt(3) / 200.0, random.nextInt(3) / 100.0, 0));
        return new Pump(pump.name(), pump.flowM3PerS(), outlet, random.nextBoolean() ? moved : pump.atM(),
                Unit.DEGREE.toSi(random.nextInt(360)), pump.pitchRad(), pump.rollRad(), random.nextInt(101) / 100.0,
                pump.foulingFraction(), pump.thrustFactor(), pattern);
    }

    private static Pump at(Pump pump, Vec3 atM) {
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), atM, pump.yawRad(), pump.pitchRad(),
                pump.rollRad(), pump.outputFraction(), pump.foulingFraction(), pump.thrustFactor(), pump.pattern());
    }

    private static Scenario pumps(ScenarioFile file, Pump... pumps) {
        Scenario was = file.scenario();
        return new Scenario(was.name(), was.tank(), was.rocks(), List.of(pumps), was.returnLine(), was.overflow(),
                was.corals());
    }

    private static ScenarioFile typed(String text) {
        try {
            return new ScenarioFile(EXAMPLES.resolve("typed.toml"), text, false,
                    ScenarioReader.read(text, "typed.toml", EXAMPLES));
        } catch (ScenarioFaults faults) {
            throw new AssertionError(faults);
        }
    }
}
