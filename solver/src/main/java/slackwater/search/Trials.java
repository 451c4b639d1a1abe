package slackwater.search;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioWriter;

/** Runs trials of one stage, each once: what the log knows is read from there. */
public final class Trials {
    private static final int KEY_DIGITS = 24;

    private final Stage stage;
    private final String way;
    private final Function<Scenario, Outcome> function;
    private final TrialLog log;
    private final Consumer<Trial> watcher;

    /**
     * @param way everything but the scenario that decides what a trial comes to, such as cells, seed and version
     * @param function runs a trial
     * @param watcher is told of each trial that was run, not of those read from the log
     */
    public Trials(Stage stage, String way, Function<Scenario, Outcome> function, TrialLog log,
                  Consumer<Trial> watcher) {
        this.stage = stage;
        this.way = way;
        this.function = function;
        this.log = log;
        this.watcher = watcher;
    }

    /** The outcome of a scenario, run now or before. */
    public Trial of(Scenario scenario) {
        String key = key(scenario);
        Optional<Trial> known = log.find(key);
        if (known.isPresent()) {
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
        // A scan is named in the text but not in it: where it ends tells another scan of the same name apart.
        String scans = scenario.rocks().stream().map(rock -> rock.solid().bounds().toString())
                .collect(Collectors.joining(" "));
        String all = String.join("\n", stage.word(), way, scans, ScenarioWriter.write(scenario));
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(all.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, KEY_DIGITS);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
