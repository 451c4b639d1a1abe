package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.search.Outcome;
import slackwater.search.Stage;
import slackwater.search.Trial;

class TrialLineTest {
    private static final Fidelities CELLS = new Fidelities(0.03, 0.01, 3, 0, 1, 1);

    private static Trial trial(Stage stage, double wallS) {
        return new Trial("key", stage, "", List.of(), new Outcome.Failed("it ran away"), wallS);
    }

    /** 10 x 2 s, 3 x 60 s and 4 x 10 s were expected; the first trial took 4 s, then the first on fine cells 30 s. */
    @Test
    void whatWasMeasuredTakesThePlaceOfWhatWasExpected() {
        StringWriter words = new StringWriter();
        TrialLine line = new TrialLine(new PrintWriter(words), new Estimate(10, 2, 3, 60, 4, 10, CELLS));
        line.accept(trial(Stage.SCREEN, 4));
        line.accept(trial(Stage.CONFIRM, 30));
        line.accept(trial(Stage.SIFT, 20));
        List<String> lines = words.toString().lines().toList();
        assertEquals("  trial 1 of about 10 (4 s), about " + Cost.time(9 * 4 + 180 + 40) + " left: no reading, it ran"
                + " away", lines.get(0));
        assertTrue(lines.get(1).contains("about " + Cost.time(9 * 4 + 2 * 30 + 40) + " left"), lines.get(1));
        assertTrue(lines.get(2).contains("about " + Cost.time(9 * 4 + 2 * 30 + 3 * 20) + " left"), lines.get(2));
    }

    /** Started again after a kill: what the log knows is counted once, however often it is asked for. */
    @Test
    void whatTheLogKnowsIsNotWaitedFor() {
        StringWriter words = new StringWriter();
        TrialLine line = new TrialLine(new PrintWriter(words), new Estimate(10, 2, 3, 60, 4, 10, CELLS));
        for (String key : List.of("a", "b", "b", "a", "c")) {
            line.recall(new Trial(key, Stage.SCREEN, "", List.of(), new Outcome.Failed("it ran away"), 2));
        }
        line.accept(trial(Stage.SCREEN, 4));
        line.recall(trial(Stage.SCREEN, 4));
        assertTrue(words.toString().startsWith("  trial 4 of about 10 (4 s), about " + Cost.time(6 * 4 + 180 + 40)
                + " left"), words.toString());
    }

    @Test
    void theEstimateNamesCellsAndCandidatesAnHour() {
        String words = new Estimate(60, 6, 4, 120, 21, 20, CELLS).sentence();
        assertEquals("About 21 min in all: 60 trials on cells of 3 cm (6.0 s each, 600 an hour on 1 threads), some 21"
                + " runs on cells of 1.7 cm (20 s each) for a second look and for what holds, 4 layouts on cells of 1"
                + " cm (2 min each).", words);
    }
}
