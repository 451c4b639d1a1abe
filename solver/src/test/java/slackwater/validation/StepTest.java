package slackwater.validation;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;

/** A plane channel that doubles its height at a step down: how long is the eddy behind the step? */
@Tag("full")
class StepTest {
    private static final int STEP = 16;
    private static final int FEED = 5 * STEP;
    private static final int LENGTH = 35 * STEP;
    private static final double SPEED = 0.05;

    @Test
    @Validated(value = "Laminar backward-facing step", group = Group.STEP,
            source = "Erturk 2008, Computers and Fluids 37, 633-655", where = "reattachment over the step's height,"
                    + " expansion 2, Re from mean speed and twice the inlet's height", known = Known.FROM_MEMORY,
            tolerance = "5 %: second-order walls at 16 cells to the step, the place interpolated")
    void reattaches(Sheet sheet) {
        sheet.grid("step 16 cells, 560 x 32 cells; mean inflow 0.05");
        double[] reynolds = {100, 200, 300, 400};
        double[] theirs = {2.92, 4.98, 6.75, 8.24};
        double[] ours = new double[4];
        for (int n = 0; n < 4; n++) {
            ours[n] = reattachment(reynolds[n]);
            sheet.within("length of the eddy/step, Re " + Digits.of(reynolds[n]), Range.of(theirs[n]),
                    Tolerance.share(0.05), ours[n]);
        }
        sheet.plot(Plot.Axis.even("Reynolds number"), Plot.Axis.even("length of the eddy/step"))
                .line("ours", reynolds, ours).points("Erturk", reynolds, theirs);
    }

    private static double reattachment(double reynolds) {
        try (Flow flow = Flow.of(problem(SPEED * 2 * STEP / reynolds))) {
            flow.start((x, y, z) -> new double[] {0, x < FEED ? inflow(y - STEP) : 0.5 * inflow(y / 2), 0, 0});
            flow.settle(5000, 2e-5 * SPEED, 40);
            double before = -1;
            for (int i = FEED + 2; i < LENGTH; i++) {
                // slope at the wall, by the parabola through the wall and two cells
                double slope = 9 * flow.velocity(0, i, 0, 0) - flow.velocity(0, i, 1, 0);
                if (before < 0 && slope >= 0 && i > FEED + STEP) {
                    return (i + 0.5 - slope / (slope - before) - FEED) / STEP;
                }
                before = slope;
            }
            return Double.NaN;
        }
    }

    private static double inflow(double y) {
        double share = y / STEP;
        return share < 0 || share > 1 ? 0 : 6 * SPEED * share * (1 - share);
    }

    /** Water enters above the step with a parabolic profile and its momentum, and leaves evenly at the far end. */
    private static LatticeProblem problem(double viscosity) {
        int height = 2 * STEP;
        boolean[] solid = new boolean[LENGTH * height];
        for (int cell = 0; cell < solid.length; cell++) {
            solid[cell] = cell % LENGTH < FEED && cell / LENGTH < STEP;
        }
        int[] in = IntStream.range(STEP, height).map(j -> j * LENGTH).toArray();
        int[] out = IntStream.range(0, height).map(j -> j * LENGTH + LENGTH - 1).toArray();
        double[] u = IntStream.range(0, STEP).mapToDouble(j -> inflow(j + 0.5)).toArray();
        double rate = IntStream.range(0, STEP).mapToDouble(j -> u[j]).sum();
        double force = IntStream.range(0, STEP).mapToDouble(j -> u[j] * u[j]).sum();
        float[] shares = new float[STEP];
        float[] pushes = new float[STEP];
        float[] even = new float[height];
        for (int j = 0; j < height; j++) {
            even[j] = 1f / height;
            if (j < STEP) {
                shares[j] = (float) (u[j] / rate);
                pushes[j] = (float) (u[j] * u[j] / force);
            }
        }
        BoundaryCondition wall = new NoSlip();
        return new LatticeProblem(LENGTH, height, 1, solid,
                new Faces(wall, wall, wall, wall, new Periodic(), new Periodic()), Flow.resolved(viscosity),
                List.of(new BodyForce(in, pushes, force, 0, 0, 0, 1, new Modulation.Steady())),
                List.of(new MassSource(in, shares, rate), new MassSource(out, even, -rate)), 1);
    }
}
