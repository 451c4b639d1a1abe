package slackwater.validation;

import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition;
import slackwater.lattice.BoundaryCondition.MovingWall;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.Faces;

/** Flow between two plane walls, each half a cell outside the last cell. */
class PlaneFlowTest {
    private static final double VISCOSITY = 0.02;
    private static final int[] HEIGHTS = {8, 16, 32};
    private static final int WIDTH = 4;

    @Test
    @Validated(value = "Plane Poiseuille flow", group = Group.EXACT, source = "exact: u = g y (h - y)/(2 nu)",
            where = "White, Viscous Fluid Flow, plane Poiseuille flow", known = Known.EXACT,
            tolerance = "half-way bounce-back places the wall to second order, with a constant that depends on the"
                    + " relaxation time: a few per cent at 8 cells, a quarter of that at every doubling. The viscosity"
                    + " and the Reynolds number are kept, so the speed falls as 1/h (diffusive scaling)")
    void poiseuille(Sheet sheet) {
        sheet.grid("h 8, 16, 32 cells; nu 0.02; top speed 0.4/h");
        double[] ours = errors(Flow::resolved, 0, 1);
        double[] shipped = errors(Flow::shipped, 0, 1);
        double turned = Math.max(poiseuilleError(Flow.resolved(VISCOSITY), HEIGHTS[1], 1, 2),
                poiseuilleError(Flow.resolved(VISCOSITY), HEIGHTS[1], 2, 0));
        sheet.within("worst error/top speed, h 16", Range.of(0), Tolerance.plain(0.01), ours[1]);
        sheet.within("the same, other two pairs of axes", Range.of(0), Tolerance.plain(0.01), turned);
        sheet.within("order, h 8 to 16", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(ours[0], ours[1], 2));
        sheet.within("order, h 16 to 32", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(ours[1], ours[2], 2));
        sheet.within("order, h 16 to 32, with the eddy viscosity of runs", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(shipped[1], shipped[2], 2));
        double[] heights = {8, 16, 32};
        sheet.plot(Plot.Axis.decades("height, cells"), Plot.Axis.decades("worst error/top speed"))
                .line("ours", heights, ours).line("ours with the eddy viscosity of runs", heights, shipped)
                .points("second order", heights, new double[] {0.02, 0.005, 0.00125});
    }

    private static double[] errors(DoubleFunction<CollisionOperator> operator, int along, int across) {
        double[] errors = new double[HEIGHTS.length];
        for (int n = 0; n < HEIGHTS.length; n++) {
            errors[n] = poiseuilleError(operator.apply(VISCOSITY), HEIGHTS[n], along, across);
        }
        return errors;
    }

    private static double poiseuilleError(CollisionOperator operator, int height, int along, int across) {
        double top = 0.4 / height;
        double[] g = new double[3];
        g[along] = 8 * VISCOSITY * top / (height * height);
        int[] size = size(height, across);
        BodyForce push = Flow.everywhere(size, g[0], g[1], g[2]);
        Faces faces = faces(across, new NoSlip(), new NoSlip());
        try (Flow flow = Flow.of(Flow.box(size, faces, operator, push))) {
            flow.advance((int) (2 * height * height / VISCOSITY));
            return worst(flow, along, across, height, y -> 4 * top * y * (1 - y)) / top;
        }
    }

    @Test
    @Validated(value = "Plane Couette flow", group = Group.EXACT,
            source = "exact: the steady profile is a straight line; after the start of the wall it is that less"
                    + " sum 2/(n pi) (-1)^(n+1) sin(n pi y/h) exp(-n^2 pi^2 nu t/h^2)",
            where = "White, Viscous Fluid Flow, plane Couette flow and its start", known = Known.EXACT,
            tolerance = "bounce-back carries a straight line exactly, so only single precision is left in the steady"
                    + " flow; the start is second-order accurate in diffusive scaling, at nu t/h^2 = 0.1")
    void couette(Sheet sheet) {
        sheet.grid("h 8, 16, 32 cells; nu 0.02; wall's speed 0.4/h");
        double[] errors = new double[HEIGHTS.length];
        for (int n = 0; n < HEIGHTS.length; n++) {
            errors[n] = couetteError(HEIGHTS[n], 0.1, 0, 1);
        }
        double steady = Math.max(couetteError(HEIGHTS[1], 2, 0, 1), Math.max(couetteError(HEIGHTS[1], 2, 1, 2),
                couetteError(HEIGHTS[1], 2, 2, 0)));
        sheet.within("steady, worst error/wall's speed, h 16, three pairs of axes", Range.of(0),
                Tolerance.plain(0.001), steady);
        sheet.within("start, worst error/wall's speed, h 16", Range.of(0), Tolerance.plain(0.01), errors[1]);
        sheet.within("start, order, h 8 to 16", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(errors[0], errors[1], 2));
        sheet.within("start, order, h 16 to 32", Range.atLeast(2), Tolerance.plain(0.2),
                Flow.order(errors[1], errors[2], 2));
    }

    private static double couetteError(int height, double diffusiveTimes, int along, int across) {
        double speed = 0.4 / height;
        double[] wall = new double[3];
        wall[along] = speed;
        Faces faces = faces(across, new NoSlip(), new MovingWall(wall[0], wall[1], wall[2]));
        int steps = (int) Math.round(diffusiveTimes * height * height / VISCOSITY);
        double time = VISCOSITY * steps / (height * height);
        try (Flow flow = Flow.of(Flow.box(size(height, across), faces, Flow.resolved(VISCOSITY)))) {
            flow.advance(steps);
            return worst(flow, along, across, height, y -> speed * started(y, time)) / speed;
        }
    }

    /** Velocity over the wall's, a while after it began to move, at a share of the height. */
    private static double started(double y, double time) {
        double sum = y;
        for (int n = 1; n < 200; n++) {
            sum += (n % 2 == 0 ? 2 : -2) / (n * Math.PI) * Math.sin(n * Math.PI * y)
                    * Math.exp(-n * n * Math.PI * Math.PI * time);
        }
        return sum;
    }

    private static int[] size(int height, int across) {
        int[] size = {WIDTH, WIDTH, WIDTH};
        size[across] = height;
        return size;
    }

    /** Two walls across an axis, periodic along the others. */
    private static Faces faces(int across, BoundaryCondition low, BoundaryCondition high) {
        BoundaryCondition[] all = new BoundaryCondition[6];
        for (int n = 0; n < all.length; n++) {
            all[n] = n / 2 != across ? new Periodic() : n % 2 == 0 ? low : high;
        }
        return new Faces(all[0], all[1], all[2], all[3], all[4], all[5]);
    }

    private static double worst(Flow flow, int along, int across, int height, DoubleFunction<Double> exact) {
        double worst = 0;
        for (int j = 0; j < height; j++) {
            int[] at = {1, 1, 1};
            at[across] = j;
            double ours = flow.velocity(along, at[0], at[1], at[2]);
            worst = Math.max(worst, Math.abs(ours - exact.apply((j + 0.5) / height)));
        }
        return worst;
    }
}
