package slackwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slackwater.analysis.Figures;
import slackwater.pump.catalogue.CatalogueReader;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.Wall;
import slackwater.search.Objective;
import slackwater.search.Trial;
import slackwater.search.Wishes;
import slackwater.search.WishesReader;

/** Options of the commands that search. */
final class SearchOptions {
    private static final int MOST_TRIALS = 1_000_000;
    private static final int MOST_CONFIRMED = 100;
    private static final double LEAST_CM = 0.5;
    private static final double MOST_CM = 10;

    @Option(names = "--pumps", paramLabel = "NAME", split = ",",
            description = "Pumps of the catalogue, by the names of their files: in place of the scenario's own, one"
                    + " name for each; in compare, those to choose from.")
    private List<String> names = List.of();

    @Option(names = "--wishes", paramLabel = "FILE",
            description = "File with panes to look through, spaces to keep free, distances, cables and tariff (.toml).")
    private Path wishesFile;

    @Option(names = "--panes", paramLabel = "PANE", split = ",",
            description = "Panes that may carry a pump, such as back,left (default: all but the front).")
    private List<Wall> panes = List.of();

    @Option(names = "--tariff", paramLabel = "PRICE",
            description = "Price of a kilowatt hour in your own money (default: of the wishes, or 0.30).")
    private double tariff = Double.NaN;

    @Option(names = "--catalogue", paramLabel = "DIR",
            description = "Folder with the files of pumps (default: pumps, beside the scenario).")
    private Path catalogue;

    @Option(names = "--pump-uncertainty", paramLabel = "PERCENT",
            description = "How far all pumps and the return may be off together, such as 20%% (0 to 60; default: what"
                    + " the catalogue says of the least known of its pumps, and 0 for the scenario's own, which are"
                    + " taken at their word).")
    private String pumpUncertainty;

    @Option(names = "--budget", paramLabel = "N", defaultValue = "60",
            description = "Trials on large cells, 1 to 1000000 (default ${DEFAULT-VALUE}); in compare, for each set of"
                    + " pumps.")
    private int budget;

    @Option(names = "--confirm", paramLabel = "N",
            description = "How many of the best layouts to compute on fine cells (default: 3; in compare 1 of each"
                    + " set).")
    private Optional<Integer> few = Optional.empty();

    @Option(names = "--shard", paramLabel = "I/N", defaultValue = "",
            description = "Work on part I of N only, and write only its log: of the trials on large cells; in compare,"
                    + " every Nth set of pumps from the Ith on.")
    private String shard;

    @Option(names = "--merge", paramLabel = "LOG", split = ",", description = "Logs of other machines to go on from.")
    private List<Path> logs = List.of();

    @Option(names = "--screen-cell-cm", paramLabel = "CM", defaultValue = "3",
            description = "Edge of a cell while looking, 0.5 to 10 cm (default ${DEFAULT-VALUE}).")
    private double screenCellCm;

