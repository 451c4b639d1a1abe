package slackwater.backend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slackwater.backend.cpu.CpuBackend;
import slackwater.lattice.BodyForce;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.BoundaryCondition.Periodic;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;

/** Exact solutions of the Navier-Stokes equations. */
class ExactFlowTest {
    private static final double VISCOSITY = 0.02;
    private static final double TAU = 0.5 + 3 * VISCOSITY;

    /**
     * Plane Poiseuille flow: u = g/(2 nu) y (h - y), walls half a cell outside. Source: exact (White, Viscous Fluid
     * Flow).
     */
    private static double poiseuilleError(CollisionOperator operator, int height) {
        Periodic open = new Periodic();
        Faces faces = new Faces(open, open, new NoSlip(), new NoSlip(), open, open);
        double g = 8 * VISCOSITY * 0.05 / (height * height);
        int cells = 3 * height * 3;
        BodyForce push = BodyForce.uniform(IntStream.range(0, cells).toArray(), g, 0, 0);
        LatticeProblem problem = new LatticeProblem(3, height, 3, new boolean[cells], faces, operator, List.of(push),
                List.of(), 1);
        Moments moments = new Moments(cells);
        try (FlowSolver solver = new CpuBackend(1).solver(problem)) {
            solver.advance((int) (3 * height * height / VISCOSITY));
            solver.read(moments);
        }
        double worst = 0;
        for (int j = 0; j < height; j++) {
            double y = j + 0.5;
            double exact = g / (2 * VISCOSITY) * y * (height - y);
            worst = Math.max(worst, Math.abs(moments.ux()[problem.index(1, j, 1)] - exact) / 0.05);
        }
        return worst;
    }

    @Test
    void poiseuilleConvergesWithSecondOrder() {
        for (CollisionOperator operator : List.<CollisionOperator>of(new Bgk(TAU, 0))) {
            double coarse = poiseuilleError(operator, 8);
            double fine = poiseuilleError(operator, 16);
            double order = Math.log(coarse / fine) / Math.log(2);
            assertTrue(coarse < 0.03, operator + ": error at 8 cells " + coarse);
            assertTrue(order > 1.7, operator + ": order " + order + " from errors " + coarse + " and " + fine);
        }
    }

    /**
     * Taylor-Green vortices decay as exp(-2 nu k^2 t). Source: exact (Taylor and Green 1937). Tolerance: half a percent
     * of the decay rate, what 32 cells and Mach 0.05 leave at second order.
     */
    @Test
    void taylorGreenDecays() {
        int n = 32;
        CollisionOperator operator = new Bgk(TAU, 0);
        LatticeProblem problem = new LatticeProblem(n, n, 2, new boolean[n * n * 2], Faces.periodic(), operator,
                List.of(), List.of(), 1);
        double k = 2 * Math.PI / n;
        double speed = 0.03;
        Moments moments = new Moments(problem.cells());
        for (int cell = 0; cell < problem.cells(); cell++) {
            double x = k * (cell % n + 0.5);
            double y = k * (cell / n % n + 0.5);
            moments.ux()[cell] = (float) (speed * Math.sin(x) * Math.cos(y));
            moments.uy()[cell] = (float) (-speed * Math.cos(x) * Math.sin(y));
            moments.densityDeviation()[cell] = (float) (0.75 * speed * speed
                    * (Math.cos(2 * x) + Math.cos(2 * y)));
        }
        double before = energy(moments);
        int steps = 800;
        try (FlowSolver solver = new CpuBackend(2).solver(problem)) {
            solver.initialise(moments);
            solver.advance(steps);
            solver.read(moments);
        }
        double rate = Math.log(before / energy(moments)) / steps;
        double exact = 4 * VISCOSITY * k * k;
        assertEquals(exact, rate, 0.005 * exact);
    }

    private static double energy(Moments moments) {
        double sum = 0;
        for (int n = 0; n < moments.cells(); n++) {
            sum += moments.ux()[n] * moments.ux()[n] + moments.uy()[n] * moments.uy()[n]
                    + moments.uz()[n] * moments.uz()[n];
        }
        return sum;
    }
}
