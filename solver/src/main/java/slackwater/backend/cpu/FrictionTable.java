package slackwater.backend.cpu;

import slackwater.lattice.WallFriction;

/**
 * {@link WallFriction} without exponentials: a table over the Reynolds number |u| y/nu, from 1/4 to 2^30 in steps of
 * 1/32 of each power of two, straight in between. Off by less than 1e-4 of the value.
 */
final class FrictionTable {
    static final int STEP_BITS = 23 - 5;
    static final int LOWEST = Float.floatToRawIntBits(0.25f);
    static final int HIGHEST = Float.floatToRawIntBits(0x1p30f);
    static final float PER_STEP = 1f / (1 << STEP_BITS);

    final float[] amplification;
    final float perSpeed;
    final float laminar;

    FrictionTable(WallFriction friction) {
        perSpeed = (float) (WallFriction.DISTANCE / friction.viscosity());
        laminar = 1 / perSpeed;
        amplification = new float[((HIGHEST - LOWEST) >> STEP_BITS) + 2];
        for (int n = 0; n < amplification.length; n++) {
            float reynolds = Float.intBitsToFloat(LOWEST + (n << STEP_BITS));
            amplification[n] = (float) WallFriction.amplification(reynolds);
        }
    }

    /** u_tau^2/|u|, as {@link WallFriction#rate}; above 2^30 as at 2^30. */
    float rate(float speed, float roughDrag) {
        int bits = Float.floatToRawIntBits(speed * perSpeed) - LOWEST;
        int inside = Math.max(0, Math.min(HIGHEST - LOWEST, bits));
        int step = inside >> STEP_BITS;
        float low = amplification[step];
        float part = (inside - (step << STEP_BITS)) * PER_STEP;
        return Math.max(laminar * (low + part * (amplification[step + 1] - low)), roughDrag * speed);
    }
}
