package slackwater.lattice;

import slackwater.lattice.BoundaryCondition.LogLaw;

/**
 * Friction of a wall on the water half a cell above it: u_tau^2 as a function of the speed there. Smooth walls follow
 * Spalding's law of the wall from the viscous sublayer to the logarithmic layer, rough ones the logarithmic law with a
 * roughness length; a wall takes the larger. Lattice units. Source: [Spalding1961], [Nikuradse1933]; constants of
 * [Pope2000].
 *
 * @param viscosity kinematic viscosity nu, above 0
 */
public record WallFriction(double viscosity) {
    /** Height of the cell's centre above the wall. */
    public static final double DISTANCE = 0.5;
    /** The constant kappa of the law of the wall. */
    public static final double KARMAN = 0.41;
    private static final double INTERCEPT = 5.2;
    private static final int BISECTIONS = 60;

    /** Of a problem's own viscosity, nu = (tau - 1/2)/3. */
    public static WallFriction of(CollisionOperator operator) {
        return new WallFriction((operator.relaxationTime() - 0.5) / 3);
    }

    /**
     * u_tau^2/|u|: the wall takes this share of the momentum along it, for each unit of its area, in a step.
     *
     * @param speed |u| half a cell above the wall
     * @param roughDrag what {@link #roughDrag} says of the wall
     */
    public double rate(double speed, double roughDrag) {
        double smooth = viscosity / DISTANCE * amplification(speed * DISTANCE / viscosity);
        return Math.max(smooth, roughDrag * speed);
    }

    /** Drag coefficient (u_tau/|u|)^2 half a cell above a rough wall, (kappa/ln(y/z0))^2; 0 for a smooth one. */
    public static double roughDrag(LogLaw law) {
        if (law.roughnessLength() == 0) {
            return 0;
        }
        double drag = KARMAN / Math.log(DISTANCE / law.roughnessLength());
        return drag * drag;
    }

    /**
     * How much greater the stress of a smooth wall is than in laminar flow, y+/u+ = c_f Re, at least 1.
     *
     * @param reynolds |u| y/nu = u+ y+, 0 or more
     */
    public static double amplification(double reynolds) {
        double low = 0;
        double high = Math.sqrt(reynolds);
        for (int n = 0; n < BISECTIONS; n++) {
            double middle = 0.5 * (low + high);
            if (middle * heightPlus(middle) < reynolds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high == 0 ? 1 : heightPlus(high) / high;
    }

    /** y+ of u+, [Spalding1961]: u+ + exp(-kappa B) (exp(k) - 1 - k - k^2/2 - k^3/6) with k = kappa u+. */
    static double heightPlus(double speedPlus) {
        double k = KARMAN * speedPlus;
        return speedPlus + Math.exp(-KARMAN * INTERCEPT) * (Math.expm1(k) - k - k * k / 2 - k * k * k / 6);
    }
}
