package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import slackwater.field.FlowStatistics;
import slackwater.field.ProbeSeries;
import slackwater.field.RunQuality;
import slackwater.scenario.Scenario;

/** From the flow to what it means: coral by coral and corner by corner. */
public final class Assessor {
    private Assessor() {
    }

    /**
     * Judges a tank.
     *
     * @param probes one series a coral, in the order of the scenario, from the probes of {@link Probes}
     * @throws IllegalArgumentException if the series are not those of the scenario's corals, or there is no water
     */
    public static Assessment assess(Scenario scenario, FlowStatistics flow, List<ProbeSeries> probes,
                                    RunQuality quality) {
        double waterM3 = waterVolumeM3(flow);
        if (waterM3 == 0) {
            throw new IllegalArgumentException("the field holds no water to assess");
        }
        List<CoralReading> corals = corals(scenario, flow, probes, quality);
        Verdict verdict = corals.stream().map(CoralReading::verdict).reduce(Verdict.NONE, Verdict::worseOf);
        StillWater still = new StillWaterSearch(flow, new Places(scenario)).find();
        return new Assessment(verdict, Summary.of(corals, still, quality), corals, waterM3, still,
                SpeedHistogram.of(flow), SurfaceMovement.of(flow), new SandBedSurvey(scenario, flow).read(),
                Turnover.of(scenario, waterM3));
    }

    private static List<CoralReading> corals(Scenario scenario, FlowStatistics flow, List<ProbeSeries> probes,
                                             RunQuality quality) {
        if (probes.size() != scenario.corals().size()) {
            throw new IllegalArgumentException("found " + probes.size() + " probe series for "
                    + scenario.corals().size() + " corals; there must be one each, in the same order");
        }
        List<CoralReading> readings = new ArrayList<>();
        for (int n = 0; n < probes.size(); n++) {
            String name = scenario.corals().get(n).name();
            if (!probes.get(n).probe().name().equals(name)) {
                throw new IllegalArgumentException("probe series " + (n + 1) + " is of \""
                        + probes.get(n).probe().name() + "\", but coral " + (n + 1) + " is \"" + name + "\"");
            }
            readings.add(CoralJudge.judge(scenario, scenario.corals().get(n), Reading.of(probes.get(n)),
                    quality.settled(), flow.grid().cellSizeM()));
        }
        return List.copyOf(readings);
    }

    private static double waterVolumeM3(FlowStatistics flow) {
        int water = 0;
        for (boolean fluid : flow.fluid()) {
            water += fluid ? 1 : 0;
        }
        return water * flow.grid().cellVolumeM3();
    }
}
