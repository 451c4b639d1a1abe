package slackwater.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.field.Velocity;
import slackwater.simulation.LiveRun;

/** Measures this machine and the solver on it, in one run, so that the one can be judged by the other. */
@Command(name = "bench", mixinStandardHelpOptions = true,
        description = "Measures the speed of the solver and of the machine's memory and arithmetic.",
        footer = {"", "An invented tank on cells of 2, 1 and 0.5 cm, first empty, then with more and more of what a",
            "run has. The share is of what the machine allows: one read and one write of every", "population, "
            + CpuBackend.OPERATIONS_PER_CELL + " additions and multiplications a cell, whichever takes longer.", "",
            "Examples:", "  slackwater bench", "  slackwater bench --threads 1"})
final class Bench implements Callable<Integer> {
    private static final int TRIES = Machine.TRIES;
    /** A try is long enough to be timed and short enough to be borne. */
    private static final double CELLS_A_TRY = 3e7;
    private static final double[] CELLS_M = {0.02, 0.01, 0.005};

    @Spec
    private CommandSpec spec;

    @Mixin
    private GridOptions options;

    /** Something that goes on by some steps. */
    private interface Stepper extends AutoCloseable {
        int advance();

        @Override
        void close();
    }

    @Override
    public Integer call() {
        int threads = options.threads();
        Backend backend = new CpuBackend(threads);
        say("%d threads, Java %s, %s, %s", threads, Runtime.version(), System.getProperty("os.arch"), backend.name());
        Machine machine = Machine.measure(threads);
        double byMemory = machine.bytesPerS() / CpuBackend.BYTES_PER_CELL;
        double byArithmetic = machine.operationsPerS() / CpuBackend.OPERATIONS_PER_CELL;
        say("memory, read and written in place: %.1f GB/s, enough for %.0f million cells/s", machine.bytesPerS() / 1e9,
                byMemory / 1e6);
        say("arithmetic: %.0f thousand million operations/s, enough for %.0f million cells/s",
                machine.operationsPerS() / 1e9, byArithmetic / 1e6);
        double limit = Math.min(byMemory, byArithmetic);
        for (double cellSizeM : CELLS_M) {
            for (BenchTank tank : BenchTank.values()) {
                Discretisation discretisation = tank.on(cellSizeM);
                double[] rates = rates(tank, discretisation, backend);
                var grid = discretisation.voxels().grid();
                say("%d x %d x %d %s: %.0f million cells/s (%.0f to %.0f), %.0f %% of the limit", grid.nx(), grid.ny(),
                        grid.nz(), tank.words(), rates[TRIES / 2] / 1e6, rates[0] / 1e6, rates[TRIES - 1] / 1e6,
                        100 * rates[TRIES / 2] / limit);
            }
        }
        return ExitCode.DONE;
    }

    /** Cells a second, rock cells counted too; in rising order. */
    private static double[] rates(BenchTank tank, Discretisation discretisation, Backend backend) {
        int cells = discretisation.problem().cells();
        try (Stepper stepper = tank == BenchTank.RUN ? run(discretisation, backend) : solver(discretisation, backend)) {
            goOn(stepper, cells);
            goOn(stepper, cells);
            return IntStream.range(0, TRIES).mapToDouble(attempt -> {
                long start = System.nanoTime();
                int steps = goOn(stepper, cells);
                return (double) steps * cells / ((System.nanoTime() - start) * 1e-9);
            }).sorted().toArray();
        }
    }

    private static int goOn(Stepper stepper, int cells) {
        int steps = 0;
        while ((double) steps * cells < CELLS_A_TRY) {
            steps += stepper.advance();
        }
        return steps;
    }

    private static Stepper solver(Discretisation discretisation, Backend backend) {
        FlowSolver solver = backend.solver(discretisation.problem());
        Moments stirred = new Moments(discretisation.problem().cells());
        System.arraycopy(stirred(discretisation), 0, stirred.ux(), 0, stirred.cells());
        solver.initialise(stirred);
        return new Stepper() {
            @Override
            public int advance() {
                solver.advance(2);
                return 2;
            }

            @Override
            public void close() {
                solver.close();
            }
        };
    }

    private static Stepper run(Discretisation discretisation, Backend backend) {
        float[] speeds = stirred(discretisation);
        float[] none = new float[speeds.length];
        for (int n = 0; n < speeds.length; n++) {
            speeds[n] *= (float) discretisation.units().speedMPerS();
        }
        Velocity water = new Velocity(discretisation.voxels().grid(), discretisation.voxels().fluid(), speeds, none,
                none);
        LiveRun run = new LiveRun(discretisation.begunWith(Optional.of(water)), List.of(), backend);
        return new Stepper() {
            @Override
            public int advance() {
                run.advance();
                return discretisation.plan().stepsPerSample();
            }

            @Override
            public void close() {
                run.close();
            }
        };
    }

    /** Random speeds along x, cells a step, so that nothing is small enough to be slow. */
    private static float[] stirred(Discretisation discretisation) {
        Random random = new Random(1);
        float[] speeds = new float[discretisation.problem().cells()];
        for (int n = 0; n < speeds.length; n++) {
            speeds[n] = discretisation.voxels().solid()[n] ? 0 : (float) (0.03 * random.nextGaussian());
        }
        return speeds;
    }

    private void say(String format, Object... values) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(String.format(Locale.ROOT, format, values));
        out.flush();
    }
}
