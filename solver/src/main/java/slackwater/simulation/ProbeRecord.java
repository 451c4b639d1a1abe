package slackwater.simulation;

import java.util.Arrays;
import slackwater.backend.Moments;
import slackwater.field.BatchMeans;
import slackwater.field.Grid;
import slackwater.field.Probe;
import slackwater.field.ProbeSeries;

/** Gathers the speed at one probe and judges how well its mean is known. */
final class ProbeRecord {
    /**
     * A reading whose standard error is this share of it for each metre of the cells' edge, 14 % on 1 cm, is known
     * nearly twice as well as cells of that size allow: a longer run would hardly narrow its range.
     */
    private static final double GOOD_ENOUGH_PER_M = 14;
    private static final double LEAST_GOOD_ENOUGH_FRACTION = 0.1;
    private static final double MOST_GOOD_ENOUGH_FRACTION = 0.14;

    private final Probe probe;
    private final int[] cells;
    private final int samplesPerBatch;
    private final double goodEnoughFraction;
    private float[] speed = new float[1024];
    private int samples;

    ProbeRecord(Probe probe, Grid grid, int samplesPerBatch) {
        this.probe = probe;
        this.samplesPerBatch = samplesPerBatch;
        this.goodEnoughFraction = Math.max(LEAST_GOOD_ENOUGH_FRACTION,
                Math.min(MOST_GOOD_ENOUGH_FRACTION, GOOD_ENOUGH_PER_M * grid.cellSizeM()));
        this.cells = probe.pointsM().stream().mapToInt(grid::indexAt).toArray();
    }

    Probe probe() {
        return probe;
    }

    String name() {
        return probe.name();
    }

    void add(Moments moments, double speedMPerS) {
        double sum = 0;
        for (int n : cells) {
            float u = moments.ux()[n];
            float v = moments.uy()[n];
            float w = moments.uz()[n];
            sum += Math.sqrt(u * u + v * v + w * w);
        }
        if (samples == speed.length) {
            speed = Arrays.copyOf(speed, 2 * samples);
        }
        speed[samples++] = (float) (sum / cells.length * speedMPerS);
    }

    /** Whether a longer run would hardly matter: clear of every limit, or known well beside what the cells allow. */
    boolean settled() {
        BatchMeans known = BatchMeans.of(speed, samples, samplesPerBatch);
        double mean = known.meanMPerS();
        boolean clear = probe.limitsMPerS().stream().allMatch(limit -> Math.abs(mean - limit) > known.marginMPerS());
        return clear || known.standardErrorMPerS() < goodEnoughFraction * mean;
    }

    ProbeSeries series(double sampleIntervalS) {
        return new ProbeSeries(probe, sampleIntervalS, samplesPerBatch, Arrays.copyOf(speed, samples));
    }
}
