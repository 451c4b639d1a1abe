package slackwater.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.backend.cpu.CpuBackend;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.VelocitySet;

/** Measures this machine and the solver on it, in one run, so that the one can be judged by the other. */
@Command(name = "bench", mixinStandardHelpOptions = true,
        description = "Measures the speed of the solver and of the machine's memory.",
        footer = {"", "The share is of what the memory allows: one read and one write of every population.", "",
            "Examples:", "  slackwater bench", "  slackwater bench --threads 1"})
final class Bench implements Callable<Integer> {
    private static final int REPEATS = 5;
    private static final int STEPS = 200;
    private static final int COPY_FLOATS = 32 * 1024 * 1024;
    private static final int BYTES_PER_CELL = 2 * Float.BYTES * VelocitySet.Q;

    @Spec
    private CommandSpec spec;

    @Mixin
    private GridOptions options;

    @Override
    public Integer call() {
        int threads = options.threads();
        double bandwidth = median(copies(threads));
        say("%d threads, Java %s, %s", threads, Runtime.version(), System.getProperty("os.arch"));
        say("memory, read and written in place: %.1f GB/s (median of %d)", bandwidth / 1e9, REPEATS);
        for (int[] size : new int[][] {{120, 60, 50}, {240, 120, 100}}) {
            for (boolean rock : new boolean[] {false, true}) {
                double[] rates = updates(size, rock, threads);
                say("%d x %d x %d %s: %.0f million cells/s (median of %d; %.0f to %.0f), %.0f %% of the memory's limit",
                        size[0], size[1], size[2], rock ? "with a sphere of rock, 15 %" : "open water",
                        median(rates) / 1e6, REPEATS, Arrays.stream(rates).min().orElse(0) / 1e6,
                        Arrays.stream(rates).max().orElse(0) / 1e6, 100 * median(rates) * BYTES_PER_CELL / bandwidth);
            }
        }
        return ExitCode.DONE;
    }

    /** Bytes a second of adding 1 to every value of an array larger than any cache. */
    private static double[] copies(int threads) {
        float[] values = new float[COPY_FLOATS];
        int share = COPY_FLOATS / threads;
        return IntStream.range(0, REPEATS + 2).mapToDouble(repeat -> {
            long start = System.nanoTime();
            IntStream.range(0, threads).parallel().forEach(worker -> {
                for (int n = worker * share; n < (worker + 1) * share; n++) {
                    values[n] += 1;
                }
            });
            return 2.0 * Float.BYTES * share * threads / ((System.nanoTime() - start) * 1e-9);
        }).skip(2).toArray();
    }

    /** Cells a second, rock cells counted too, since they are swept as well. */
    private static double[] updates(int[] size, boolean rock, int threads) {
        int cells = size[0] * size[1] * size[2];
        boolean[] solid = new boolean[cells];
        double radius = Math.cbrt(0.15 * cells * 3 / (4 * Math.PI));
        Moments stirred = new Moments(cells);
        Random random = new Random(1);
        for (int n = 0; n < cells; n++) {
            double x = n % size[0] - size[0] / 2.0;
            double y = n / size[0] % size[1] - size[1] / 2.0;
            double z = n / size[0] / size[1] - size[2] / 2.0;
            solid[n] = rock && x * x + y * y + z * z < radius * radius;
            stirred.ux()[n] = (float) (0.03 * random.nextGaussian());
        }
        LatticeProblem problem = new LatticeProblem(size[0], size[1], size[2], solid, Faces.tank(),
                new Bgk(0.50005, 0.2), List.of(), List.of(), 1);
        try (FlowSolver solver = new CpuBackend(threads).solver(problem)) {
            solver.initialise(stirred);
            solver.advance(2 * STEPS);
            return IntStream.range(0, REPEATS).mapToDouble(repeat -> {
                long start = System.nanoTime();
                solver.advance(STEPS);
                return (double) STEPS * cells / ((System.nanoTime() - start) * 1e-9);
            }).toArray();
        }
    }

    private static double median(double[] values) {
        return Arrays.stream(values).sorted().toArray()[values.length / 2];
    }

    private void say(String format, Object... values) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(String.format(Locale.ROOT, format, values));
    }
}
