package slackwater.validation;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.geometry.Vec3;
import slackwater.lattice.BodyForce;
import slackwater.lattice.LatticeProblem;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;

/**
 * One pump alone in a cube of water makes a round jet: on its axis u = K sqrt(M)/(x - x0), and its half-width grows as
 * S (x - x0). The pump comes from a scenario and goes through the discretisation that runs use, on cells of 1 cm.
 *
 * <p>The published law is of a jet into still water. Averages therefore begin when the jet has long passed the places
 * that are fitted, and end before the water it has stirred comes back around the tank. In a closed tank the
 * counter-flow that feeds the jet takes momentum from it from the first moment: M(x) = M/(1 + 4/B^2 x^2/A), with A the
 * cross-section of the tank and B = K/1.128 (Hussein, Capp and George 1994, from memory). K is stated after that.
 *
 * @param outletCells width of the outlet in cells
 * @param edgeOutlets edge of the cube in outlets
 * @param to how far the jet is fitted, in outlets; from 10 on, where it is self-similar
 * @param turnovers how long is averaged, in turnovers of the largest eddies at the far end, x/u there
 */
record RoundJet(int outletCells, double edgeOutlets, double to, double turnovers) {
    /** Eddy viscosity over sqrt(M) of a laminar jet that decays like a turbulent one: K = 3/(8 pi 0.0178) = 6.71. */
    static final double EDDY_VISCOSITY = 0.0178;
    private static final double CELL_M = 0.01;
    private static final double SPEED_M_PER_S = 0.796;
    private static final double B = 6;
    private static final double FROM = 10;
    private static final int STEPS_PER_SAMPLE = 20;

    /** What a run showed: decay constant, spread, virtual origin in outlets, greatest angle off the aim in degrees. */
    record Found(double k, double s, double origin, double strayedDeg, double[] outlets, double[] decay) {
        @Override
        public String toString() {
            return String.format(Locale.ROOT, "K %.2f, S %.3f, x0 %.1f, strays %.1f degrees", k, s, origin, strayedDeg);
        }
    }

    String grid() {
        long edge = Math.round(edgeOutlets * outletCells);
        return String.format(Locale.ROOT, "%d x %d x %d cells, outlet %d cells wide", edge, edge, edge, outletCells);
    }

    /** The jet as runs have it, aimed through the middle of the tank. */
    Found turbulent(double yawDeg, double pitchDeg) {
        return measure(yawDeg, pitchDeg, Optional.empty(), 2);
    }

    /** The same pump in a fluid of constant viscosity, {@link #EDDY_VISCOSITY} sqrt(M), without noise. */
    Found constantViscosity(double yawDeg, double pitchDeg) {
        return measure(yawDeg, pitchDeg, Optional.of(EDDY_VISCOSITY), 4);
    }

    private Found measure(double yawDeg, double pitchDeg, Optional<Double> eddyViscosity, double spinUpTurnovers) {
        double edgeM = edgeOutlets * outletM();
        JetAxis axis = JetAxis.through(edgeM / 2, 0.37 * edgeM, Math.toRadians(yawDeg), Math.toRadians(pitchDeg));
        Discretisation tank = tank(axis, yawDeg, pitchDeg);
        LatticeProblem problem = eddyViscosity.map(share -> steady(tank, share)).orElse(tank.problem());
        double turnoverSteps = tank.units().steps(to * outletM() / fastest(to * outletM(), 6.7));
        JetSections sections = new JetSections(tank.voxels(), axis);
        try (Flow flow = Flow.of(problem)) {
            flow.advance((int) (spinUpTurnovers * turnoverSteps));
            for (int left = (int) (turnovers * turnoverSteps); left > 0; left -= STEPS_PER_SAMPLE) {
                sections.add(flow.advance(STEPS_PER_SAMPLE).now, tank.units().speedMPerS());
            }
        }
        Found found = fit(sections, edgeM * edgeM);
        System.out.println("jet, " + grid() + ", yaw " + yawDeg + ", pitch " + pitchDeg + ": " + found);
        return found;
    }

    private double outletM() {
        return outletCells * CELL_M;
    }

