package slackwater.analysis;

import java.util.Optional;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.scenario.Scenario;

/** Reads the layer of cells about 5 cm above open sand; where rock lies between it and the sand nothing is read. */
final class SandBedSurvey {
    private static final double HEIGHT_M = 0.05;

    private final Scenario scenario;
    private final FlowStatistics flow;

    SandBedSurvey(Scenario scenario, FlowStatistics flow) {
        this.scenario = scenario;
        this.flow = flow;
    }

    /** Empty without sand, or where no water lies above it. */
    Optional<SandBed> read() {
        double sandM = scenario.tank().sandDepthM();
        Grid grid = flow.grid();
        int layer = (int) Math.floor((sandM + HEIGHT_M) / grid.cellSizeM());
        double heightM = (layer + 0.5) * grid.cellSizeM() - sandM;
        if (sandM <= 0 || scenario.tank().sandGrainM() <= 0 || layer >= grid.nz() || heightM <= 0) {
            return Optional.empty();
        }
        double threshold = SandThreshold.ofAragonite(scenario.tank().sandGrainM()).speedMPerS(heightM);
        return survey(layer, heightM, threshold);
    }

    private Optional<SandBed> survey(int layer, double heightM, double threshold) {
        Grid grid = flow.grid();
        Stillness stillness = new Stillness(flow);
        int read = 0;
        int warned = 0;
        int strongest = 0;
        double sum = 0;
        double gust = -1;
        for (int j = 0; j < grid.ny(); j++) {
            for (int i = 0; i < grid.nx(); i++) {
                if (isOpenSand(i, j, layer)) {
                    int cell = grid.index(i, j, layer);
                    read++;
                    sum += flow.meanSpeed()[cell];
                    warned += stillness.gustMPerS(cell) > SandBed.WARN_FRACTION * threshold ? 1 : 0;
                    strongest = stillness.gustMPerS(cell) > gust ? cell : strongest;
                    gust = Math.max(gust, stillness.gustMPerS(cell));
                }
            }
        }
        if (read == 0) {
            return Optional.empty();
        }
        String place = new Places(scenario)
                .of(grid.centreM(strongest % grid.nx(), strongest / grid.nx() % grid.ny(), layer))
                .replaceFirst("^(low|half-way up|near the surface) ", "");
        return Optional.of(new SandBed(heightM, sum / read, gust, threshold, (double) warned / read, place,
                sentence(gust, threshold, place)));
    }

    private boolean isOpenSand(int i, int j, int layer) {
        Grid grid = flow.grid();
        double clear = scenario.tank().sandDepthM() + grid.cellSizeM() / 2;
        for (int k = layer; k >= 0 && (k == layer || (k + 0.5) * grid.cellSizeM() > clear); k--) {
            if (!flow.fluid()[grid.index(i, j, k)]) {
                return false;
            }
        }
        return true;
    }

    private static String sentence(double gust, double threshold, String place) {
        String speeds = "gusts of " + Figures.cmPerS(gust) + " cm/s " + place
                + ", and this sand begins to move at about " + Figures.cmPerS(threshold) + " cm/s";
        if (gust >= threshold) {
            return "The sand will drift: " + speeds + ".";
        }
        return (gust > SandBed.WARN_FRACTION * threshold ? "The sand may drift: " : "The sand stays put: ") + speeds
                + ".";
    }
}
