package slackwater.backend.cpu;

import static jdk.incubator.vector.FloatVector.fromArray;

import java.util.Arrays;
import jdk.incubator.vector.FloatVector;
import slackwater.backend.Moments;
import slackwater.lattice.VelocitySet;

/** Density and velocity of rows of cells, from their populations. */
final class Reading {
    private final float[] f;
    private final boolean[] solid;
    private final boolean vectors;

    /**
     * @param f all populations, as deviations from the weights
     * @param solid which cells hold no water, x fastest
     * @param vectors whether the Java machine has its vector module
     */
    Reading(float[] f, boolean[] solid, boolean vectors) {
        this.f = f;
        this.solid = solid;
        this.vectors = vectors;
    }

    /**
     * Reads a row.
     *
     * @param base where direction i of cell 0 is read
     * @param at its first cell in the array of populations
     * @param first and in the problem
     */
    void row(int[] base, int at, int length, Moments target, int first) {
        int end = first + length;
        int whole = vectors ? WholeVectors.sum(f, base, at, length, target, first) : 0;
        sum(base, at - first, first + whole, end, target);
        for (int cell = first; cell < end; cell++) {
            float perMass = solid[cell] ? 0 : 1 / (1 + target.densityDeviation()[cell]);
            target.ux()[cell] *= perMass;
            target.uy()[cell] *= perMass;
            target.uz()[cell] *= perMass;
            target.densityDeviation()[cell] = solid[cell] ? 0 : target.densityDeviation()[cell];
        }
    }

    /**
     * Density less 1 and momentum of the cells [from, end), in plain loops. In the order in which vectors do it, so
     * that what is read does not depend on how many cells a machine's vectors hold.
     */
    private void sum(int[] base, int shift, int from, int end, Moments target) {
        float[] density = target.densityDeviation();
        System.arraycopy(f, base[0] + shift + from, density, from, end - from);
        Arrays.fill(target.ux(), from, end, 0);
        Arrays.fill(target.uy(), from, end, 0);
        Arrays.fill(target.uz(), from, end, 0);
        for (int i = 1; i < VelocitySet.Q; i += 2) {
            int plus = base[i] + shift;
            int minus = base[i + 1] + shift;
            for (int cell = from; cell < end; cell++) {
                float odd = f[plus + cell] - f[minus + cell];
                density[cell] = density[cell] + f[plus + cell] + f[minus + cell];
                target.ux()[cell] += odd * VelocitySet.cx(i);
                target.uy()[cell] += odd * VelocitySet.cy(i);
                target.uz()[cell] += odd * VelocitySet.cz(i);
            }
        }
    }

    /** The same a vector at a time; apart, so that nothing asks for the vector module where there is none. */
    private static final class WholeVectors {
        /** Returns how many cells fill whole vectors: the others are left to do. */
        static int sum(float[] f, int[] base, int at, int length, Moments target, int first) {
            int whole = Lanes.FLOATS.loopBound(length);
            for (int n = 0; n < whole; n += Lanes.FLOATS.length()) {
                FloatVector density = fromArray(Lanes.FLOATS, f, base[0] + at + n);
                FloatVector x = FloatVector.zero(Lanes.FLOATS);
                FloatVector y = x;
                FloatVector z = x;
                for (int i = 1; i < VelocitySet.Q; i += 2) {
                    FloatVector plus = fromArray(Lanes.FLOATS, f, base[i] + at + n);
                    FloatVector minus = fromArray(Lanes.FLOATS, f, base[i + 1] + at + n);
                    FloatVector odd = plus.sub(minus);
                    density = density.add(plus).add(minus);
                    x = x.add(odd.mul(VelocitySet.cx(i)));
                    y = y.add(odd.mul(VelocitySet.cy(i)));
                    z = z.add(odd.mul(VelocitySet.cz(i)));
                }
                density.intoArray(target.densityDeviation(), first + n);
                x.intoArray(target.ux(), first + n);
                y.intoArray(target.uy(), first + n);
                z.intoArray(target.uz(), first + n);
            }
            return whole;
        }
    }
}
