package slackwater.field;

/**
 * The velocities of one moment as 16-bit shares of the greatest of them.
 *
 * @param velocity through the faces of every cell towards smaller x, y and z: x, y, z, then the next cell
 * @param unitMPerS metres per second of one unit; 0 where all is still
 */
record Packed(short[] velocity, float unitMPerS) {
    static Packed of(Snapshot now) {
        int cells = now.u().length;
        float unit = greatest(now) / Short.MAX_VALUE;
        short[] packed = new short[3 * cells];
        for (int cell = 0; cell < cells && unit > 0; cell++) {
            packed[3 * cell] = (short) Math.round(now.u()[cell] / unit);
            packed[3 * cell + 1] = (short) Math.round(now.v()[cell] / unit);
            packed[3 * cell + 2] = (short) Math.round(now.w()[cell] / unit);
        }
        return new Packed(packed, unit);
    }

    private static float greatest(Snapshot now) {
        float greatest = 0;
        for (int cell = 0; cell < now.u().length; cell++) {
            greatest = Math.max(greatest, Math.max(Math.abs(now.u()[cell]),
                    Math.max(Math.abs(now.v()[cell]), Math.abs(now.w()[cell]))));
        }
        return greatest;
    }
}
