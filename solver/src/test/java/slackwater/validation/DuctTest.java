package slackwater.validation;

import org.junit.jupiter.api.Test;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.Faces;

/** Laminar flow through a rectangular duct, along z. */
class DuctTest {
    private static final double VISCOSITY = 0.02;
    private static final int[] SIDES = {8, 16, 32};

    @Test
    @Validated(value = "Square duct", group = Group.EXACT,
            source = "exact: the series for the rectangle, summed in the test (0.294685 g h^2/nu at the centre,"
                    + " 0.140577 in the mean, h half the short side)",
            where = "White, Viscous Fluid Flow, 3rd edition, eq. 3-48 and table", known = Known.EXACT,
            tolerance = "half-way bounce-back is second-order accurate; 1 % is what 32 cells leave, edges included")
    void square(Sheet sheet) {
        compare(sheet, 1);
    }

    @Test
    @Validated(value = "Duct twice as wide as high", group = Group.EXACT,
            source = "exact: the series for the rectangle, summed in the test (0.455487 g h^2/nu at the centre,"
                    + " 0.228682 in the mean, h half the short side)",
            where = "White, Viscous Fluid Flow, 3rd edition, eq. 3-48 and table", known = Known.EXACT,
            tolerance = "half-way bounce-back is second-order accurate; 1 % is what 32 cells leave, edges included")
    void twiceAsWide(Sheet sheet) {
        compare(sheet, 2);
    }

    private static void compare(Sheet sheet, int aspect) {
        sheet.grid("short side 8, 16, 32 cells; nu 0.02; top speed 0.4/side");
        Found[] found = new Found[SIDES.length];
        for (int n = 0; n < SIDES.length; n++) {
            found[n] = run(SIDES[n], aspect);
        }
        double centre = exact(0, 0, aspect);
        double mean = exactMean(aspect);
        double diameter = 4.0 * aspect / (1 + aspect);
        sheet.within("u at the centre/mean, side 32", Range.of(centre / mean), Tolerance.share(0.01),
                found[2].centre() / found[2].mean());
        sheet.within("Darcy's f times Re, side 32", Range.of(2 * diameter * diameter / mean), Tolerance.share(0.01),
                2 * diameter * diameter / found[2].mean());
        sheet.within("order, side 8 to 16", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(found[0].error(), found[1].error(), 2));
        sheet.within("order, side 16 to 32", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(found[1].error(), found[2].error(), 2));
    }

    /** Velocities over g h^2/nu at the centre and in the mean, and the worst error over the speed at the centre. */
    private record Found(double centre, double mean, double error) {
    }

    private static Found run(int side, int aspect) {
        double half = side / 2.0;
        double scale = 0.4 / side / exact(0, 0, aspect);
        double g = scale * VISCOSITY / (half * half);
        int[] size = {aspect * side, side, 1};
        Faces faces = new Faces(new NoSlip(), new NoSlip(), new NoSlip(), new NoSlip(), new Periodic(),
                new Periodic());
        try (Flow flow = Flow.of(Flow.box(size, faces, Flow.resolved(VISCOSITY), Flow.everywhere(size, 0, 0, g)))) {
            flow.advance((int) (1.5 * side * side / VISCOSITY));
            double sum = 0;
            double worst = 0;
            for (int j = 0; j < size[1]; j++) {
                for (int i = 0; i < size[0]; i++) {
                    double ours = flow.velocity(2, i, j, 0) / scale;
                    double wanted = exact((i + 0.5 - size[0] / 2.0) / half, (j + 0.5 - half) / half, aspect);
                    sum += ours;
                    worst = Math.max(worst, Math.abs(ours - wanted));
                }
            }
            return new Found(centre(flow, size) / scale, sum / (size[0] * size[1]), worst / exact(0, 0, aspect));
        }
    }

    /** The parabola through the four rows beside the middle, along both axes: the middle lies between cells. */
    private static double centre(Flow flow, int[] size) {
        double[] weights = {-1.0 / 16, 9.0 / 16, 9.0 / 16, -1.0 / 16};
        double sum = 0;
        for (int a = 0; a < 4; a++) {
            for (int b = 0; b < 4; b++) {
                sum += weights[a] * weights[b] * flow.velocity(2, size[0] / 2 - 2 + a, size[1] / 2 - 2 + b, 0);
            }
        }
        return sum;
    }

    /** Velocity over g h^2/nu at a place in half short sides from the centre, [White eq. 3-48]. */
    private static double exact(double x, double y, int aspect) {
        double sum = 0;
        for (int n = 1; n < 400; n += 2) {
            double wave = n * Math.PI / 2;
            double sign = n % 4 == 1 ? 1 : -1;
            // cosh(wave x)/cosh(wave aspect) without overflow
            double ratio = (Math.exp(wave * (Math.abs(x) - aspect)) + Math.exp(-wave * (Math.abs(x) + aspect)))
                    / (1 + Math.exp(-2 * wave * aspect));
            sum += sign * (1 - ratio) * Math.cos(wave * y) / (n * n * n);
        }
        return 16 / Math.pow(Math.PI, 3) * sum;
    }

    private static double exactMean(int aspect) {
        double sum = 0;
        for (int n = 1; n < 400; n += 2) {
            sum += Math.tanh(n * Math.PI / 2 * aspect) / Math.pow(n, 5);
        }
        return (1 - 192 / Math.pow(Math.PI, 5) / aspect * sum) / 3;
    }
}
