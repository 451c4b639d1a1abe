package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A command line that cannot be understood is answered in a keeper's words: found, allowed, what to do. */
class MisuseTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "run --cell-cm 1,5|--cell-cm: found '1,5', must be a number, such as 2.5. Edge of a cell, 0.1 to 10 cm",
        "run --threads 2.5|--threads: found '2.5', must be a whole number, such as 4. Threads to use, 1 to 1024",
        "run --max-seconds long|--max-seconds: found 'long', must be a number, such as 2.5. Most water time",
        "run --grid-ratio x|--grid-ratio: found 'x', must be a number, such as 2.5.",
        "check --seed 1e9|--seed: found '1e9', must be a whole number, such as 4. Seed",
        "feed --at 1,2,3 --grams two|--grams: found 'two', must be a number, such as 2.5. How much, grams",
        "place --budget many|--budget: found 'many', must be a whole number, such as 4. Trials on large cells",
        "place --confirm 2.5|--confirm: found '2.5', must be a whole number",
        "place --weights 10,8,x,2,0.5|--weights: found 'x', must be a number",
        "place --panes top|--panes: found 'top', must be one of front, back, left, right",
        "place --order best|--order: found 'best', must be one of lexicographic, weighted",
        "place --confirm 101|--confirm: found 101, must be 1 to 100",
        "compare --tariff cheap|--tariff: found 'cheap', must be a number",
        "compare --mixed|--pumps: found none, must be one or more pumps of the catalogue pumps: large-propeller",
        "compare --tariff|--tariff: found nothing, must be a number, such as 2.5. Price of a kilowatt hour",
        "place --confirm 2 --confirm 3|--confirm: found twice, must be given once",
        "place nano.toml|found 'nano.toml', which is one name too many",
        "place --bugdet 3|found '--bugdet', must be an option of slackwater place",
        "what-if --growth-cm-per-year fast|--growth-cm-per-year: found 'fast', must be a number"})
    void aValueOfTheWrongKindIsToldPlainly(String line, String expected) {
        String[] words = line.split(" ");
        Object[] all = new Object[words.length + 1];
        all[0] = words[0];
        all[1] = "../scenarios/nano-30.toml";
        System.arraycopy(words, 1, all, 2, words.length - 1);
        Shell shell = Shell.run(all);
        assertEquals(ExitCode.BAD_INPUT, shell.code());
        assertTrue(shell.err().startsWith(expected), shell.err());
        assertFalse(shell.err().matches("(?s).*(is not an? |Invalid value|double|\\bint\\b|Exception).*"), shell.err());
    }

    @Test
    void whatIsMissingIsNamed() {
        assertTrue(Shell.run("place").err().startsWith("SCENARIO: found nothing, must be given. The scenario file"));
        String plce = Shell.run("plce", "x.toml").err();
        assertTrue(plce.startsWith("found 'plce', must be a command: ") && plce.contains("place"), plce);
    }
}
