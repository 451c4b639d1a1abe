package slackwater.validation;

import slackwater.backend.Moments;
import slackwater.discretisation.Voxels;
import slackwater.field.Interpolation;

/** Mean velocity along a jet's aim, and what an experimenter reads in sections across it. */
final class JetSections {
    /** How far off its aim a jet is looked for, over the distance. */
    private static final double REACH = 0.15;
    private static final double LEAST_REACH_M = 0.05;
    private static final double STEP_M = 0.005;
    private static final int RING_POINTS = 24;

    /** Where in a section the jet is fastest, metres to the side (a) and up (b) of the aim, and how fast. */
    record Centre(double a, double b, double speedMPerS) {
    }

    private final RoundJet.JetAxis axis;
    private final float[] along;
    private final Interpolation field;
    private int samples;

    JetSections(Voxels voxels, RoundJet.JetAxis axis) {
        this.axis = axis;
        this.along = new float[voxels.solid().length];
        this.field = new Interpolation(voxels.grid(), voxels.fluid(), along);
    }

    /** One sample more of the mean, from velocities in cells a step. */
    void add(Moments now, double speedMPerS) {
        samples++;
        float ax = (float) (axis.aim().x() * speedMPerS);
        float ay = (float) (axis.aim().y() * speedMPerS);
        float az = (float) (axis.aim().z() * speedMPerS);
        for (int n = 0; n < along.length; n++) {
            along[n] += (ax * now.ux()[n] + ay * now.uy()[n] + az * now.uz()[n] - along[n]) / samples;
        }
    }

    private double speed(double distance, double a, double b) {
        return field.at(axis.at(distance, a, b)).orElseThrow();
    }

    /** The jet's own centre in a section. */
    Centre centre(double distance) {
        Centre best = new Centre(0, 0, speed(distance, 0, 0));
        double reach = Math.max(LEAST_REACH_M, REACH * distance);
        for (double a = -reach; a <= reach; a += STEP_M) {
            for (double b = -reach; b <= reach; b += STEP_M) {
                double speed = speed(distance, a, b);
                best = speed > best.speedMPerS() ? new Centre(a, b, speed) : best;
            }
        }
        return best;
    }

    /** Radius at which the mean over a ring about the centre is half of the speed there, metres. */
    double halfWidth(double distance, Centre centre) {
        double half = centre.speedMPerS() / 2;
        double step = STEP_M / 2;
        double radius = 0;
        while (ring(distance, centre, radius) > half) {
            radius += step;
        }
        double inner = ring(distance, centre, radius - step);
        double outer = ring(distance, centre, radius);
        return radius - step * (half - outer) / (inner - outer);
    }

    private double ring(double distance, Centre centre, double radius) {
        double sum = 0;
        for (int n = 0; n < RING_POINTS; n++) {
            double angle = 2 * Math.PI * n / RING_POINTS;
            sum += speed(distance, centre.a() + radius * Math.cos(angle), centre.b() + radius * Math.sin(angle));
        }
        return sum / RING_POINTS;
    }
}
