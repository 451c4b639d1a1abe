package slackwater.validation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slackwater.cli.Shell;

/**
 * A pump alone in a tank makes a round turbulent jet: on its axis u = K sqrt(M)/(x - x0), and its half-width grows as
 * S (x - x0). The whole line is under test: scenario file in, flow.vti out.
 *
 * <p>Published: K 6.5 to 7.1 and S 0.094 +- 0.008 (Hussein, Capp and George 1994, J. Fluid Mech. 258, 31-75: K 6.55,
 * S 0.094; Panchapakesan and Lumley 1993, J. Fluid Mech. 246, 197-223: K 6.84, S 0.096; Rajaratnam 1976, Turbulent
 * Jets: K 7.1, S 0.10; all but the first from memory). Tolerance: 10 % on K and 15 % on S beyond the band, for the
 * spread between good experiments (+-10 %) and averages over some 15 turnover times of the largest eddies.
 *
 * <p>In a closed tank the counter-flow that feeds the jet takes momentum from it: M(x) = M/(1 + 4/B^2 x^2/A), with A
 * the cross-section of the tank and B = K/1.128 (Hussein, Capp and George 1994, from memory). At the places used here
 * that is at most 4 % of the speed.
 */
class JetLawTest {
    private static final double OUTLET_M = 0.02;
    private static final double FLOW_L_PER_H = 900;
    private static final double SECTION_M2 = 0.36;
    private static final double B = 6;
    private static final String GRID = "60 x 60 x 60 cells of 1 cm, disc 3 cells wide";

    private static final String SOURCE = "Hussein, Capp and George 1994, J. Fluid Mech. 258, 31-75 (K 6.55, S 0.094);"
            + " Panchapakesan and Lumley 1993, J. Fluid Mech. 246, 197-223 (K 6.84, S 0.096); Rajaratnam 1976,"
            + " Turbulent Jets (K 7.1, S 0.10)";
    private static final String WHERE = "Hussein et al., page 44, read second-hand; the others from memory";
    private static final String WHY = "10 % on K and 15 % on S beyond the band, for the spread between good experiments"
            + " (10 %) and averages over some 15 turnover times of the largest eddies";
    private static final Range DECAY = new Range(6.5, 7.1);
    private static final Range SPREAD = new Range(0.086, 0.102);

    @TempDir
    private Path folder;

    @Test
    @Validated(value = "Round jet along the tank", group = Group.JET, source = SOURCE, where = WHERE,
            known = Known.FROM_MEMORY, tolerance = WHY, chaotic = true)
    void alongTheTank(Sheet sheet) throws IOException {
        Found found = measure(0, 0, 30, 30);
        sheet.grid(GRID);
        sheet.within("decay K", DECAY, Tolerance.share(0.1), found.k());
        sheet.within("spread S", SPREAD, Tolerance.share(0.15), found.s());
    }

    @Test
    @Validated(value = "Round jet, yaw 8, pitch -5 degrees", group = Group.JET, source = SOURCE, where = WHERE,
            known = Known.FROM_MEMORY, tolerance = WHY, chaotic = true)
    void nearlyAlongTheTank(Sheet sheet) throws IOException {
        Found found = measure(8, -5, 27, 32);
        sheet.grid(GRID);
        sheet.within("decay K", DECAY, Tolerance.share(0.1), found.k());
        sheet.within("spread S", SPREAD, Tolerance.share(0.15), found.s());
    }

    /**
     * A known miss, kept in sight: further off the lattice's axes the jet decays too fast (published K 6.5 to 7.1) and
     * bends towards the nearest axis. Fails when that is mended; then the case belongs above.
     */
    @Test
    @Validated(value = "Round jet, yaw 22.5, pitch 10 degrees", group = Group.JET, source = SOURCE, where = WHERE,
            known = Known.FROM_MEMORY, tolerance = WHY, chaotic = true)
    void decaysTooFastFurtherOffTheAxes(Sheet sheet) throws IOException {
        Found found = measure(22.5, 10, 21, 26);
        sheet.grid(GRID);
        sheet.miss("decay K", DECAY, Tolerance.share(0.1), found.k());
        sheet.within("spread S", SPREAD, Tolerance.share(0.15), found.s());
        assertTrue(found.k() > 4.5, found.toString());
    }

    /** What a run showed: decay constant, spread, virtual origin in outlets, greatest angle off the aim in degrees. */
    private record Found(double k, double s, double origin, double strayedDeg) {
    }

