package slackwater.discretisation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.lattice.BoundaryCondition.LogLaw;
import slackwater.lattice.LatticeProblem;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;

/** Which wall the water meets where. Source: k_s = 2.5 d50 (Soulsby 1997), z0 = k_s/30 (Nikuradse 1933). */
class RoughnessTest {
    private static final double GRAIN_M = 0.0012;

    private static LatticeProblem problem(double sandDepthM, double cellSizeM) {
        Scenario base = MadeUpTank.scenario();
        Tank tank = new Tank(new Vec3(1.2, 0.5, 0.52), 0.48, sandDepthM, GRAIN_M);
        Rock rock = new Rock("mound", new Ellipsoid(new Vec3(0.6, 0.25, 0.05), new Vec3(0.2, 0.15, 0.2)));
        Scenario scenario = new Scenario("rough", tank, List.of(rock), base.pumps(), base.returnLine(),
                base.overflow(), List.of());
        return Discretiser.discretise(scenario, Voxels.of(tank, List.of(rock), cellSizeM), 1).problem();
    }

    private static double roughnessM(LatticeProblem problem, int cell, double cellSizeM) {
        return ((LogLaw) problem.surfaces().wall(cell)).roughnessLength() * cellSizeM;
    }

    @Test
    void sandAndRockAndGlass() {
        LatticeProblem problem = problem(0.04, 0.01);
        int onSand = problem.index(5, 5, 3);
        int inRock = problem.index(60, 25, 4);
        assertEquals(true, problem.solid()[onSand] && problem.solid()[inRock]);
        assertEquals(2.5 * GRAIN_M / 30, roughnessM(problem, onSand, 0.01), 1e-12);
        assertEquals(0.005 / 30, roughnessM(problem, inRock, 0.01), 1e-12);
        assertEquals(new LogLaw(0), problem.faces().lowX());
    }

    @Test
    void aBareBottomHasNoSand() {
        LatticeProblem problem = problem(0, 0.02);
        assertEquals(0.005 / 30, roughnessM(problem, problem.index(30, 12, 0), 0.02), 1e-12);
    }

    @Test
    void knobsLargerThanACellAreGeometry() {
        LatticeProblem problem = problem(0.04, 0.004);
        assertEquals(0.004 / 30, roughnessM(problem, problem.index(150, 62, 11), 0.004), 1e-12);
    }
}
