package slackwater.validation;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.Modulation;

/**
 * Turbulent flow between two plane walls, along x, y across. At Re_tau 180 the walls are resolved; a case at a high
 * Reynolds number, for walls that are modelled, has its place here.
 */
@Tag("full")
class ChannelTest {
    private static final int HALF = 32;
    private static final int LENGTH = 4 * HALF;
    private static final int SPAN = 2 * HALF;
    private static final double FRICTION_SPEED = 0.006;
    private static final double RE_TAU = 178.12;
    private static final double VISCOSITY = FRICTION_SPEED * HALF / RE_TAU;
    private static final int TURNOVER = (int) (HALF / FRICTION_SPEED);

    @Test
    @Validated(value = "Turbulent channel, Re_tau 180", group = Group.TURBULENCE,
            source = "Moser, Kim and Mansour 1999, Phys. Fluids 11, 943-945, direct numerical simulation",
            where = "mean profile of chan180; centre-line 18.30 and bulk 15.68 friction speeds computed from it",
            known = Known.SECOND_HAND,
            tolerance = "5 % on the bulk and centre-line speeds, which is 10 % on friction: first cell at 2.8 wall"
                    + " units, a box a sixth as large as the published one and 6 turnovers h/u_tau of averaging;"
                    + " profile the same 5 % of the centre line, r.m.s.", chaotic = true)
    void resolved(Sheet sheet) {
        sheet.grid("128 x 64 x 64 cells, half height 32; friction speed 0.006");
        double[] mean = new double[HALF];
        try (Flow flow = Flow.of(problem())) {
            flow.start(start());
            flow.advance(6 * TURNOVER);
            int samples = 120;
            for (int n = 0; n < samples; n++) {
                flow.advance(6 * TURNOVER / samples);
                add(flow, mean, 1.0 / samples);
            }
        }
        double[] wallUnits = new double[HALF];
        double[] plus = new double[HALF];
        for (int j = 0; j < HALF; j++) {
            wallUnits[j] = (j + 0.5) / HALF * RE_TAU;
            plus[j] = mean[j] / FRICTION_SPEED;
        }
        Published table = Published.read("mkm_chan180_U.csv").where(row -> Double.parseDouble(row.get("y_plus")) > 0.3);
        double[] theirY = table.column("y_plus");
        double[] theirU = table.column("U_plus_with_Uc18.30");
        double bulk = Arrays.stream(plus).average().orElseThrow();
        sheet.within("bulk speed/friction speed", Range.of(15.68), Tolerance.share(0.05), bulk);
        sheet.within("centre-line speed/friction speed", Range.of(18.30), Tolerance.share(0.05), plus[HALF - 1]);
        sheet.within("r.m.s. difference of the mean profile, friction speeds", Range.of(0), Tolerance.plain(0.9),
                difference(wallUnits, plus, theirY, theirU));
        sheet.plot(Plot.Axis.decades("distance from the wall, wall units"), Plot.Axis.even("mean speed/friction speed"))
                .line("ours", wallUnits, plus).points("Moser, Kim and Mansour", theirY, theirU);
    }

    /** The force that drives the flow acts on one sheet across the channel: a pump, and pressure does the rest. */
    private static LatticeProblem problem() {
        int[] sheet = new int[2 * HALF * SPAN];
        for (int n = 0; n < sheet.length; n++) {
            sheet[n] = n * LENGTH;
        }
        float[] even = new float[sheet.length];
        Arrays.fill(even, 1f / sheet.length);
        double force = FRICTION_SPEED * FRICTION_SPEED * 2 * LENGTH * SPAN; // what both walls take
        Periodic open = new Periodic();
        BoundaryCondition wall = new NoSlip();
        return new LatticeProblem(LENGTH, 2 * HALF, SPAN, new boolean[LENGTH * 2 * HALF * SPAN],
                new Faces(open, open, wall, wall, open, open), Flow.resolved(VISCOSITY),
                List.of(new BodyForce(sheet, even, force, 0, 0, 0, 1, new Modulation.Steady())), List.of(), 1);
    }

    /** The mean to be expected (Reichardt's formula), with strong eddies along and across it. */
    private static Flow.Start start() {
        Random random = new Random(1);
        double[] phases = random.doubles(12, 0, 2 * Math.PI).toArray();
        return (x, y, z) -> {
            double fromWall = Math.min(y, 2 * HALF - y) / HALF * RE_TAU;
            double mean = Math.log(1 + 0.4 * fromWall) / 0.4 + 7.8 * (1 - Math.exp(-fromWall / 11)
                    - fromWall / 11 * Math.exp(-fromWall / 3));
            double envelope = Math.sin(Math.PI * y / (2 * HALF));
            double slope = Math.cos(Math.PI * y / (2 * HALF)) * Math.PI / (2 * HALF);
            double[] moments = {0, mean * FRICTION_SPEED, 0, 0};
            for (int m = 1; m <= 4; m++) {
                double b = 2 * Math.PI * m / SPAN;
                double a = 2 * Math.PI * (m % 3 + 1) / LENGTH;
                double strength = 1.5 * FRICTION_SPEED;
                double along = strength / b;
                moments[2] += strength * envelope * envelope * Math.cos(b * z + phases[m]);
                moments[3] -= along * 2 * envelope * slope * Math.sin(b * z + phases[m]);
                double wave = strength * envelope;
                moments[1] += wave * Math.sin(a * x + phases[4 + m]) * Math.cos(b * z + phases[m + 7]);
                moments[3] -= wave * a / b * Math.cos(a * x + phases[4 + m]) * Math.sin(b * z + phases[m + 7]);
            }
            return moments;
        };
    }

    /** Adds the mean over planes parallel to the walls, both halves folded into one. */
    private static void add(Flow flow, double[] mean, double weight) {
        for (int k = 0; k < SPAN; k++) {
            for (int j = 0; j < 2 * HALF; j++) {
                double sum = 0;
                for (int i = 0; i < LENGTH; i++) {
                    sum += flow.velocity(0, i, j, k);
                }
                mean[Math.min(j, 2 * HALF - 1 - j)] += weight * sum / (2.0 * LENGTH * SPAN);
            }
        }
    }

    /** r.m.s. difference at our places, theirs in between straight. */
    private static double difference(double[] y, double[] u, double[] theirY, double[] theirU) {
        double sum = 0;
        for (int j = 0; j < y.length; j++) {
            int n = 1;
            while (n < theirY.length - 1 && theirY[n] < y[j]) {
                n++;
            }
            double share = (y[j] - theirY[n - 1]) / (theirY[n] - theirY[n - 1]);
            double theirs = theirU[n - 1] + share * (theirU[n] - theirU[n - 1]);
            sum += (u[j] - theirs) * (u[j] - theirs);
        }
        return Math.sqrt(sum / y.length);
    }
}
