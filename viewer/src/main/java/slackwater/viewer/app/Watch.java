package slackwater.viewer.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.FutureTask;
import java.util.function.DoubleSupplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slackwater.cli.BadInput;
import slackwater.cli.Cost;
import slackwater.cli.ExitCode;
import slackwater.field.UnfitGrid;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioFile;
import slackwater.viewer.gl.NoGraphics;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.live.Liveliness;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.Units;
import slackwater.viewer.session.Finished;
import slackwater.viewer.session.Session;
import slackwater.viewer.session.Side;
import slackwater.viewer.window.Window;
import slackwater.viewer.window.Window.NoWindow;

/** Opens a window on one tank or two. */
@Command(name = "view", mixinStandardHelpOptions = true, sortOptions = false,
        description = "Shows a tank and its water in a window, where pumps, corals and rocks can be moved while the"
            + " water goes on.",
        footer = {"", "F1 in the window lists all keys. Exit codes: 0 done, 2 something is wrong with the input, or"
            + " no window can be opened.", "", "Examples:", "  slackwater view scenarios/terrace-120.toml",
            "  slackwater view out/terrace-120                a finished result",
            "  slackwater view my-tank.toml other-tank.toml   side by side, with their difference"})
final class Watch implements Callable<Integer> {
    private static final int[] SIZE = {1280, 800};
    private static final int MOST_TANKS = 2;

    @Parameters(paramLabel = "SCENARIO-or-RESULT", arity = "1..2",
            description = "One or two scenario files (.toml) or folders of finished runs.")
    private List<Path> sources;

    @Option(names = "--cell-cm", paramLabel = "CM", description = "Edge of a cell, 0.5 to 10 cm (default: as fine as"
            + " this machine keeps up with, 1 at the finest).")
    private double cellCm;

    @Option(names = "--threads", paramLabel = "N",
            description = "Threads for the water (default: all processors but one).")
    private int threads = Math.max(1, Runtime.getRuntime().availableProcessors() - 1);

    @Option(names = "--scale", paramLabel = "S", description = "Pixels a unit of type, 0.5 to 4 (default: the"
            + " screen's own).")
    private double scale;

    /** Whether the layout is to be seen: the water waits for that, so that it does not slow the window down. */
    private final CountDownLatch shown = new CountDownLatch(1);
    private final ExecutorService layouts = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "layouts");
        thread.setDaemon(true);
        return thread;
    });
    private boolean inches;

    /** Lets the water go, at the latest when all is over. */
    private record Gate(CountDownLatch latch) implements AutoCloseable {
        void open() {
            latch.countDown();
        }

        @Override
        public void close() {
            open();
        }
    }

    @Override
    public Integer call() throws ScenarioFaults {
        check();
        try (Session session = session(); Gate water = new Gate(shown);
                Window window = Window.open("Slackwater", SIZE, scale); Desk desk = new Desk(window, session)) {
            window.title(String.join(" and ", session.sides().stream().map(Side::name).toList()) + " - Slackwater");
            desk.round(List.of());
            water.open();
            desk.run();
        } catch (NoWindow | NoGraphics none) {
            throw new BadInput(none.getMessage());
        }
        return ExitCode.DONE;
    }

    /** Reads everything before a window opens, so that faults are told where the person looks. */
    private Session session() throws ScenarioFaults {
        List<ScenarioFile> files = new ArrayList<>();
        for (Path source : sources) {
            if (!Files.isDirectory(source)) {
                files.add(ScenarioFile.open(source));
            }
        }
        List<Side> done = new ArrayList<>();
        for (Path source : sources) {
            if (Files.isDirectory(source)) {
                done.add(finished(source));
            }
        }
        inches = !files.isEmpty() && files.stream().allMatch(file -> file.text().contains("inside_in"));
        List<Scenario> live = files.stream().map(ScenarioFile::scenario).toList();
        if (cellCm > 0) {
            Cost.requireRoom(live, cellCm / 100, LiveFlow::bytes);
        }
        DoubleSupplier wanted = cellSizeM(live, done);
        DoubleSupplier cellSizeM = () -> {
            await(shown);
            return roomy(live, wanted.getAsDouble());
        };
        List<Side> sides = new ArrayList<>();
        for (Path source : sources) {
            sides.add(Files.isDirectory(source) ? done.remove(0)
                    : Side.live(files.remove(0), cellSizeM, Math.max(1, threads / sources.size()),
                            layouts));
        }
        return new Session(sides, inches ? Units.US : Units.METRIC);
    }

    /** Cells as they were chosen, on the water's own thread; what does not fit into the memory is told of there. */
    private static double roomy(List<Scenario> live, double cellSizeM) {
        try {
            Cost.requireRoom(live, cellSizeM, LiveFlow::bytes);
            return cellSizeM;
        } catch (BadInput full) {
            throw new UnfitGrid(full.getMessage());
        }
    }

    /** One size for both tanks, so that what differs between them is not the cells; a trial finds it where asked. */
    private DoubleSupplier cellSizeM(List<Scenario> live, List<Side> done) {
        if (cellCm > 0) {
            return () -> cellCm / 100;
        }
        if (!done.isEmpty()) {
            double theirs = done.get(0).mean().orElseThrow().grid().cellSizeM();
            return () -> theirs;
        }
        FutureTask<Double> trial = new FutureTask<>(() -> {
            double cellsPerS = Liveliness.cellsPerS(threads) / live.size();
            return live.stream().mapToDouble(one -> Liveliness.cellSizeM(one, cellsPerS)).max().orElseThrow();
        });
        return () -> {
            trial.run(); // whoever comes second waits for the first one's answer
            return found(trial);
        };
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    private static double found(FutureTask<Double> trial) {
        try {
            return trial.get();
        } catch (InterruptedException | ExecutionException failed) {
            throw new IllegalStateException("the trial of the solver failed", failed);
        }
    }

    private static Side finished(Path folder) throws ScenarioFaults {
        Scene scene = Source.read(folder);
        String name = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        return Side.finished(name, scene.scenario(), new Finished(scene.water().orElseThrow(), scene.readings()));
    }

    private void check() {
        if (cellCm != 0 && !(cellCm >= 0.5 && cellCm <= 10)) {
            throw new BadInput("--cell-cm: found " + cellCm + ", must be 0.5 to 10");
        }
        if (threads < 1 || threads > 1024) {
            throw new BadInput("--threads: found " + threads + ", must be 1 to 1024");
        }
        if (scale != 0 && !(scale >= 0.5 && scale <= 4)) {
            throw new BadInput("--scale: found " + scale + ", must be 0.5 to 4");
        }
        if (sources.size() > MOST_TANKS) {
            throw new BadInput("found " + sources.size() + " tanks, must be one or two: a window shows two side by"
                    + " side at most");
        }
        sources.stream().filter(source -> !Files.exists(source)).findFirst().ifPresent(gone -> {
            throw new BadInput(gone + " is missing; give a scenario file (.toml) or the folder of a finished run");
        });
    }
}
