package slackwater.validation;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.Faces;

/**
 * A turbulent channel between two smooth walls of the law of the wall, ten cells to the half height, far beyond what
 * such cells resolve. Where the pressure drives the water, the walls' stress is known, and the mean speed that comes of
 * it tells the friction.
 */
class WallLawTest {
    private static final int HALF = 10;
    private static final int[] SIZE = {6 * HALF, 2 * HALF, 3 * HALF};
    private static final double BULK = 0.08;
    private static final double KAPPA = 0.41;
    private static final double B = 5.2;
    private static final int EVERY = 50;
    private static final String SOURCE = "log law with kappa 0.41 and B 5.2, Pope 2000, Turbulent Flows, section 7.1";
    private static final String WHERE = "its mean over the half height: U/u_tau = ln(Re_tau)/kappa + B - 1/kappa";
    private static final String WHY = "friction 5 %, which wall models reach on ten cells to the half height"
            + " (Malaspinas and Sagaut 2014, J. Comput. Phys. 275, 25-40: 4 %; read in the abstract)";

    @Test
    @Validated(value = "Channel at Re_tau 5000, law of the wall", group = Group.TURBULENCE, source = SOURCE,
            where = WHERE, known = Known.FROM_MEMORY, tolerance = WHY, chaotic = true)
    void fiveThousand(Sheet sheet) {
        double[] profile = profile(5000, 60);
        sheet.grid("60 x 20 x 30 cells, half height 10");
        sheet.miss("friction/law", Range.of(1), Tolerance.share(0.05), friction(profile, 5000));
        sheet.plot(Plot.Axis.decades("distance from the wall, y+"), Plot.Axis.even("mean speed, U+"))
                .line("ours", heights(5000), profile).points("log law", heights(5000), law(5000));
    }

    @Test
    @Tag("full")
    @Validated(value = "Channel at Re_tau 1000 and 20 000, law of the wall", group = Group.TURBULENCE, source = SOURCE,
            where = WHERE, known = Known.FROM_MEMORY, tolerance = WHY, chaotic = true)
    void lowerAndHigher(Sheet sheet) {
        sheet.grid("60 x 20 x 30 cells, half height 10");
        sheet.miss("friction/law, Re_tau 1000", Range.of(1), Tolerance.share(0.05), friction(profile(1000, 60), 1000));
        sheet.miss("friction/law, Re_tau 20 000", Range.of(1), Tolerance.share(0.05),
                friction(profile(20_000, 60), 20_000));
    }

    /** Friction coefficient over that of the log law at the same stress: the squared ratio of the mean speeds. */
    private static double friction(double[] profile, double reynolds) {
        double mean = IntStream.range(0, HALF).mapToDouble(j -> profile[j]).average().orElseThrow();
        return Math.pow(bulk(reynolds) / mean, 2);
    }

    private static double bulk(double reynolds) {
        return Math.log(reynolds) / KAPPA + B - 1 / KAPPA;
    }

    private static double[] heights(double reynolds) {
        return IntStream.range(0, HALF).mapToDouble(j -> (j + 0.5) / HALF * reynolds).toArray();
    }

    private static double[] law(double reynolds) {
        return IntStream.range(0, HALF).mapToDouble(j -> Math.log(heights(reynolds)[j]) / KAPPA + B).toArray();
    }

    /** Mean U+ of the cells from a wall to the middle, over the second half of so many h/u_tau. */
    private static double[] profile(double reynolds, double turnovers) {
        double friction = BULK / bulk(reynolds);
        double viscosity = friction * HALF / reynolds;
        Periodic open = new Periodic();
        LogLaw wall = new LogLaw(0);
        int steps = (int) (turnovers * HALF / friction) / EVERY * EVERY;
        double[] sum = new double[HALF];
        try (Flow flow = Flow.of(Flow.box(SIZE, new Faces(open, open, wall, wall, open, open),
                Flow.shipped(viscosity), push(friction * friction / HALF)))) {
            Random random = new Random(1);
            flow.start((x, y, z) -> start(x, y, z, friction, viscosity, random)).advance(steps / 2);
            for (int step = steps / 2; step < steps; step += EVERY) {
                flow.advance(EVERY);
                for (int cell = 0; cell < flow.now.cells(); cell++) {
                    int j = cell / SIZE[0] % SIZE[1];
                    sum[Math.min(j, SIZE[1] - 1 - j)] += flow.now.ux()[cell];
                }
            }
            double samples = (double) (steps - steps / 2) / EVERY * 2 * SIZE[0] * SIZE[2] * friction;
            return IntStream.range(0, HALF).mapToDouble(j -> sum[j] / samples).toArray();
        }
    }

    /** A pressure gradient, put on in one section for the whole length: the pressure spreads it. */
    private static BodyForce push(double perCell) {
        int[] section = IntStream.range(0, SIZE[1] * SIZE[2]).map(n -> n * SIZE[0]).toArray();
        return BodyForce.uniform(section, perCell * SIZE[0], 0, 0);
    }

    /** The log law with large eddies and noise on top, to become turbulent soon. */
    private static double[] start(double x, double y, double z, double friction, double viscosity, Random random) {
        double height = Math.min(y, SIZE[1] - y);
        double a = 2 * Math.PI * x / SIZE[0];
        double b = 2 * Math.PI * z / SIZE[2];
        double c = Math.PI * y / SIZE[1];
        double eddy = 0.15 * BULK;
        double law = friction * (Math.log(Math.max(2, height * friction / viscosity)) / KAPPA + B);
        return new double[] {0, law + eddy * (Math.sin(2 * b) * Math.cos(c) + 0.5 * (random.nextDouble() - 0.5)),
            eddy * (Math.sin(2 * a) * Math.sin(2 * b) * Math.sin(c) + 0.5 * (random.nextDouble() - 0.5)),
            eddy * (Math.sin(3 * a) * Math.sin(c) + Math.cos(2 * a) * Math.sin(2 * c)
                    + 0.5 * (random.nextDouble() - 0.5))};
    }
}
