package slackwater.lattice;

/**
 * The mixing length of the eddy viscosity l^2 |S|, in cells: the Smagorinsky constant of the operator, and in a cell at
 * a wall of the law of the wall at least what that law has at the cell's upper face, kappa times one cell. The eddies
 * that would carry momentum there are smaller than a cell. Without a Smagorinsky constant there is no eddy viscosity
 * anywhere. Source: [Hou1996], [Pope2000] (mixing length of the logarithmic layer); what a wall model can reach on such
 * cells is in [Malaspinas2014].
 */
public final class MixingLength {
    private MixingLength() {
    }

    /** Mixing length of a cell, at a wall of the law of the wall or away from any. */
    public static double of(CollisionOperator operator, boolean atWall) {
        double inside = operator.smagorinsky();
        return atWall && inside > 0 ? Math.max(inside, WallFriction.KARMAN) : inside;
    }
}
