package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slackwater.detritus.Clearance;
import slackwater.field.FlowStatistics;
import slackwater.field.Normal;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.scenario.Scenario;

/** From the flow to what it means: coral by coral and corner by corner. */
public final class Assessor {
    private final Scenario scenario;
    private final FlowStatistics flow;
    private final Evidence evidence;
    private final Optional<GridDoubt> gridDoubt;

    private Assessor(Scenario scenario, FlowStatistics flow, Evidence evidence) {
        this.scenario = scenario;
        this.flow = flow;
        this.evidence = evidence;
        this.gridDoubt = evidence.companion().map(coarse -> new GridDoubt(flow, coarse));
    }

    /** Judges a tank from one grid, with the pumps taken at their word. */
    public static Assessment assess(Scenario scenario, FlowStatistics flow, List<ProbeSeries> probes,
                                    RunQuality quality) {
        return assess(scenario, flow, probes, quality, Evidence.NONE);
    }

    /**
     * Judges a tank.
     *
     * @param probes one series a coral, in the order of the scenario, from the probes of {@link Probes}
     * @throws IllegalArgumentException if the series are not those of the scenario's corals, or there is no water
     */
    public static Assessment assess(Scenario scenario, FlowStatistics flow, List<ProbeSeries> probes,
                                    RunQuality quality, Evidence evidence) {
        return new Assessor(scenario, flow, evidence).assess(probes, quality);
    }

    private Assessment assess(List<ProbeSeries> probes, RunQuality quality) {
        double waterM3 = waterVolumeM3();
        if (waterM3 == 0) {
            throw new IllegalArgumentException("the field holds no water to assess");
        }
        List<CoralReading> corals = corals(probes, quality);
        Verdict verdict = corals.stream().map(CoralReading::verdict).reduce(Verdict.NONE, Verdict::worseOf);
        float[] local = gridDoubt.map(GridDoubt::local).orElseGet(() -> new float[flow.grid().cells()]);
        float[] probability = new Stillness(flow).probability(local, evidence.pumpFraction());
        StillWater still = new StillWaterSearch(flow, probability, new Places(scenario)).find();
        return new Assessment(verdict, Summary.of(corals, still, quality), corals, waterM3, still,
                SpeedHistogram.of(flow), SurfaceMovement.of(flow), new SandBedSurvey(scenario, flow).read(),
                Turnover.of(scenario, waterM3), confidence(corals),
                evidence.litter().map(litter -> Leavings.of(litter, scenario, flow.grid())));
    }

    private Confidence confidence(List<CoralReading> corals) {
        double cellM = flow.grid().cellSizeM();
        return new Confidence(
                evidence.companion().map(coarse -> OptionalDouble.of(coarse.grid().cellSizeM()))
                        .orElse(OptionalDouble.empty()),
                gridDoubt.map(doubt -> OptionalDouble.of(doubt.typicalFraction())).orElse(OptionalDouble.empty()),
                gridDoubt.map(doubt -> OptionalDouble.of(doubt.coarseBiasFraction())).orElse(OptionalDouble.empty()),
                evidence.pumpFraction(), GridWords.of(evidence, gridDoubt, corals, cellM),
                PumpWords.of(scenario, corals, evidence.pumpFraction()));
    }

    /**
     * How far the speed at each coral is in doubt: half the width of its 95 % range, as a share of the speed. Without
     * bound where the water was watched for too short a time or stands still.
     *
     * @param probes one series a coral, in the order of the scenario
     */
    public static List<Double> speedDoubts(Scenario scenario, FlowStatistics flow, List<ProbeSeries> probes,
                                           Evidence evidence) {
        Assessor assessor = new Assessor(scenario, flow, evidence);
        return probes.stream().map(series -> assessor.speedDoubt(Reading.of(series), series)).toList();
    }

    private double speedDoubt(Reading reading, ProbeSeries series) {
        return reading.meanMPerS() > 0 ? doubt(reading, series).totalMPerS() / reading.meanMPerS()
                : Double.POSITIVE_INFINITY;
    }

    private List<CoralReading> corals(List<ProbeSeries> probes, RunQuality quality) {
        if (probes.size() != scenario.corals().size()) {
            throw new IllegalArgumentException("found " + probes.size() + " probe series for "
                    + scenario.corals().size() + " corals; there must be one each, in the same order");
        }
        CoralJudge judge = new CoralJudge(scenario, quality.settled(), flow.grid().cellSizeM());
        List<CoralReading> readings = new ArrayList<>();
        for (int n = 0; n < probes.size(); n++) {
            String name = scenario.corals().get(n).name();
            if (!probes.get(n).probe().name().equals(name)) {
                throw new IllegalArgumentException("probe series " + (n + 1) + " is of \""
                        + probes.get(n).probe().name() + "\", but coral " + (n + 1) + " is \"" + name + "\"");
            }
            Reading reading = Reading.of(probes.get(n));
            readings.add(judge.judge(scenario.corals().get(n), reading, doubt(reading, probes.get(n)),
                    clearances(n)));
        }
        return List.copyOf(readings);
    }

    private List<Clearance> clearances(int coral) {
        return evidence.litter().map(litter -> litter.of(coral)).orElse(List.of());
    }

    private Doubt doubt(Reading reading, ProbeSeries series) {
        OptionalDouble grid = gridDoubt.map(doubt ->
                        OptionalDouble.of(Normal.HALF_OF_95
                                * doubt.of(series.probe().pointsM(), reading.meanMPerS())))
                .orElse(OptionalDouble.empty());
        return new Doubt(reading.marginMPerS(), grid, 0).withPumps(evidence.pumpFraction(), reading.meanMPerS());
    }

    private double waterVolumeM3() {
        int water = 0;
        for (boolean fluid : flow.fluid()) {
            water += fluid ? 1 : 0;
        }
        return water * flow.grid().cellVolumeM3();
    }
}
