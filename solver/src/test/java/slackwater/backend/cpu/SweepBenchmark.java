package slackwater.backend.cpu;

import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.VelocitySet;

/** The collision alone, one thread: cells a microsecond, that is million cells a second. Not a test; see DEVELOPERS. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 3, jvmArgsAppend = {"--add-modules", "jdk.incubator.vector"})
public class SweepBenchmark {
    private static final int CELLS = 1 << 17;
    private static final int STRIDE = CELLS + 144;
    private static final int BLOCK = 2048;

    /** By vectors or by plain loops. */
    @Param({"vectors", "plain"})
    public String loops;

    private final float[] f = new float[VelocitySet.Q * STRIDE];
    private final int[] base = new int[VelocitySet.Q];
    private Sweep sweep;

    @Setup
    public void stir() {
        Random random = new Random(1);
        for (int n = 0; n < f.length; n++) {
            f[n] = 1e-3f * (float) random.nextGaussian();
        }
        for (int i = 0; i < base.length; i++) {
            base[i] = i * STRIDE;
        }
        Bgk operator = new Bgk(0.50005, 0.18);
        float[] eddy = new float[STRIDE];
        Arrays.fill(eddy, (float) (18 * Math.sqrt(2) * 0.18 * 0.18));
        sweep = loops.equals("vectors") ? new BgkSweep(operator, eddy) : new PlainBgkSweep(operator, eddy);
    }

    @Benchmark
    @OperationsPerInvocation(CELLS)
    public float[] collide() {
        for (int from = 0; from < CELLS; from += BLOCK) {
            sweep.collide(f, base, from, from + BLOCK);
        }
        return f;
    }
}
