package slackwater.field;

/**
 * The water of a run as it moved, kept to be played again and again: frames over a whole number of pump periods, after
 * which the first follows the last. Velocities are kept as 16-bit shares of each frame's greatest component, so an
 * error of at most 1/65534 of it.
 */
public final class FlowRecord {
    private final Grid grid;
    private final boolean[] fluid;
    private final double loopS;
    private final double[] timeS;
    private final short[][] velocity;
    private final float[] unitMPerS;
    private final int[] floorIndex;
    private final float[][] floorShearPa;
    private final float[] eddyViscosityM2PerS;
    private final float[] outflowPerS;

    /** Frames as {@link FlowRecorder} keeps them. */
    record Frames(double[] timeS, short[][] velocity, float[] unitMPerS, float[][] floorShearPa) {
    }

    FlowRecord(Floors floors, double loopS, Frames frames, float[] eddyViscosityM2PerS, float[] outflowPerS) {
        this.grid = floors.grid();
        this.fluid = floors.fluid();
        this.floorIndex = floors.index();
        this.loopS = loopS;
        this.timeS = frames.timeS();
        this.velocity = frames.velocity();
        this.unitMPerS = frames.unitMPerS();
        this.floorShearPa = frames.floorShearPa();
        this.eddyViscosityM2PerS = eddyViscosityM2PerS;
        this.outflowPerS = outflowPerS;
    }

    public Grid grid() {
        return grid;
    }

    /** True where there is water, x fastest. */
    public boolean[] fluid() {
        return fluid;
    }

    /** Length of the record, seconds of water. */
    public double loopS() {
        return loopS;
    }

    public int frames() {
        return timeS.length;
    }

    /** Time from a frame to the next one, seconds; from the last to the first. */
    public double stepS(int frame) {
        return frame + 1 < timeS.length ? timeS[frame + 1] - timeS[frame] : timeS[0] + loopS - timeS[frame];
    }

    /**
     * Velocity through the faces of every cell towards smaller x, y and z, in units of {@link #unitMPerS}: x, y, z,
     * then the next cell; 0 through walls. What flows into a cell balances what flows out. Not to be written.
     */
    public short[] velocity(int frame) {
        return velocity[frame];
    }

    /** Metres per second of one unit of a frame's velocities. */
    public float unitMPerS(int frame) {
        return unitMPerS[frame];
    }

    /** Shear stress on the floor of a cell of water that has one, pascals; 0 for other cells. */
    public float floorShearPa(int frame, int cell) {
        int floor = floorIndex[cell];
        return floor < 0 ? 0 : floorShearPa[frame][floor];
    }

    /** Whether a cell is water that lies on sand, rock or the bottom pane. */
    public boolean hasFloor(int cell) {
        return floorIndex[cell] >= 0;
    }

    /** Mean over the frames, one value a cell. Not to be written. */
    public float[] eddyViscosityM2PerS() {
        return eddyViscosityM2PerS;
    }

    /** Share of each cell's water that leaves through the overflow in a second. Not to be written. */
    public float[] outflowPerS() {
        return outflowPerS;
    }
}
