package slackwater.simulation;

import java.util.Optional;
import slackwater.backend.Moments;
import slackwater.discretisation.Discretisation;
import slackwater.field.Grid;
import slackwater.field.Interpolation;
import slackwater.field.Velocity;
import slackwater.geometry.Vec3;

/** The water's velocity on both sides: metres per second, and cells a step. */
final class Bridge {
    private Bridge() {
    }

    /** Velocity at the moment that was read. */
    static Velocity velocity(Moments moments, Discretisation discretisation) {
        float scale = (float) discretisation.units().speedMPerS();
        return new Velocity(discretisation.voxels().grid(), discretisation.voxels().fluid(),
                scaled(moments.ux(), scale), scaled(moments.uy(), scale), scaled(moments.uz(), scale));
    }

    /** What a run begins with: the water it is given, read between cell centres; still where there is none. */
    static Optional<Moments> start(Discretisation discretisation) {
        return discretisation.start().map(water -> moments(water, discretisation));
    }

    private static Moments moments(Velocity water, Discretisation discretisation) {
        Moments moments = new Moments(discretisation.problem().cells());
        float scale = (float) (1 / discretisation.units().speedMPerS());
        read(water, water.u(), scale, discretisation, moments.ux());
        read(water, water.v(), scale, discretisation, moments.uy());
        read(water, water.w(), scale, discretisation, moments.uz());
        return moments;
    }

    private static void read(Velocity water, float[] values, float scale, Discretisation discretisation,
                             float[] target) {
        Interpolation field = new Interpolation(water.grid(), water.fluid(), values);
        Grid grid = discretisation.voxels().grid();
        for (int cell = 0; cell < target.length; cell++) {
            Vec3 centre = grid.centreM(cell);
            target[cell] = discretisation.voxels().solid()[cell] ? 0 : scale * (float) field.at(centre).orElse(0);
        }
    }

    private static float[] scaled(float[] values, float factor) {
        float[] scaled = new float[values.length];
        for (int n = 0; n < values.length; n++) {
            scaled[n] = values[n] * factor;
        }
        return scaled;
    }
}
