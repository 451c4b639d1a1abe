package slackwater;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import slackwater.analysis.Assessor;
import slackwater.analysis.Evidence;
import slackwater.analysis.Probes;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.field.Probe;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Vec3;
import slackwater.result.FlowResult;
import slackwater.result.Provenance;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Outlet;
import slackwater.scenario.Overflow;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioWriter;
import slackwater.scenario.Tank;
import slackwater.scenario.Wall;

/** An invented tank with an invented but plausible flow, for tests that need a result without a run. */
public final class MadeUpTank {
    public static final Tank TANK = new Tank(new Vec3(1.2, 0.5, 0.52), 0.48, 0.04, 0.0008);
    public static final RunQuality SETTLED = new RunQuality(true, "Every reading was clear of its limits.", 25, 60,
            7.5e-4, 113_000, 0.18, 2e-7, 2.5e7, 1200);
    public static final RunQuality UNSETTLED = new RunQuality(false, "The time limit was reached.", 25, 60, 7.5e-4,
            113_000, 0.18, 2e-7, 2.5e7, 1200);
    private static final int BATCHES = 20;
    private static final int PER_BATCH = 30;

    private MadeUpTank() {
    }

    public static Scenario scenario() {
        return new Scenario("Terrace <reef>, 120 cm & \"made up\"", TANK,
                List.of(new Rock("left mound", new Ellipsoid(new Vec3(0.35, 0.28, 0.08), new Vec3(0.16, 0.12, 0.14))),
                        new Rock("right mound", new Ellipsoid(new Vec3(0.82, 0.30, 0.10), new Vec3(0.20, 0.13, 0.22)))),
                List.of(pump("left", new Vec3(0.04, 0.25, 0.38), 8, -5, 0.8),
                        pump("right", new Vec3(1.16, 0.20, 0.36), 172, -4, 0.7)),
                Optional.of(new Return(2500 / 3.6e6, 0.02, new Vec3(1.10, 0.46, 0.46), Math.toRadians(200),
                        Math.toRadians(-10))),
                Optional.of(new Overflow(Wall.BACK, 0.5, 0.8)),
                List.of(coral("plate on the terrace", CoralGroup.PLATING, new Vec3(0.35, 0.28, 0.22), 0.12),
                        coral("branching top", CoralGroup.SMALL_POLYP, new Vec3(0.82, 0.28, 0.32), 0.10),
                        coral("open brain", CoralGroup.LARGE_POLYP, new Vec3(0.60, 0.45, 0.05), 0.08),
                        coral("button garden", CoralGroup.SOFT, new Vec3(0.98, 0.44, 0.06), 0.08)));
    }

    public static Pump pump(String name, Vec3 atM, double yawDeg, double pitchDeg, double output) {
        return new Pump(name, 8000 / 3.6e6, new Outlet.Round(0.06), atM, Math.toRadians(yawDeg),
                Math.toRadians(pitchDeg), 0, output, 0, 1, Pattern.STEADY);
    }

    public static Coral coral(String name, CoralGroup group, Vec3 atM, double sizeM) {
        return new Coral(name, group, atM, new Vec3(0, 0, 1), sizeM, Optional.empty());
    }

    /** The scenario with other corals. */
    public static Scenario with(Scenario scenario, List<Coral> corals) {
        return new Scenario(scenario.name(), scenario.tank(), scenario.rocks(), scenario.pumps(),
                scenario.returnLine(), scenario.overflow(), corals);
    }

    /** The scenario with its first pump pulsing. */
    public static Scenario pulsing(Scenario scenario, double periodS) {
        Pump first = scenario.pumps().get(0);
        Pump pulsing = new Pump(first.name(), first.flowM3PerS(), first.outlet(), first.atM(), first.yawRad(),
                first.pitchRad(), 0, 1, 0, 1, new Pattern(Pattern.Kind.PULSE, periodS, 0.2, 0));
        return scenario.with(List.of(pulsing, scenario.pumps().get(1)));
    }

    public static Grid grid(double cellSizeM) {
        return new Grid((int) Math.round(1.2 / cellSizeM), (int) Math.round(0.5 / cellSizeM),
                (int) Math.round(0.48 / cellSizeM), cellSizeM);
    }

    /** Water wherever there is neither sand nor rock. */
    public static boolean[] fluid(Scenario scenario, Grid grid) {
        boolean[] fluid = new boolean[grid.cells()];
        for (int cell = 0; cell < fluid.length; cell++) {
            Vec3 at = centre(grid, cell);
            fluid[cell] = at.z() > scenario.tank().sandDepthM()
                    && scenario.rocks().stream().noneMatch(rock -> rock.solid().contains(at));
        }
        return fluid;
    }

