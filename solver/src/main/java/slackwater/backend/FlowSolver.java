package slackwater.backend;

/** A flow under way. Not for use by more than one thread at a time. */
public interface FlowSolver extends AutoCloseable {
    /** Starts anew at step 0 from the equilibrium of the given moments. */
    void initialise(Moments moments);

    /** Takes some steps. {@code advance(3)} then {@code advance(4)} equals {@code advance(7)} bit for bit. */
    void advance(int steps);

    /** Steps taken since the start. */
    long step();

    /** Writes the present density and velocity of every cell. */
    void read(Moments moments);

    /**
     * Writes the present shear stress of the walls on the water beside them, for each cell that touches a wall of the
     * law of the wall: rho u_tau^2, lattice units, never below 0. 0 everywhere else, and at step 0.
     *
     * @param stress one value a cell, x fastest
     */
    void readWallStress(float[] stress);

    /** The threads that it steps with, for others to use between its steps. */
    default Spread threads() {
        return Spread.ALONE;
    }

    /** The flow as it stands, for this or another solver to go on from. */
    FlowState state();

    /**
     * Goes on from the state of a solver on as many cells. What lies in cells that are solid here is dropped; cells
     * that were solid there hold water at rest. With the same problem and no random part in its jets, the flow is that
     * which the other solver would have had: to single precision, and bit for bit where both keep no more than that.
     *
     * @throws IllegalArgumentException if it has another number of cells
     */
    void resume(FlowState state);

    @Override
    void close();
}
