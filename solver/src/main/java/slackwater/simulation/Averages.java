package slackwater.simulation;

import java.util.Arrays;
import slackwater.backend.Moments;
import slackwater.backend.Spread;
import slackwater.discretisation.Voxels;
import slackwater.field.BatchMeans;
import slackwater.field.FlowStatistics;
import slackwater.units.LatticeUnits;

/** Sums over the averaging window, in lattice units, one value a cell; allocates only at the start. */
final class Averages {
    /** A gust is what is passed this share of the time. */
    private static final double GUST_SHARE = 0.05;

    private final Voxels voxels;
    private final float[] sumU;
    private final float[] sumV;
    private final float[] sumW;
    private final float[] sumSpeed;
    private final float[] sumSquare;
    private final float[] batchSpeed;
    private final float[] sumBatch;
    private final float[] sumBatchSquare;
    private final float[] sumStress;
    private final float[] sumStressSquare;
    private final Gusts gusts;
    private int samples;
    private int batches;
    private int inBatch;

    Averages(Voxels voxels) {
        this.voxels = voxels;
        int cells = voxels.solid().length;
        sumU = new float[cells];
        sumV = new float[cells];
        sumW = new float[cells];
        sumSpeed = new float[cells];
        sumSquare = new float[cells];
        batchSpeed = new float[cells];
        sumBatch = new float[cells];
        sumBatchSquare = new float[cells];
        sumStress = new float[cells];
        sumStressSquare = new float[cells];
        gusts = new Gusts(cells);
    }

    /** Bytes for a tank of this many cells. */
    static long bytes(long cells) {
        return cells * 10 * Float.BYTES + Gusts.bytes(cells);
    }

    /** One sample: the water, and the shear stress of the walls. */
    void add(Moments moments, float[] wallStress, Spread threads) {
        threads.over(sumU.length, (from, to) -> add(moments, wallStress, from, to));
        samples++;
        inBatch++;
    }

    private void add(Moments moments, float[] wallStress, int from, int to) {
        for (int n = from; n < to; n++) {
            float u = moments.ux()[n];
            float v = moments.uy()[n];
            float w = moments.uz()[n];
            float square = u * u + v * v + w * w;
            float speed = (float) Math.sqrt(square);
            sumU[n] += u;
            sumV[n] += v;
            sumW[n] += w;
            sumSquare[n] += square;
            batchSpeed[n] += speed;
            sumStress[n] += wallStress[n];
            sumStressSquare[n] += wallStress[n] * wallStress[n];
        }
        gusts.add(wallStress, from, to);
    }

    void endBatch() {
        for (int n = 0; n < batchSpeed.length; n++) {
            float mean = batchSpeed[n] / inBatch;
            sumSpeed[n] += batchSpeed[n];
            sumBatch[n] += mean;
            sumBatchSquare[n] += mean * mean;
        }
        Arrays.fill(batchSpeed, 0);
        inBatch = 0;
        batches++;
    }

    /**
     * The averages in SI over all samples, an unfinished batch included. Before there are two batches, the standard
     * error is unknown; the whole standard deviation of the speed stands for it, as if averaging had gained nothing.
     */
    FlowStatistics statistics(LatticeUnits units) {
        double speedMPerS = units.speedMPerS();
        float perSample = (float) (speedMPerS / samples);
        float[] speed = new float[sumU.length];
        float[] rms = new float[sumU.length];
        float[] error = new float[sumU.length];
        float[] rmsStress = new float[sumU.length];
        for (int n = 0; n < rms.length; n++) {
            rms[n] = (float) (Math.sqrt(sumSquare[n] / samples) * speedMPerS);
            double mean = sumBatch[n] / batches;
            double variance = Math.max(0, sumBatchSquare[n] / batches - mean * mean) * batches / (batches - 1);
            rmsStress[n] = (float) (Math.sqrt(sumStressSquare[n] / samples) * units.stressPa());
            speed[n] = (sumSpeed[n] + batchSpeed[n]) * perSample;
            error[n] = batches < 2 ? (float) Math.sqrt(Math.max(0, rms[n] * rms[n] - speed[n] * speed[n]))
                    : (float) (BatchMeans.standardError(variance, batches) * speedMPerS);
        }
        return new FlowStatistics(voxels.grid(), voxels.fluid(), scaled(sumU, perSample), scaled(sumV, perSample),
                scaled(sumW, perSample), speed, rms, error,
                scaled(sumStress, (float) (units.stressPa() / samples)), rmsStress,
                scaled(gusts.passed(GUST_SHARE * samples), (float) units.stressPa()));
    }

    private static float[] scaled(float[] sum, float factor) {
        float[] mean = new float[sum.length];
        for (int n = 0; n < sum.length; n++) {
            mean[n] = sum[n] * factor;
        }
        return mean;
    }
}
