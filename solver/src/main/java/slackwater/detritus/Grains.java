package slackwater.detritus;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slackwater.scenario.Material;
import slackwater.scenario.Scenario;

/**
 * The kinds of grain that a tank is tried with. Thresholds on three kinds of bed were measured for fish waste alone:
 * 0.06 Pa on smooth ground, 0.12 on sand and 0.32 on broken rock [Carvajalino2020]; their ratios stand in for those of
 * everything else, which is an assumption.
 */
public final class Grains {
    public static final String SAND = "sand";
    public static final String FOOD = "food";
    public static final String WASTE = "waste";
    static final double SMOOTH_PER_SAND = 0.06 / 0.12;
    static final double ROCK_PER_SAND = 0.32 / 0.12;
    private static final double ARAGONITE_KG_PER_M3 = 2830;
    /** The finest sand that is sold for tanks: what pumps and fishes stir up and throw on corals. Assumed. */
    private static final double FINE_SAND_M = 0.0002;
    private static final double FORMULA_SPREAD = 0.15;
    private static final double OWN_SPREAD = 0.3;
    private static final String RATIOS = "; on rock and smooth ground by the ratios measured for fish waste"
            + " (Carvajalino-Fernandez and others 2020), assumed";

    private Grains() {
    }

    /** All kinds: fine sand, food, pellets, waste, floc, and the user's own, which come first. */
    public static List<Grain> of(Scenario scenario) {
        List<Grain> all = new ArrayList<>();
        scenario.materials().forEach(material -> all.add(own(material)));
        List<Grain> usual = List.of(sand(FINE_SAND_M), food(), pellets(), waste(), floc());
        usual.stream().filter(grain -> all.stream().noneMatch(own -> own.name().equals(grain.name())))
                .forEach(all::add);
        return List.copyOf(all);
    }

    /** The kind of one name; empty if there is none. */
    public static Optional<Grain> named(String name, Scenario scenario) {
        return of(scenario).stream().filter(grain -> grain.name().equals(name)).findFirst();
    }

    static Grain sand(double sizeM) {
        double critical = Shields.criticalPa(sizeM, ARAGONITE_KG_PER_M3);
        return new Grain(SAND, sizeM, ARAGONITE_KG_PER_M3, Settling.mPerS(sizeM, ARAGONITE_KG_PER_M3), FORMULA_SPREAD,
                SMOOTH_PER_SAND * critical, critical, ROCK_PER_SAND * critical, 0,
                "fine sand of 0.2 mm, the part of a bed that is stirred up (assumed), of solid aragonite; settling by"
                        + " Ferguson & Church 2004, threshold on sand by Soulsby & Whitehouse 1997;"
                        + " light, platy grains move at 0.5 to 0.8 of it (Prager and others 1996)" + RATIOS);
    }

    /** [Vassallo2006] measured feed of 3 mm; of frozen food nothing published was found. */
    static Grain food() {
        return new Grain(FOOD, 0.002, 1050, 0.01, 0.5, 0.03, 0.06, 0.16, 0,
                "assumed: thawed fragments sink at 0.3 to 2 cm/s and lift at 0.02 to 0.12 Pa; no published value was"
                        + " found" + RATIOS);
    }

    static Grain pellets() {
        return new Grain("pellets", 0.003, 1150, 0.087, 0.2, 0.15, 0.3, 0.8, 0,
                "settling of 3 mm feed by Vassallo and others 2006; lifting at 0.2 to 0.4 Pa is from memory, density"
                        + " assumed" + RATIOS);
    }

    /** Settling of small fish's waste [Reid2009], from memory; [Carvajalino2020] measured the thresholds. */
    static Grain waste() {
        return new Grain(WASTE, 0.002, 1060, 0.02, 0.35, 0.06, 0.12, 0.32, 0,
                "thresholds of salmon waste by Carvajalino-Fernandez and others 2020; settling of small fish's waste,"
                        + " 1 to 3 cm/s, is from memory; size and density assumed");
    }

    /** What lifts first, by the best fit of [Cromey2002]. */
    static Grain floc() {
        return new Grain("floc", 0.001, 1030, 0.0015, 0.5, 0.018, 0.036, 0.096, 0,
                "lifts from smooth ground at the 0.018 Pa of Cromey and others 2002; settling of 0.05 to 0.3 cm/s is"
                        + " from memory" + RATIOS);
    }

    private static Grain own(Material material) {
        double size = material.sizeM();
        double density = material.densityKgPerM3();
        double sand = material.sandPa().orElseGet(() -> Shields.criticalPa(size, density));
        return new Grain(material.name(), size, density,
                material.settlingMPerS().orElseGet(() -> Settling.mPerS(size, density)), OWN_SPREAD,
                material.smoothPa().orElse(SMOOTH_PER_SAND * sand), sand,
                material.rockPa().orElse(ROCK_PER_SAND * sand), material.caughtFraction(),
                "given in the scenario file; what was left out follows from size and density" + RATIOS);
    }
}