    @Option(names = "--order", defaultValue = "lexicographic",
            description = "How the aims are put together: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private Objective.Order order;

    @Option(names = "--weights", paramLabel = "W", split = ",",
            description = "Weights of: a coral out of range, discomfort, still water, too strong or sand, watts; with"
                    + " --order weighted (default 10,8,2,2,0.5).")
    private List<Double> weights = List.of();

    @Mixin
    private TurnsOption turns;

    @Mixin
    private GridOptions grid;

    @Option(names = "--estimate", description = "Say what it would take, and stop.")
    private boolean estimate;

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for results and the log of all trials.")
    private Path directory;

    Wishes wishes() throws ScenarioFaults {
        Wishes wishes = wishesFile == null ? Wishes.NONE : WishesReader.read(wishesFile);
        if (!panes.isEmpty()) {
            wishes = wishes.on(List.copyOf(panes));
        }
        if (Double.isNaN(tariff)) {
            return wishes;
        }
        if (!(tariff >= 0 && tariff <= 1000)) {
            throw new BadInput("--tariff: found " + tariff + ", must be 0 to 1000");
        }
        return wishes.at(tariff);
    }

    int budget() {
        if (budget < 1 || budget > MOST_TRIALS) {
            throw new BadInput("--budget: found " + budget + ", must be 1 to " + MOST_TRIALS);
        }
        return budget;
    }

    double screenCellM() {
        if (!(screenCellCm >= LEAST_CM && screenCellCm <= MOST_CM)) {
            throw new BadInput("--screen-cell-cm: found " + screenCellCm + ", must be 0.5 to 10 (3 for a tank of some"
                    + " hundred litres, 1.5 to 2 for a nano tank)");
        }
        if (screenCellCm / 100 < grid.cellSizeM()) {
            throw new BadInput(String.format(Locale.ROOT, "--screen-cell-cm: found %s (3 cm if it is not given), must"
                    + " be no smaller than the cells of what is reported, %s; take larger ones for looking, or"
                    + " smaller ones for the report (--cell-cm)", Figures.cell(screenCellCm / 100),
                    Figures.cell(grid.cellSizeM())));
        }
        return screenCellCm / 100;
    }

    Objective objective() {
        if (weights.isEmpty()) {
            return new Objective(order, Objective.Weights.USUAL);
        }
        if (weights.size() != 5 || weights.stream().anyMatch(weight -> !(weight >= 0 && weight <= 1e6))) {
            throw new BadInput("--weights: found " + weights + ", must be five numbers from 0 on, such as"
                    + " 10,8,2,2,0.5");
        }
        return new Objective(order, new Objective.Weights(weights.get(0), weights.get(1), weights.get(2),
                weights.get(3), weights.get(4)));
    }

    /**
     * How far all pumps may be off together, as a share.
     *
     * @param known what the pumps themselves say, taken where no option was given
     * @throws BadInput if it is no number or out of bounds
     */
    double pumpFraction(double known) {
        return pumpUncertainty == null ? known : PumpDoubt.fraction(pumpUncertainty);
    }

    /**
     * How many layouts to confirm.
     *
     * @param usual what is taken where no option was given
     * @throws BadInput if it is out of bounds
     */
    int few(int usual) {
        int found = few.orElse(usual);
        if (found < 1 || found > MOST_CONFIRMED) {
            throw new BadInput("--confirm: found " + found + ", must be 1 to " + MOST_CONFIRMED);
        }
        return found;
    }

    /** @throws BadInput if it is not like 2/4 */
    Shard shard() {
        return Shard.of(shard);
    }

    /** Reads the logs of other machines into one and says so. */
    void merge(LogFile log, PrintWriter out) throws IOException {
        for (Path other : logs) {
            List<Trial> read = log.merge(other);
            boolean strange = !read.isEmpty() && read.stream().noneMatch(Fidelity::isOfThisBuild);
            out.println("  " + read.size() + " trials read from " + other.getFileName() + (strange
                    ? "; another build of the program made them, so they are computed anew" : ""));
        }
    }

    GridOptions grid() {
        return grid;
    }

    TurnsOption turns() {
        return turns;
    }

    boolean estimate() {
        return estimate;
    }

    Path directory(Path scenario, String kind) {
        return directory == null ? Path.of("out", Names.of(scenario) + "-" + kind) : directory;
    }

    /**
     * Pumps of the catalogue by the names of their files.
     *
     * @param least how many there must be
     * @throws BadInput where there are too few, or is no such file, with those that there are
     */
    List<PumpModel> models(Path scenario, int least) throws ScenarioFaults {
        Path beside = Optional.ofNullable(scenario.toAbsolutePath().getParent()).orElse(Path.of("."));
        Path folder = catalogue == null ? beside.resolve("pumps") : catalogue;
        if (names.size() < least) {
            throw new BadInput("--pumps: found none, must be one or more pumps of the catalogue " + folder.getFileName()
                    + ": " + CatalogueFolder.names(folder));
        }
        List<PumpModel> models = new ArrayList<>();
        for (String name : names) {
            Path file = folder.resolve(name.strip() + ".toml");
            if (!name.strip().matches("[A-Za-z0-9_-]+") || !Files.isRegularFile(file)) {
                throw new BadInput(String.format(Locale.ROOT, "--pumps: found '%s', must be a pump of the catalogue %s:"
                        + " %s", name, folder.getFileName(), CatalogueFolder.names(folder)));
            }
            models.add(CatalogueReader.read(file));
        }
        return models;
    }
}