    private Found measure(double yawDeg, double pitchDeg, double yCm, double zCm) throws IOException {
        Path scenario = folder.resolve("jet.toml");
        Files.writeString(scenario, String.format(Locale.ROOT, """
                name = "A jet alone"
                [tank]
                inside_cm = [60, 60, 62]
                water_level_cm = 60
                [[pump]]
                name = "jet"
                flow_l_per_h = %s
                outlet_mm = %s
                at_cm = [8, %s, %s]
                yaw_deg = %s
                pitch_deg = %s
                """, FLOW_L_PER_H, OUTLET_M * 1000, yCm, zCm, yawDeg, pitchDeg));
        Shell run = Shell.run("run", scenario, "--out", folder.resolve("out"), "--max-seconds", "75");
        assertTrue(run.code() == 0 || run.code() == 3, run.err());
        VtiReader flow = new VtiReader(folder.resolve("out/flow.vti"));

        Axis axis = new Axis(0.08, yCm / 100, zCm / 100, Math.toRadians(yawDeg), Math.toRadians(pitchDeg));
        double flowM3PerS = FLOW_L_PER_H / 3.6e6;
        double momentum = flowM3PerS * flowM3PerS / (Math.PI / 4 * OUTLET_M * OUTLET_M);
        SimpleRegression decay = new SimpleRegression();
        SimpleRegression spread = new SimpleRegression();
        double strayed = 0;
        for (double x = 0.18; x < 0.421; x += 0.02) {
            Centre centre = axis.centre(flow, x);
            double left = 1 / (1 + 4 / (B * B) * x * x / SECTION_M2);
            decay.addData(x, Math.sqrt(momentum * left) / centre.speedMPerS());
            spread.addData(x, axis.halfWidth(flow, x, centre));
            strayed = Math.max(strayed, Math.toDegrees(Math.hypot(centre.a(), centre.b()) / x));
        }
        Found found = new Found(1 / decay.getSlope(), spread.getSlope(),
                -decay.getIntercept() / decay.getSlope() / OUTLET_M, strayed);
        System.out.println("jet at yaw " + yawDeg + ", pitch " + pitchDeg + ": " + found);
        return found;
    }

    /** Where in a section the jet is fastest, metres to the side (a) and up (b) of the aim, and how fast. */
    private record Centre(double a, double b, double speedMPerS) {
    }

    /** The line along which the pump aims, and sections across it. */
    private record Axis(double x0, double y0, double z0, double yaw, double pitch) {
        private static final int POINTS = 24;
        private static final double REACH_M = 0.05;
        private static final double STEP_M = 0.005;

        /** Mean velocity along the aim at a place in a section, m/s. */
        double along(VtiReader flow, double distance, double a, double b) {
            double[] aim = {Math.cos(pitch) * Math.cos(yaw), Math.cos(pitch) * Math.sin(yaw), Math.sin(pitch)};
            double[] side = {-Math.sin(yaw), Math.cos(yaw), 0};
            double[] up = {-Math.sin(pitch) * Math.cos(yaw), -Math.sin(pitch) * Math.sin(yaw), Math.cos(pitch)};
            double x = x0 + distance * aim[0] + a * side[0] + b * up[0];
            double y = y0 + distance * aim[1] + a * side[1] + b * up[1];
            double z = z0 + distance * aim[2] + a * side[2] + b * up[2];
            double sum = 0;
            for (int component = 0; component < 3; component++) {
                sum += aim[component] * flow.velocity(component, x, y, z);
            }
            return sum;
        }

        /** The jet's own centre, as an experimenter finds it. */
        Centre centre(VtiReader flow, double distance) {
            Centre best = new Centre(0, 0, along(flow, distance, 0, 0));
            for (double a = -REACH_M; a <= REACH_M; a += STEP_M) {
                for (double b = -REACH_M; b <= REACH_M; b += STEP_M) {
                    double speed = along(flow, distance, a, b);
                    best = speed > best.speedMPerS() ? new Centre(a, b, speed) : best;
                }
            }
            return best;
        }

        /** Mean over a ring about the jet's centre, m/s. */
        private double ring(VtiReader flow, double distance, Centre centre, double radius) {
            double sum = 0;
            for (int n = 0; n < POINTS; n++) {
                double angle = 2 * Math.PI * n / POINTS;
                sum += along(flow, distance, centre.a() + radius * Math.cos(angle),
                        centre.b() + radius * Math.sin(angle));
            }
            return sum / POINTS;
        }

        /** Radius at which the velocity is half of that in the centre, metres. */
        double halfWidth(VtiReader flow, double distance, Centre centre) {
            double half = centre.speedMPerS() / 2;
            double step = STEP_M / 2;
            double radius = 0;
            while (ring(flow, distance, centre, radius) > half) {
                radius += step;
            }
            double inner = ring(flow, distance, centre, radius - step);
            double outer = ring(flow, distance, centre, radius);
            return radius - step * (half - outer) / (inner - outer);
        }
    }
}
