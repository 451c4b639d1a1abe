package slackwater.validation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import slackwater.cli.Shell;

/**
 * One pump alone in a cube of water makes a round turbulent jet: on its axis u = K sqrt(M)/(x - x0), and its half-width
 * grows as S (x - x0). The whole line is under test: scenario file in, flow.vti out, on cells of 1 cm.
 *
 * <p>In a closed tank the counter-flow that feeds the jet takes momentum from it: M(x) = M/(1 + 4/B^2 x^2/A), with A
 * the cross-section of the tank and B = K/1.128 (Hussein, Capp and George 1994, from memory). K is stated after that.
 *
 * @param outletCells width of the outlet in cells
 * @param edgeOutlets edge of the cube in outlets
 * @param turnovers time watched, in outlet widths over the outlet's speed
 * @param to how far the jet is fitted, in outlets; from 10 on, where it is self-similar
 */
record RoundJet(int outletCells, double edgeOutlets, double turnovers, double to) {
    private static final double CELL_M = 0.01;
    private static final double SPEED_M_PER_S = 0.796;
    private static final double B = 6;
    private static final double FROM = 10;

    /** What a run showed: decay constant, spread, virtual origin in outlets, greatest angle off the aim in degrees. */
    record Found(double k, double s, double origin, double strayedDeg) {
    }

    String grid() {
        long edge = Math.round(edgeOutlets * outletCells);
        return String.format(Locale.ROOT, "%d x %d x %d cells, outlet %d cells wide", edge, edge, edge, outletCells);
    }

    /** Runs the program in a folder with the pump aimed through the middle of the tank. */
    Found measure(Path folder, double yawDeg, double pitchDeg) throws IOException {
        double outletM = outletCells * CELL_M;
        double edgeM = edgeOutlets * outletM;
        double flowM3PerS = SPEED_M_PER_S * Math.PI / 4 * outletM * outletM;
        Axis axis = Axis.through(edgeM / 2, 0.37 * edgeM, Math.toRadians(yawDeg), Math.toRadians(pitchDeg));
        Path scenario = folder.resolve("jet.toml");
        Files.writeString(scenario, String.format(Locale.ROOT, """
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
                """, 100 * edgeM, 100 * edgeM + 2, 3.6e6 * flowM3PerS, 1000 * outletM, 100 * axis.x0(), 100 * axis.y0(),
                100 * axis.z0(), yawDeg, pitchDeg));
        Shell run = Shell.run("run", scenario, "--one-grid", "--no-grains", "--out", folder.resolve("out"),
                "--max-seconds",
                Double.toString(turnovers * outletM / SPEED_M_PER_S));
        assertTrue(run.code() == 0 || run.code() == 3, run.err());
        Found found = fit(new VtiReader(folder.resolve("out/flow.vti")), axis,
                SPEED_M_PER_S * SPEED_M_PER_S * Math.PI / 4 * outletM * outletM, edgeM * edgeM);
        System.out.println("jet, " + grid() + ", yaw " + yawDeg + ", pitch " + pitchDeg + ": " + found);
        return found;
    }

    private Found fit(VtiReader flow, Axis axis, double momentum, double sectionM2) throws IOException {
        double outletM = outletCells * CELL_M;
        SimpleRegression decay = new SimpleRegression();
        SimpleRegression spread = new SimpleRegression();
        double strayed = 0;
        for (double outlets = FROM; outlets <= to; outlets += 1) {
            double x = outlets * outletM;
            Centre centre = axis.centre(flow, x);
            double left = 1 / (1 + 4 / (B * B) * x * x / sectionM2);
            decay.addData(x, Math.sqrt(momentum * left) / centre.speedMPerS());
            spread.addData(x, axis.halfWidth(flow, x, centre));
            strayed = Math.max(strayed, Math.toDegrees(Math.hypot(centre.a(), centre.b()) / x));
        }
        return new Found(1 / decay.getSlope(), spread.getSlope(),
                -decay.getIntercept() / decay.getSlope() / outletM, strayed);
    }

    /** Where in a section the jet is fastest, metres to the side (a) and up (b) of the aim, and how fast. */
    private record Centre(double a, double b, double speedMPerS) {
    }

    /** The line along which the pump aims, and sections across it. */
    private record Axis(double x0, double y0, double z0, double yaw, double pitch) {
        /** Through the middle of a cube, beginning so far before it. */
        static Axis through(double middleM, double beforeM, double yaw, double pitch) {
            return new Axis(middleM - beforeM * Math.cos(pitch) * Math.cos(yaw),
                    middleM - beforeM * Math.cos(pitch) * Math.sin(yaw), middleM - beforeM * Math.sin(pitch), yaw,
                    pitch);
        }

        private static final int POINTS = 24;
        /** How far off its aim a jet is looked for, over the distance. */
        private static final double REACH = 0.15;
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
            double reach = Math.max(0.05, REACH * distance);
            for (double a = -reach; a <= reach; a += STEP_M) {
                for (double b = -reach; b <= reach; b += STEP_M) {
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
