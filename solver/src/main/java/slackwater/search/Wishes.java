package slackwater.search;

import java.util.List;
import java.util.Optional;
import slackwater.geometry.Bounds;
import slackwater.scenario.Wall;

/**
 * What the keeper allows and pays.
 *
 * @param panes panes that may carry a pump, at least one
 * @param keepOut spaces in the tank that no pump may be in
 * @param cablePane the pane over whose rim all cables leave; empty where it does not matter
 * @param cableReachM glass between a pump and that pane that its cable can follow, metres
 * @param clearances distances to keep
 * @param tariffPerKWh price of a kilowatt hour in the keeper's own money
 * @param hoursPerDay hours a day that the pumps run at their set output
 */
public record Wishes(List<Wall> panes, List<Bounds> keepOut, Optional<Wall> cablePane, double cableReachM,
                     Clearances clearances, double tariffPerKWh, double hoursPerDay) {
    /** The front is looked through, any other pane may carry pumps; the tariff is an example, no source. */
    public static final Wishes NONE = new Wishes(List.of(Wall.BACK, Wall.LEFT, Wall.RIGHT), List.of(),
            Optional.empty(), 1.5, Clearances.USUAL, 0.30, 24);

    /**
     * Distances to keep, metres. All common practice, no source.
     *
     * @param glassM between a body and a pane that it does not hang on
     * @param coralM between a body and a coral
     * @param rockM between a body, its intake with it, and rock
     * @param sandM between a body and the sand
     * @param surfaceM between the top of an outlet and the surface, against drawing air
     * @param jetM a jet may point straight at a coral only from further away than this
     */
    public record Clearances(double glassM, double coralM, double rockM, double sandM, double surfaceM, double jetM) {
        public static final Clearances USUAL = new Clearances(0.03, 0.10, 0.03, 0.05, 0.03, 0.20);
    }

    /** The same on some of its panes only. */
    public Wishes on(List<Wall> allowed) {
        return new Wishes(allowed, keepOut, cablePane, cableReachM, clearances, tariffPerKWh, hoursPerDay);
    }

    /** The same at another tariff. */
    public Wishes at(double tariff) {
        return new Wishes(panes, keepOut, cablePane, cableReachM, clearances, tariff, hoursPerDay);
    }
}
