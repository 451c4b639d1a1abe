package slackwater.discretisation;

import java.util.List;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.Surfaces;
import slackwater.scenario.Tank;

/**
 * How rough things in a tank are, as equivalent sand grain roughness k_s; the roughness length is k_s/30
 * ([Nikuradse1933]). Glass is smooth. Knobs larger than a cell are geometry, so k_s is at most one cell.
 */
final class Roughness {
    /** k_s of a sand bed over its median grain. Source: [Soulsby1997]. */
    private static final double SAND_PER_GRAIN = 2.5;
    /** k_s of live rock, metres: assumed, common practice, no source. */
    private static final double ROCK_M = 0.005;
    private static final double PER_KNOB = LogLaw.MOST_ROUGHNESS;
    private static final byte ROCK = 0;
    private static final byte SAND = 1;

    private Roughness() {
    }

    /** What water meets at each solid cell of a tank. */
    static Surfaces of(Tank tank, Voxels voxels) {
        double h = voxels.grid().cellSizeM();
        byte[] kinds = new byte[voxels.solid().length];
        for (int cell = 0; cell < kinds.length; cell++) {
            kinds[cell] = voxels.sand(cell) ? SAND : ROCK;
        }
        return new Surfaces(List.of(wall(ROCK_M, h), wall(SAND_PER_GRAIN * tank.sandGrainM(), h)), kinds);
    }

    private static LogLaw wall(double knobM, double cellSizeM) {
        return new LogLaw(PER_KNOB * Math.min(1, knobM / cellSizeM));
    }
}
