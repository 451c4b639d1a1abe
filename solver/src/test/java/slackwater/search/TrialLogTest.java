package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.ForAll;
import slackwater.analysis.Verdict;
import slackwater.geometry.Mesh;
import slackwater.geometry.MeshPlacement;
import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** The log of trials: nothing is lost but the trial that was running, and nothing is computed twice. */
class TrialLogTest {
    private static final int BUDGET = 50;

    @TempDir
    private Path folder;

    /** What a kill does, as far as a test can: the trial that was running never returns. */
    private static final class Killed extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    @Test
    void everyTrialComesBackToTheLastDigit() {
        ForAll.seeds(200, random -> {
            Pump pump = new Pump("p \"\u00fc\\", random.nextDouble(), random.nextBoolean()
                    ? new Outlet.Round(random.nextDouble()) : new Outlet.Slot(random.nextDouble(), 0.01),
                    new Vec3(random.nextDouble(), random.nextDouble(), random.nextDouble()), random.nextGaussian(),
                    random.nextGaussian(), random.nextGaussian(), random.nextDouble(), random.nextDouble(), 1.4,
                    new Pattern(Pattern.Kind.PULSE, 1 + random.nextDouble(), random.nextDouble(), 0.25));
            CoralFinding coral = new CoralFinding("c", random.nextDouble(), 0, random.nextDouble(), 0.02, 0.2,
                    Verdict.values()[random.nextInt(4)], Verdict.values()[random.nextInt(4)]);
            Outcome outcome = random.nextBoolean() ? new Outcome.Failed("ran away\nat x")
                    : new Outcome.Read(new Finding(List.of(coral), random.nextDouble(), random.nextDouble(),
                            random.nextDouble(), "low on the left", random.nextDouble(), random.nextBoolean()));
            Trial trial = new Trial("abc", Stage.values()[random.nextInt(4)], "3 cm", List.of(pump), outcome,
                    random.nextDouble());
            assertEquals(trial, TrialJson.trial(TrialJson.line(trial)).orElseThrow());
            assertEquals(1, TrialJson.line(trial).lines().count());
        });
    }

    @Test
    void aKilledSearchGoesOnAsIfNothingHadBeen() throws Exception {
        List<String> whole = search(folder.resolve("whole"), new FreeJets(), new ArrayList<>());
        for (int kill : new int[] {0, 1, 7, 23, 49}) {
            Path path = folder.resolve("killed-" + kill);
            List<Trial> first = new ArrayList<>();
            assertThrows(Killed.class, () -> search(path, killedAfter(kill), first));
            Files.writeString(path, Files.readString(path) + "{\"key\":\"torn", StandardCharsets.UTF_8);
            List<Trial> rest = new ArrayList<>();
            assertEquals(whole, search(path, new FreeJets(), rest), "killed after " + kill);
            assertEquals(kill, first.size());
            assertEquals(whole.size(), first.size() + rest.size(), "nothing is computed twice");
            assertEquals(untimed(folder.resolve("whole")), untimed(path), "one log as the other");
        }
    }

    @Test
    void partsOfManyMachinesMergeIntoOneSearch() throws Exception {
        Search search = new Search(SearchTest.crossing(), BUDGET, 3, 11);
        List<String> whole;
        try (TrialLog log = TrialLog.open(folder.resolve("whole"))) {
            whole = SearchTest.values(search.run(trials(new FreeJets(), log, new ArrayList<>())));
        }
        List<Path> parts = new ArrayList<>();
        for (int part = 3; part >= 1; part--) {
            parts.add(folder.resolve("part-" + part));
            try (TrialLog log = TrialLog.open(parts.get(parts.size() - 1))) {
                search.island(part, trials(new FreeJets(), log, new ArrayList<>()));
            }
        }
        try (TrialLog log = TrialLog.open(folder.resolve("merged"))) {
            for (Path part : parts) {
                log.merge(part);
                assertEquals(List.of(), log.merge(part), "a log that is merged twice adds nothing");
            }
            List<Trial> computed = new ArrayList<>();
            assertEquals(whole, SearchTest.values(search.run(trials(new FreeJets(), log, computed))));
            assertEquals(List.of(), computed, "all of it was known from the parts");
        }
    }