    public static Vec3 centre(Grid grid, int cell) {
        return grid.centreM(cell % grid.nx(), cell / grid.nx() % grid.ny(), cell / (grid.nx() * grid.ny()));
    }

    /**
     * Gaussian jets from each pump over a slow roll; turbulence is taken as a third of the speed and a little more, the
     * bed's shear stress as 2.5 kg/m3 times the speed squared.
     */
    public static FlowStatistics flow(Scenario scenario, double cellSizeM) {
        Grid grid = grid(cellSizeM);
        boolean[] fluid = fluid(scenario, grid);
        float[][] values = new float[8][grid.cells()];
        for (int cell = 0; cell < fluid.length; cell++) {
            if (fluid[cell]) {
                Vec3 at = centre(grid, cell);
                Vec3 drift = new Vec3(0.02 * Math.sin(6 * at.z()), 0.01 * Math.sin(5 * at.x()),
                        0.012 * Math.cos(5 * at.x()));
                Vec3 mean = drift.times(at.y() > 0.42 ? 0.2 : 1);
                for (Pump pump : scenario.pumps()) {
                    mean = mean.plus(jet(pump, at));
                }
                double wall = scenario.rocks().stream().mapToDouble(rock -> rock.solid().signedDistanceM(at)).min()
                        .orElse(1);
                mean = mean.times(Math.min(1, 0.2 + wall / 0.06));
                values[0][cell] = (float) mean.x();
                values[1][cell] = (float) mean.y();
                values[2][cell] = (float) mean.z();
                values[3][cell] = (float) (1.4 * mean.length() + 0.002);
                values[4][cell] = values[3][cell] * 1.12f;
                values[5][cell] = values[3][cell] * 0.06f + 0.0005f;
                boolean bed = at.z() < scenario.tank().sandDepthM() + cellSizeM;
                values[6][cell] = bed ? 2.5f * values[4][cell] * values[4][cell] : 0;
                values[7][cell] = 1.5f * values[6][cell];
            }
        }
        return new FlowStatistics(grid, fluid, values[0], values[1], values[2], values[3], values[4], values[5],
                values[6], values[7]);
    }

    private static Vec3 jet(Pump pump, Vec3 at) {
        Vec3 off = at.minus(pump.atM());
        double along = off.dot(pump.aim());
        if (along <= 0) {
            return Vec3.ZERO;
        }
        double half = 0.03 + 0.094 * along;
        double beside = off.minus(pump.aim().times(along)).length();
        double flow = pump.flowM3PerS() * pump.outputFraction();
        double areaM2 = pump.outlet().areaM2();
        double axis = Math.min(flow / areaM2, 6 * flow / Math.sqrt(areaM2) / (along + 0.2));
        return pump.aim().times(axis * Math.exp(-Math.log(2) * beside * beside / half / half));
    }

    /** A series of one speed with seeded scatter about it. */
    public static ProbeSeries series(String name, double meanMPerS, double scatterMPerS) {
        Random random = new Random(7);
        float[] speeds = new float[BATCHES * PER_BATCH];
        for (int n = 0; n < speeds.length; n++) {
            speeds[n] = (float) Math.max(0, meanMPerS + scatterMPerS * random.nextGaussian());
        }
        return new ProbeSeries(new Probe(name, List.of(Vec3.ZERO), List.of()), 0.1, PER_BATCH, speeds);
    }

    /** A series for each coral, read off the field at its probe. */
    public static List<ProbeSeries> series(Scenario scenario, FlowStatistics flow) {
        Grid grid = flow.grid();
        return Probes.of(scenario, grid, flow.fluid()).stream().map(probe -> {
            double mean = probe.pointsM().stream().mapToDouble(point -> flow.meanSpeed()[grid.index(
                    (int) (point.x() / grid.cellSizeM()), (int) (point.y() / grid.cellSizeM()),
                    (int) (point.z() / grid.cellSizeM()))]).average().orElseThrow();
            return series(probe.name(), mean, mean / 3);
        }).toList();
    }

    public static FlowResult result(Scenario scenario, FlowStatistics flow) {
        return result(scenario, flow, Evidence.NONE);
    }

    public static FlowResult result(Scenario scenario, FlowStatistics flow, Evidence evidence) {
        Provenance provenance = new Provenance("0.1.0", "terrace.toml", ScenarioWriter.write(scenario),
                "ab".repeat(32), flow.grid().cellSizeM(), 42, "made up", "none", 2, "17",
                Instant.parse("2026-01-01T00:00:00Z"));
        return new FlowResult(provenance, scenario, SETTLED,
                Assessor.assess(scenario, flow, series(scenario, flow), SETTLED, evidence), flow.grid());
    }
}
