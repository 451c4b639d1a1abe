package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slackwater.analysis.Verdict;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioReader;
import slackwater.search.CoralFinding;
import slackwater.search.Outcome;
import slackwater.search.Stage;
import slackwater.search.Trial;
import slackwater.search.TrialLog;

/** The commands that search, on coarse cells with tiny budgets: that they hold together, not that they find much. */
class PlaceTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final Path NANO = SCENARIOS.resolve("nano-30.toml");

    @TempDir
    private Path folder;

    private Shell nano(String command, Path out, Object... more) {
        Object[] words = {command, NANO, "--screen-cell-cm", "4", "--cell-cm", "3", "--max-turns", "3",
            "--threads", "1", "--out", out};
        Object[] all = new Object[words.length + more.length];
        System.arraycopy(words, 0, all, 0, words.length);
        System.arraycopy(more, 0, all, words.length, more.length);
        return Shell.run(all);
    }

    @Test
    void placesAPumpAndGoesOnAfterAStop() throws Exception {
        Path out = folder.resolve("whole");
        Shell whole = nano("place", out, "--budget", "4", "--confirm", "1");
        assertTrue(whole.code() == ExitCode.DONE || whole.code() == ExitCode.VERDICT_FAIL, whole.err());
        assertEquals("", whole.err());
        assertTrue(whole.out().startsWith("About "), "the estimate comes first: " + whole.out());
        Scenario best = ScenarioReader.read(out.resolve("best.toml"));
        assertEquals(ScenarioReader.read(NANO).corals(), best.corals());
        List<String> log = Files.readAllLines(out.resolve("trials.jsonl"));
        String grains = "On fine cells food and sand were let fall on the corals";
        assertTrue(Files.readString(out.resolve("placing.txt")).contains(grains));
        assertTrue(whole.out().contains(grains), whole.out());

        try (TrialLog trials = TrialLog.open(out.resolve("trials.jsonl"))) {
            for (Trial trial : trials.trials()) {
                Outcome.Read read = (Outcome.Read) trial.outcome();
                assertTrue(read.finding().corals().stream().allMatch(coral -> coral.clearing() == Verdict.NONE
                        ^ trial.stage() == Stage.CONFIRM), "grains fall where layouts are confirmed: " + trial);
            }
        }

        Path again = folder.resolve("again");
        Files.createDirectories(again);
        Files.write(again.resolve("trials.jsonl"), log.subList(0, log.size() / 2));
        Shell rest = nano("place", again, "--budget", "4", "--confirm", "1");
        assertEquals(whole.code(), rest.code());
        assertEquals(Files.readString(out.resolve("placing.txt")), Files.readString(again.resolve("placing.txt")));
        assertEquals(Files.readString(out.resolve("best.toml")), Files.readString(again.resolve("best.toml")));
        assertEquals(log.size(), Files.readAllLines(again.resolve("trials.jsonl")).size());
    }

    /** Own pumps that may be off by as much as one of the catalogue get ranges as wide: no faith in what is at home. */
    @Test
    void ownPumpsMayBeDoubtedToo() throws Exception {
        Path sure = folder.resolve("sure");
        Path doubted = folder.resolve("doubted");
        nano("place", sure, "--budget", "1", "--confirm", "1");
        Shell shell = nano("place", doubted, "--budget", "1", "--confirm", "1", "--pump-uncertainty", "40%");
        assertTrue(shell.out().contains("Ranges hold pumps that are all off by up to 40 % together."), shell.out());
        assertTrue(Files.readString(sure.resolve("placing.txt")).contains("Ranges take the pumps at their word"));
        List<CoralFinding> narrow = confirmed(sure);
        List<CoralFinding> wide = confirmed(doubted);
        for (int n = 0; n < narrow.size(); n++) {
            assertEquals(narrow.get(n).meanMPerS(), wide.get(n).meanMPerS(), 0, "the water is the same");
            assertTrue(wide.get(n).highMPerS() > narrow.get(n).highMPerS(), narrow.get(n) + " " + wide.get(n));
        }
    }

    private static List<CoralFinding> confirmed(Path out) throws IOException {
        try (TrialLog log = TrialLog.open(out.resolve("trials.jsonl"))) {
            Outcome.Read read = (Outcome.Read) log.trials().stream().filter(one -> one.stage() == Stage.CONFIRM)
                    .findFirst().orElseThrow().outcome();
            return read.finding().corals();
        }
    }

    @Test
    void partsAreMergedWithoutComputingAnew() throws Exception {
        Path out = folder.resolve("parts");
        for (String part : List.of("1/2", "2/2")) {
            Shell shell = nano("place", out, "--budget", "4", "--shard", part);
            assertEquals(ExitCode.DONE, shell.code(), shell.err());
        }
        String logs = out.resolve("trials-1-of-2.jsonl") + "," + out.resolve("trials-2-of-2.jsonl");
        Shell merged = nano("place", out, "--budget", "4", "--parts", "2", "--confirm", "1", "--merge", logs);
        assertTrue(merged.code() == ExitCode.DONE || merged.code() == ExitCode.VERDICT_FAIL, merged.err());
        assertFalse(merged.out().contains("trial 1 of"), "every trial on large cells was known: " + merged.out());
        assertTrue(Files.readString(out.resolve("placing.txt")).startsWith("Looked at 4 layouts"));
    }

    @Test
    void comparesSetsAndSaysWhatIsEnough() throws Exception {
        Path out = folder.resolve("compare");
        Shell compare = nano("compare", out, "--pumps", "small-nozzle", "--count", "1", "--budget", "2");
        assertTrue(compare.code() == ExitCode.DONE || compare.code() == ExitCode.VERDICT_FAIL, compare.err());
        String text = Files.readString(out.resolve("compare.txt"));
        assertTrue(text.contains("no pumps") && text.contains("small nozzle"), text);
        assertTrue((text.contains("is enough") || text.contains("as computed: ")) && text.contains("How sure"), text);
        assertEquals(3, Files.readAllLines(out.resolve("compare.csv")).size());
        assertTrue(Files.readString(out.resolve("pareto.svg")).contains("small nozzle"));
        assertTrue(text.contains("loses") || text.contains("-0"), "what fails when it stops: " + text);
    }

    @Test
    void tellsWhatMayCome() throws Exception {
        Path out = folder.resolve("what-if");
        Shell whatIf = Shell.run("what-if", NANO, "--cell-cm", "3", "--max-turns", "3", "--threads", "1", "--out", out);
        assertEquals(ExitCode.DONE, whatIf.code(), whatIf.err());
        String text = Files.readString(out.resolve("what-if.txt"));
        assertTrue(text.contains("pump 'corner pump' stops") && text.contains("power cut"), text);
        assertTrue(text.contains("0.0 cm/s"), "with its only pump stopped the water stands: " + text);
        assertEquals(1 + 2 * 5, Files.readAllLines(out.resolve("what-if.csv")).size());
    }

    /**
     * Common practice, no source: a return alone is not enough for small-polyp and plating corals, circulation pumps
     * are what reaches them. On cells so large speeds read low, so the same tank with its pumps stands beside it.
     */
    @Test
    void theReturnAloneIsNeverEnough() throws Exception {
        Scenario tank = ScenarioReader.read(SCENARIOS.resolve("terrace-120.toml"));
        WaterTrial trial = new WaterTrial(Fidelity.quick(0.04, 1, 1), 1);
        assertEquals(0, demanding(tank.with(List.of()), trial), "with the return alone");
        assertTrue(demanding(tank, trial) >= 2, "with the circulation pumps");
    }

    /** Small-polyp and plating corals in range. */
    private static long demanding(Scenario scenario, WaterTrial trial) {
        List<String> names = scenario.corals().stream().filter(coral -> coral.group() == CoralGroup.SMALL_POLYP
                || coral.group() == CoralGroup.PLATING).map(coral -> coral.name()).toList();
        Outcome.Read read = (Outcome.Read) trial.apply(scenario);
        return read.finding().corals().stream().filter(coral -> names.contains(coral.name()) && coral.inRange())
                .count();
    }

    @Test
    void anEstimateComputesNothing() {
        for (String command : List.of("place", "what-if")) {
            Path out = folder.resolve("none");
            Shell shell = Shell.run(command, NANO, "--cell-cm", "3", "--estimate", "--out", out);
            assertEquals(ExitCode.DONE, shell.code(), shell.err());
            assertTrue(shell.out().startsWith("About "), shell.out());
            assertFalse(Files.exists(out));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "place --shard 3/2|--shard: found '3/2', must be a part and how many there are, such as 2/4",
        "place --budget 4 --shard 5/9|--shard: found 9 parts, must be 1 to the budget of 4 trials; take fewer",
        "place --screen-cell-cm 2|--screen-cell-cm: found 2 cm (3 cm if it is not given), must be no smaller",
        "compare --pumps small-nozzle --count 1 --shard 2/2|--shard: found '2/2', must have no more parts than",
        "place --budget 0|--budget: found 0",
        "place --parts 9 --budget 4|--parts: found 9",
        "place --panes top|--panes",
        "place --pump-uncertainty 61|--pump-uncertainty: found '61', must be 0 to 60, such as 20%",
        "compare --pumps small-nozzle --pump-uncertainty 0.2|--pump-uncertainty: found '0.2', must be 0 or 1 to 60",
        "place --weights 1,2|--weights: found [1.0, 2.0], must be five numbers",
        "place --pumps giant|--pumps: found 'giant', must be a pump of the catalogue pumps: large-propeller",
        "place --pumps ../pumps/small-nozzle|must be a pump of the catalogue",
        "place --wishes nowhere.toml|nowhere.toml: is missing",
        "place --merge nowhere.jsonl|--merge: nowhere.jsonl cannot be read",
        "compare --pumps small-nozzle --count 3..1|--count: found '3..1', must be 1 to 8",
        "compare|--pumps",
        "what-if --night-percent 120|--night-percent: found 120.0, must be 0 to 100",
        "what-if --battery-pump none|--battery-pump: found 'none', must be one of corner pump"})
    void badInputIsToldInOneLine(String words, String expected) throws IOException {
        String[] parts = words.split(" ");
        Object[] all = new Object[parts.length + 5];
        all[0] = parts[0];
        all[1] = NANO;
        System.arraycopy(parts, 1, all, 2, parts.length - 1);
        all[parts.length + 1] = "--cell-cm";
        all[parts.length + 2] = "3";
        all[parts.length + 3] = "--out";
        all[parts.length + 4] = folder.resolve("out");
        Shell shell = Shell.run(all);
        assertEquals(ExitCode.BAD_INPUT, shell.code(), shell.out() + shell.err());
        assertTrue(shell.err().contains(expected), shell.err());
    }
}