    @Test
    void anotherScenarioOrAnotherWayIsComputedAnew() throws Exception {
        Scenario scenario = SearchTest.crossing().scenario();
        List<Trial> computed = new ArrayList<>();
        try (TrialLog log = TrialLog.open(folder.resolve("log"))) {
            new Trials(Stage.SCREEN, "3 cm", new FreeJets(), log, computed::add).of(scenario);
            new Trials(Stage.SCREEN, "3 cm", new FreeJets(), log, computed::add).of(scenario);
            assertEquals(1, computed.size());
            new Trials(Stage.SCREEN, "2 cm", new FreeJets(), log, computed::add).of(scenario);
            new Trials(Stage.CONFIRM, "3 cm", new FreeJets(), log, computed::add).of(scenario);
            new Trials(Stage.SCREEN, "3 cm", new FreeJets(), log, computed::add)
                    .of(scenario.with(scenario.pumps().subList(0, 1)));
            assertEquals(4, computed.size());
        }
    }

    /** Two tetrahedra in one box, under one name: the top of the second leans over. */
    @Test
    void anotherScanOfTheSameNameAndSizeIsComputedAnew() throws Exception {
        Scenario straight = scanned("0 0 10");
        Scenario leaning = scanned("2 2 10");
        assertEquals(straight.rocks().get(0).solid().bounds(), leaning.rocks().get(0).solid().bounds());
        List<Trial> computed = new ArrayList<>();
        try (TrialLog log = TrialLog.open(folder.resolve("log"))) {
            trials(new FreeJets(), log, computed).of(straight);
            trials(new FreeJets(), log, computed).of(scanned("0 0 10"));
            assertEquals(1, computed.size());
            trials(new FreeJets(), log, computed).of(leaning);
            assertEquals(2, computed.size());
        }
    }

    private Scenario scanned(String top) throws Exception {
        Path file = folder.resolve("rock.obj");
        Files.writeString(file, "v 0 0 0\nv 10 0 0\nv 0 10 0\nv " + top + "\nf 1 3 2\nf 1 2 4\nf 2 3 4\nf 3 1 4\n");
        MeshPlacement placement = new MeshPlacement("rock.obj", 0.01, false, 0, new Vec3(0.5, 0.25, 0.03));
        Scenario tank = SearchTest.crossing().scenario();
        return new Scenario(tank.name(), tank.tank(), List.of(new Rock("scan", Mesh.read(file, placement))),
                tank.pumps(), tank.returnLine(), tank.overflow(), tank.corals());
    }

    @Test
    void twoSearchesDoNotWriteToOneLog() throws IOException {
        Path path = folder.resolve("log");
        TrialLog log = TrialLog.open(path);
        assertTrue(assertThrows(IOException.class, () -> TrialLog.open(path)).getMessage().contains("another search"));
        log.close();
        TrialLog.open(path).close();
    }

    @Test
    void rubbishInALogIsPassedOver() throws IOException {
        Path path = folder.resolve("log");
        Files.writeString(path, "\n{}\nnot json\n{\"key\":\"a\",\"stage\":\"nonsense\"}\n");
        try (TrialLog log = TrialLog.open(path)) {
            assertEquals(List.of(), log.trials());
        }
        assertTrue(Files.readString(path).startsWith("\n{}\n"), "lines are only ever added");
    }

    @Test
    void onlyLogsAreMerged() throws IOException {
        Path rubbish = Files.writeString(folder.resolve("rubbish"), "a shopping list\n");
        Path binary = Files.write(folder.resolve("binary"), new byte[] {(byte) 0xff, 0, (byte) 0xfe});
        Path empty = Files.createFile(folder.resolve("empty"));
        try (TrialLog log = TrialLog.open(folder.resolve("log"))) {
            for (Path other : List.of(rubbish, binary)) {
                assertTrue(assertThrows(IOException.class, () -> log.merge(other)).getMessage()
                        .contains("must be a log of trials"));
            }
            assertEquals(List.of(), log.merge(empty), "a part that was stopped before its first trial");
        }
    }

    private static List<String> search(Path path, Function<Scenario, Outcome> function, List<Trial> computed)
            throws IOException {
        try (TrialLog log = TrialLog.open(path)) {
            return SearchTest.values(new Search(SearchTest.crossing(), BUDGET, 1, 7)
                    .run(trials(function, log, computed)));
        }
    }

    private static Trials trials(Function<Scenario, Outcome> function, TrialLog log, List<Trial> computed) {
        return new Trials(Stage.SCREEN, "test", function, log, computed::add);
    }

    private static Function<Scenario, Outcome> killedAfter(int trials) {
        int[] left = {trials};
        return scenario -> {
            if (left[0]-- == 0) {
                throw new Killed();
            }
            return new FreeJets().apply(scenario);
        };
    }

    private static List<Trial> untimed(Path path) throws IOException {
        try (TrialLog log = TrialLog.open(path)) {
            return log.trials().stream().map(trial -> new Trial(trial.key(), trial.stage(), trial.way(), trial.pumps(),
                    trial.outcome(), 0)).toList();
        }
    }
}
