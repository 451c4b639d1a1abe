package slackwater.analysis;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import slackwater.detritus.Shields;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
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
        int floor = mostDragged(layer);
        SandBed.Shear shear = shear(layer, floor, read);
        boolean byShear = shear.fraction() > gust / threshold;
        Vec3 at = grid.centreM(byShear ? floor : strongest);
        String place = new Places(scenario).of(at).replaceFirst("^(low|half-way up|near the surface) ", "");
        SandBed bed = new SandBed(heightM, sum / read, gust, threshold, (double) warned / read, shear, place, "");
        return Optional.of(bed.saying(sentence(bed, byShear) + (bed.isWarning() ? "; " + pump(at) : "") + "."));
    }

    /** The cell on the open sand that feels the strongest gusts of shear. */
    private int mostDragged(int layer) {
        return openSand(layer).boxed()
                .max(Comparator.comparingDouble(cell -> flow.gustWallShear()[cell])).orElseThrow();
    }

    private SandBed.Shear shear(int layer, int floor, int read) {
        double critical = Shields.criticalPa(scenario.tank().sandGrainM(), SandThreshold.ARAGONITE_KG_PER_M3);
        long blown = openSand(layer).filter(cell -> flow.gustWallShear()[cell] >= critical).count();
        return new SandBed.Shear(flow.gustWallShear()[floor], critical, (double) blown / read);
    }

    /** The cells of water that lie on open sand. */
    private IntStream openSand(int layer) {
        Grid grid = flow.grid();
        int first = (int) Math.min(layer, Math.round(scenario.tank().sandDepthM() / grid.cellSizeM()));
        return IntStream.range(0, grid.nx() * grid.ny())
                .filter(column -> isOpenSand(column % grid.nx(), column / grid.nx(), layer))
                .map(column -> first * grid.nx() * grid.ny() + column);
    }

    /** Which pump is to blame, by the words for a coral that would sit there. */
    private String pump(Vec3 at) {
        Coral there = new Coral("sand", CoralGroup.SOFT, at, new Vec3(0, 0, 1), 0.05, Optional.empty());
        return new Reasons(scenario, there, flow.grid().cellSizeM()).strong();
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

    private static String sentence(SandBed bed, boolean byShear) {
        String gusts = byShear ? "gusts drag at it with " + Figures.decimal(bed.shear().gustPa(), 2) + " Pa "
                + bed.place() + ", and this sand begins to move at about "
                + Figures.decimal(bed.shear().thresholdPa(), 2) + " Pa"
                : "gusts of " + Figures.cmPerS(bed.gustMPerS()) + " cm/s " + bed.place()
                + ", and this sand begins to move at about " + Figures.cmPerS(bed.thresholdMPerS()) + " cm/s";
        if (bed.fraction() >= 1) {
            return "The sand will drift: " + gusts;
        }
        return (bed.isWarning() ? "The sand may drift: " : "The sand stays put: ") + gusts;
    }
}