    private double momentum() {
        return SPEED_M_PER_S * SPEED_M_PER_S * Math.PI / 4 * outletM() * outletM();
    }

    private double fastest(double x, double k) {
        return k * Math.sqrt(momentum()) / x;
    }

    private Discretisation tank(JetAxis axis, double yawDeg, double pitchDeg) {
        double edgeCm = 100 * edgeOutlets * outletM();
        String text = String.format(Locale.ROOT, """
                name = "A jet alone"
                [tank]
                inside_cm = [%1$.3f, %1$.3f, %2$.3f]
                water_level_cm = %1$.3f
                [[pump]]
                name = "jet"
                flow_l_per_h = %3$.3f
                outlet_mm = %4$.3f
                at_cm = [%5$.3f, %6$.3f, %7$.3f]
                yaw_deg = %8$s
                pitch_deg = %9$s
                """, edgeCm, edgeCm + 2, 3.6e6 * SPEED_M_PER_S * Math.PI / 4 * outletM() * outletM(),
                1000 * outletM(), 100 * axis.from().x(), 100 * axis.from().y(), 100 * axis.from().z(), yawDeg, pitchDeg);
        try {
            Scenario scenario = ScenarioReader.read(text, "jet.toml", Path.of("."));
            return Discretiser.discretise(scenario, Voxels.of(scenario.tank(), List.of(), CELL_M), 1);
        } catch (ScenarioFaults faults) {
            throw new IllegalStateException(faults);
        }
    }

    private LatticeProblem steady(Discretisation tank, double share) {
        LatticeProblem given = tank.problem();
        BodyForce jet = given.forces().get(0);
        BodyForce quiet = new BodyForce(jet.cells(), jet.weights(), jet.fx(), jet.fy(), jet.fz(), 0, 1,
                jet.modulation());
        return new LatticeProblem(given.nx(), given.ny(), given.nz(), given.solid(), given.faces(),
                Flow.resolved(tank.units().viscosity(share * Math.sqrt(momentum()))), List.of(quiet), List.of(), 1);
    }

    private Found fit(JetSections sections, double sectionM2) {
        int points = (int) (to - FROM) + 1;
        double[] outlets = new double[points];
        double[] relative = new double[points];
        SimpleRegression decay = new SimpleRegression();
        SimpleRegression spread = new SimpleRegression();
        double strayed = 0;
        for (int n = 0; n < points; n++) {
            outlets[n] = FROM + n;
            double x = outlets[n] * outletM();
            JetSections.Centre centre = sections.centre(x);
            double left = 1 / (1 + 4 / (B * B) * x * x / sectionM2);
            relative[n] = SPEED_M_PER_S * Math.sqrt(left) / centre.speedMPerS();
            decay.addData(x, Math.sqrt(momentum() * left) / centre.speedMPerS());
            spread.addData(x, sections.halfWidth(x, centre));
            strayed = Math.max(strayed, Math.toDegrees(Math.hypot(centre.a(), centre.b()) / x));
        }
        return new Found(1 / decay.getSlope(), spread.getSlope(),
                -decay.getIntercept() / decay.getSlope() / outletM(), strayed, outlets, relative);
    }

    /** The line along which the pump aims, and the two directions square to it. */
    record JetAxis(Vec3 from, Vec3 aim, Vec3 side, Vec3 up) {
        /** Through the middle of a cube, beginning so far before it. */
        static JetAxis through(double middleM, double beforeM, double yaw, double pitch) {
            Vec3 aim = new Vec3(Math.cos(pitch) * Math.cos(yaw), Math.cos(pitch) * Math.sin(yaw), Math.sin(pitch));
            Vec3 side = new Vec3(-Math.sin(yaw), Math.cos(yaw), 0);
            Vec3 middle = new Vec3(middleM, middleM, middleM);
            return new JetAxis(middle.plus(aim.times(-beforeM)), aim, side, aim.cross(side));
        }

        Vec3 at(double distance, double a, double b) {
            return from.plus(aim.times(distance)).plus(side.times(a)).plus(up.times(b));
        }
    }
}
