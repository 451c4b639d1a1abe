package slackwater.validation;

import org.junit.jupiter.api.Test;
import slackwater.lattice.Faces;

/** Vortices in a periodic box that keep their shape and decay. */
class DecayTest {
    private static final double VISCOSITY = 0.02;
    private static final int[] EDGES = {16, 32, 64};
    private static final String GRID = "16, 32, 64 cells to the edge; nu 0.02; speed 0.64/edge";
    private static final String WHY = "the rate: 1 %, above the (k^2)/6 of a second-order scheme with 45 cells to a"
            + " wave and more, eddy viscosity on top; permuted axes: single precision; the order: diffusive"
            + " scaling (viscosity and Reynolds number kept, speed as 1/edge), second order less 0.2 for the"
            + " layer in time that a start from equilibrium populations leaves";

    @Test
    @Validated(value = "Plane Taylor-Green vortices", group = Group.EXACT,
            source = "exact: u decays as exp(-nu k^2 t), k^2 the sum over both directions",
            where = "G. I. Taylor, A. E. Green 1937", known = Known.EXACT, tolerance = WHY)
    void taylorGreen(Sheet sheet) {
        sheet.grid(GRID);
        Decay[] straight = grids(new Vortices(0, 1, false));
        Decay[] turned = grids(new Vortices(0, 1, true));
        rates(sheet, straight, turned);
        sheet.within("rates in the planes yz and zx less that in xy, edge 32", Range.of(0), Tolerance.plain(0.0001),
                Math.max(Math.abs(decay(new Vortices(1, 2, false), 32).rate() - straight[1].rate()),
                        Math.abs(decay(new Vortices(2, 0, false), 32).rate() - straight[1].rate())));
        orders(sheet, "", straight);
        orders(sheet, ", turned by 45 degrees", turned);
    }

