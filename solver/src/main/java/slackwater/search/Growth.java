package slackwater.search;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/**
 * How fast plates grow outwards, and the tank after some months of it. A plate is drawn as a round disc with its middle
 * where the coral sits, square to the way it faces; the water has to go round it.
 *
 * <p>Published linear extension of plating and foliose Montipora: means from 1.2 (M. foliosa, Plucer-Rosario and
 * Randall 1987) to 4.2 cm a year (M. verrucosa, Stimson 1996), single colonies of M. aequituberculata up to 5.8 with a
 * mean of 2.9 (Browne 2012). Aquarium rates of 5 to 10 cm a year are told by keepers, no source.
 *
 * @param radialMPerYear growth of the radius, metres a year
 */
public record Growth(double radialMPerYear) {
    public static final Growth SLOW = new Growth(0.012);
    public static final Growth USUAL = new Growth(0.03);
    public static final Growth FAST = new Growth(0.058);
    /** Thinner than this no grid of 1 to 2 cm can hold a plate; a living one is, so it shades a little less. */
    private static final double THICKNESS_M = 0.02;
    private static final double MONTHS_PER_YEAR = 12;

    /**
     * A tank with grown plates.
     *
     * @param scenario plates are rock, and their corals sit on top of them
     * @param covered corals that a plate has grown over; they are not in the scenario
     */
    public record Grown(Scenario scenario, List<String> covered) {
    }

    /** Radius of a plate after some months, metres. */
    public double radiusM(Coral plate, double months) {
        return plate.sizeM() / 2 + radialMPerYear * months / MONTHS_PER_YEAR;
    }

    /** Months in which a plate grows by as much as this one in some months. */
    public double monthsFor(Growth other, double months) {
        return months * other.radialMPerYear() / radialMPerYear;
    }

    /**
     * The tank after some months, only the plates having grown; after 0 months they are drawn as they are now.
     *
     * @param cellSizeM edge of the cells that it will be computed on: a plate is at least as thick as one of them
     */
    public Grown grown(Scenario scenario, double months, double cellSizeM) {
        double thickness = Math.max(THICKNESS_M, cellSizeM);
        List<Rock> rocks = new ArrayList<>(scenario.rocks());
        List<Coral> corals = new ArrayList<>();
        List<String> covered = new ArrayList<>();
        List<Coral> plates = scenario.corals().stream().filter(one -> one.group() == CoralGroup.PLATING).toList();
        plates.forEach(plate -> rocks.add(new Rock(plate.name(), disc(plate, months, thickness))));
        for (Coral coral : scenario.corals()) {
            boolean plate = coral.group() == CoralGroup.PLATING;
            Vec3 top = coral.atM().plus(coral.facing().normalised().times(plate ? thickness : 0));
            Vec3 before = top.plus(coral.facing().normalised().times(thickness / 2));
            boolean under = plates.stream().filter(other -> other != coral)
                    .anyMatch(other -> disc(other, months, thickness).contains(before));
            if (under) {
                covered.add(coral.name());
            } else {
                corals.add(plate ? new Coral(coral.name(), coral.group(), top, coral.facing(),
                        2 * radiusM(coral, months), coral.range()) : coral);
            }
        }
        return new Grown(new Scenario(scenario.name(), scenario.tank(), List.copyOf(rocks), scenario.pumps(),
                scenario.returnLine(), scenario.overflow(), List.copyOf(corals)), List.copyOf(covered));
    }

    private Cylinder disc(Coral plate, double months, double thicknessM) {
        return new Cylinder(plate.atM(), plate.facing().normalised(), thicknessM, radiusM(plate, months));
    }
}
