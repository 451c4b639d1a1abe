package slackwater.validation;

import java.util.Arrays;
import java.util.List;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;

/**
 * A uniform stream along x past a body at rest, between walls without friction. Water enters at the low end, at rest
 * and with the momentum it would have brought along as a force; at the far end it leaves. Drag comes from the balance
 * of momentum between two sections, so it knows nothing of how the body's surface is treated.
 *
 * @param size cells along x, y and z
 * @param speed of the stream
 */
record WindTunnel(int[] size, double speed) {
    /** True for places inside the body, in cells. */
    interface Body {
        boolean holds(double x, double y, double z);
    }

    LatticeProblem problem(CollisionOperator operator, Body body) {
        int nx = size[0];
        int area = size[1] * size[2];
        boolean[] solid = new boolean[nx * area];
        for (int cell = 0; cell < solid.length; cell++) {
            solid[cell] = body.holds(cell % nx + 0.5, cell / nx % size[1] + 0.5, cell / nx / size[1] + 0.5);
        }
        FreeSlip slip = new FreeSlip();
        float[] even = new float[area];
        Arrays.fill(even, 1f / area);
        BodyForce push = new BodyForce(plane(0), even, speed * speed * area, 0, 0, 0, 1,
                new Modulation.Steady());
        return new LatticeProblem(nx, size[1], size[2], solid, new Faces(slip, slip, slip, slip, slip, slip), operator,
                List.of(push), List.of(new MassSource(plane(0), even, speed * area),
                        new MassSource(plane(nx - 1), even, -speed * area)), 1);
    }

    private int[] plane(int i) {
        int[] cells = new int[size[1] * size[2]];
        for (int n = 0; n < cells.length; n++) {
            cells[n] = n * size[0] + i;
        }
        return cells;
    }

    /** Potential flow past a sphere: a start that sends no sound through the tunnel. */
    Flow.Start past(double[] centre, double radius) {
        return (x, y, z) -> {
            double[] r = {x - centre[0], y - centre[1], z - centre[2]};
            double square = Math.max(radius * radius, r[0] * r[0] + r[1] * r[1] + r[2] * r[2]);
            double third = Math.pow(radius * radius / square, 1.5);
            double[] moments = new double[4];
            double kinetic = 0;
            for (int axis = 0; axis < 3; axis++) {
                double along = axis == 0 ? 1 + 0.5 * third : 0;
                moments[1 + axis] = speed * (along - 1.5 * third * r[0] * r[axis] / square);
                kinetic += moments[1 + axis] * moments[1 + axis];
            }
            moments[0] = 1.5 * (speed * speed - kinetic);
            return moments;
        };
    }

    /**
     * Mean drag over a time, in lattice units. The mean is weighted by a Hann window: sound that runs to and fro in
     * the tunnel then leaves no trace.
     */
    double drag(Flow flow, int upstream, int downstream, int samples, int stepsPerSample) {
        double sum = 0;
        double weights = 0;
        for (int n = 0; n < samples; n++) {
            flow.advance(stepsPerSample);
            double weight = 1 - Math.cos(2 * Math.PI * (n + 0.5) / samples);
            sum += weight * (momentum(flow, upstream) - momentum(flow, downstream));
            weights += weight;
        }
        return sum / weights;
    }

    /** Pressure and momentum flux through a section; viscous stress across it is left out. */
    private double momentum(Flow flow, int i) {
        double sum = 0;
        for (int cell : plane(i)) {
            double deviation = flow.now.densityDeviation()[cell];
            double u = flow.now.ux()[cell];
            sum += deviation / 3 + (1 + deviation) * u * u;
        }
        return sum;
    }
}