    @Test
    @Validated(value = "Beltrami flow", group = Group.EXACT,
            source = "exact: helical waves of one wave length (curl u = k u) decay as exp(-nu k^2 t) whatever their"
                    + " directions; along the axes they are the flow of Arnold, Beltrami and Childress",
            where = "derived: the vorticity is parallel to the velocity, so convection only makes pressure",
            known = Known.EXACT, tolerance = WHY)
    void beltrami(Sheet sheet) {
        sheet.grid(GRID);
        Waves axes = new Waves(new int[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}});
        Waves permuted = new Waves(new int[][] {{0, 0, 1}, {1, 0, 0}, {0, 1, 0}});
        Decay[] straight = grids(axes);
        Decay[] turned = grids(new Waves(new int[][] {{1, 1, 0}, {0, 1, -1}, {1, 0, 1}}));
        rates(sheet, straight, turned);
        sheet.within("rate with the axes permuted less that without, edge 32", Range.of(0), Tolerance.plain(0.0001),
                Math.abs(decay(permuted, 32).rate() - straight[1].rate()));
        orders(sheet, "", straight);
        orders(sheet, ", turned by 45 degrees", turned);
        double[] edges = {16, 32, 64};
        sheet.plot(Plot.Axis.decades("edge, cells"), Plot.Axis.decades("r.m.s. error after decay to 1/e"))
                .line("waves along the axes", edges, errors(straight))
                .line("along face diagonals", edges, errors(turned))
                .points("second order", edges, new double[] {0.016, 0.004, 0.001});
    }

    private static void rates(Sheet sheet, Decay[] straight, Decay[] turned) {
        sheet.within("decay rate/exact, edge 64, along the axes", Range.of(1), Tolerance.share(0.01),
                straight[2].rate());
        sheet.within("decay rate/exact, edge 64, turned by 45 degrees", Range.of(1), Tolerance.share(0.01),
                turned[2].rate());
    }

    private static void orders(Sheet sheet, String what, Decay[] grids) {
        sheet.within("order of the error, edge 16 to 32" + what, Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(grids[0].error(), grids[1].error(), 2));
        sheet.within("order of the error, edge 32 to 64" + what, Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(grids[1].error(), grids[2].error(), 2));
    }

    /** A flow that keeps its shape: density less 1 and velocity for a speed and an edge. */
    private interface Shape {
        double waveNumberSquared(int edge);

        double[] at(double speed, int edge, double[] place);
    }

    /** Vortices with their axes along the third axis; turned ones stand on their corners. */
    private record Vortices(int first, int second, boolean turned) implements Shape {
        @Override
        public double waveNumberSquared(int edge) {
            double k = 2 * Math.PI / edge;
            return turned ? 4 * k * k : 2 * k * k;
        }

        @Override
        public double[] at(double speed, int edge, double[] place) {
            double k = 2 * Math.PI / edge;
            double a = k * (turned ? place[first] + place[second] : place[first]);
            double b = k * (turned ? place[first] - place[second] : place[second]);
            double alongA = speed * Math.sin(a) * Math.cos(b);
            double alongB = -speed * Math.cos(a) * Math.sin(b);
            double[] moments = new double[4];
            moments[0] = 0.75 * speed * speed * (Math.cos(2 * a) + Math.cos(2 * b));
            moments[1 + first] = turned ? (alongA + alongB) / Math.sqrt(2) : alongA;
            moments[1 + second] = turned ? (alongA - alongB) / Math.sqrt(2) : alongB;
            return moments;
        }
    }

    /** Helical waves of different strength along directions of one length. */
    private record Waves(int[][] directions) implements Shape {
        private static final double[] STRENGTHS = {0.8, 0.5, 0.35};

        @Override
        public double waveNumberSquared(int edge) {
            double k = 2 * Math.PI / edge;
            int[] d = directions[0];
            return k * k * (d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
        }

        @Override
        public double[] at(double speed, int edge, double[] place) {
            double[] moments = new double[4];
            double k = 2 * Math.PI / edge;
            for (int n = 0; n < directions.length; n++) {
                int[] d = directions[n];
                double phase = k * (d[0] * place[0] + d[1] * place[1] + d[2] * place[2]);
                double[] along = unit(new double[] {d[0], d[1], d[2]});
                double[] e = unit(d[2] == 0 ? new double[] {-d[1], d[0], 0} : d[1] == 0
                        ? new double[] {d[2], 0, -d[0]} : new double[] {0, d[2], -d[1]});
                double[] g = cross(along, e);
                for (int axis = 0; axis < 3; axis++) {
                    moments[1 + axis] += STRENGTHS[n] * speed * (e[axis] * Math.cos(phase) - g[axis] * Math.sin(phase));
                }
            }
            double kinetic = 0;
            double mean = 0;
            for (int axis = 0; axis < 3; axis++) {
                kinetic += moments[1 + axis] * moments[1 + axis];
                mean += STRENGTHS[axis] * STRENGTHS[axis] * speed * speed;
            }
            moments[0] = -1.5 * (kinetic - mean); // Bernoulli, with p = rho/3
            return moments;
        }

        private static double[] unit(double[] v) {
            double length = Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
            return new double[] {v[0] / length, v[1] / length, v[2] / length};
        }

        private static double[] cross(double[] a, double[] b) {
            return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
        }
    }

    /** Decay rate over the exact one, and the r.m.s. error, when the flow should have decayed to 1/e. */
    private record Decay(double rate, double error) {
    }

    private static Decay[] grids(Shape shape) {
        return new Decay[] {decay(shape, EDGES[0]), decay(shape, EDGES[1]), decay(shape, EDGES[2])};
    }

    private static double[] errors(Decay[] grids) {
        return new double[] {grids[0].error(), grids[1].error(), grids[2].error()};
    }

    private static Decay decay(Shape shape, int edge) {
        double speed = 0.64 / edge;
        double rate = VISCOSITY * shape.waveNumberSquared(edge);
        int steps = (int) Math.round(1 / rate);
        Flow.Start start = (x, y, z) -> shape.at(speed, edge, new double[] {x, y, z});
        Flow.Start end = (x, y, z) -> shape.at(speed * Math.exp(-rate * steps), edge, new double[] {x, y, z});
        try (Flow flow = Flow.of(Flow.box(size(shape, edge), Faces.periodic(), Flow.resolved(VISCOSITY)))) {
            flow.start(start);
            double before = flow.kineticEnergy();
            flow.advance(steps);
            return new Decay(Math.log(before / flow.kineticEnergy()) / (2 * steps) / rate, flow.errorAgainst(end));
        }
    }

    private static int[] size(Shape shape, int edge) {
        int[] size = {edge, edge, edge};
        if (shape instanceof Vortices flat) {
            size[3 - flat.first() - flat.second()] = 1;
        }
        return size;
    }
}
