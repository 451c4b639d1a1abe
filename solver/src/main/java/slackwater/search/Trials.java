package slackwater.search;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import slackwater.geometry.Mesh;
import slackwater.geometry.Solid;
import slackwater.geometry.Union;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioWriter;

/** Runs trials of one stage, each once: what the log knows is read from there. */
public final class Trials {
    private static final int KEY_DIGITS = 24;
    /** Three corners of three coordinates each. */
    private static final int CORNER_NUMBERS = 9;

    private final Stage stage;
    private final String way;
    private final Function<Scenario, Outcome> function;
    private final TrialLog log;
    private final Consumer<Trial> watcher;
    private final Consumer<Trial> recalled;

    /**
     * @param way everything but the scenario that decides what a trial comes to, such as cells, seed and build
     * @param function runs a trial
     * @param watcher is told of each trial that was run, not of those read from the log
     */
    public Trials(Stage stage, String way, Function<Scenario, Outcome> function, TrialLog log,
                  Consumer<Trial> watcher) {
        this(stage, way, function, log, watcher, trial -> { });
    }

    private Trials(Stage stage, String way, Function<Scenario, Outcome> function, TrialLog log,
                   Consumer<Trial> watcher, Consumer<Trial> recalled) {
        this.recalled = recalled;
        this.stage = stage;
        this.way = way;
        this.function = function;
        this.log = log;
        this.watcher = watcher;
    }

    /** The same, and another one is told of each trial that the log knew. */
    public Trials recalling(Consumer<Trial> recalled) {
        return new Trials(stage, way, function, log, watcher, recalled);
    }

    /** The outcome of a scenario, run now or before. */
    public Trial of(Scenario scenario) {
        String key = key(scenario);
        Optional<Trial> known = log.find(key);
        if (known.isPresent()) {
            recalled.accept(known.get());
            return known.get();
        }
        long startNs = System.nanoTime();
        Outcome outcome = function.apply(scenario);
        Trial trial = new Trial(key, stage, way, scenario.pumps(), outcome, (System.nanoTime() - startNs) * 1e-9);
        log.add(trial);
        watcher.accept(trial);
        return trial;
    }

    private String key(Scenario scenario) {
        MessageDigest digest = sha256();
        // A scan is named in the text but not in it.
        scenario.rocks().forEach(rock -> scans(rock.solid(), digest));
        String words = String.join("\n", stage.word(), way, ScenarioWriter.write(scenario));
        digest.update(words.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(digest.digest()).substring(0, KEY_DIGITS);
    }

    /** Puts every corner of every triangle of a scan in; of other shapes the text says all. */
    private static void scans(Solid solid, MessageDigest digest) {
        if (solid instanceof Union union) {
            union.parts().forEach(part -> scans(part, digest));
        } else if (solid instanceof Mesh scan) {
            ByteBuffer triangle = ByteBuffer.allocate(CORNER_NUMBERS * Double.BYTES);
            double[] numbers = scan.trianglesM();
            for (int first = 0; first < numbers.length; first += CORNER_NUMBERS) {
                triangle.clear();
                triangle.asDoubleBuffer().put(numbers, first, CORNER_NUMBERS);
                digest.update(triangle);
            }
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
