package slackwater.search;

import java.util.List;
import slackwater.scenario.Pump;

/**
 * What makes one layout better than another, as a number: less is better. In this order: corals out of range, how far
 * the corals are from where a fifth more or less does no harm, still water close to bed and rock, water too fast for
 * any coral and moving sand, watts.
 *
 * <p>Alike means in the same step of 2 %, counted from 0 and up to 198 %: so 2.1 and 3.9 % are alike, and 3.9 and 4.1 %
 * are not. That makes an order that never goes round in circles, which "within 2 % of each other" would.
 *
 * @param order whether a later aim counts only between layouts that are alike in all earlier ones, or each by weight
 * @param weights of the aims where each counts by weight
 */
public record Objective(Order order, Weights weights) {
    /** How the aims are put together. */
    public enum Order { LEXICOGRAPHIC, WEIGHTED }

    /** Common practice, no source. Each aim is a share about 0..1, but for the number of corals. */
    public record Weights(double out, double discomfort, double still, double strong, double power) {
        public static final Weights USUAL = new Weights(10, 8, 2, 2, 0.5);
    }

    public static final Objective USUAL = new Objective(Order.LEXICOGRAPHIC, Weights.USUAL);
    /** A trial without a reading ranks behind every one with one, and behind every layout that is not allowed. */
    static final double FAILED = 1e15;
    private static final double REFUSED = 1e13;
    private static final double STEPS = 100;
    /** Height of a step: about what the large cells make up; an estimate, no source. */
    private static final double ALIKE = 0.02;
    private static final double SAND_WARN_FRACTION = 0.8;

    /** The aims of one layout. */
    record Aims(int out, double discomfort, double still, double strong, double power) {
    }

    /** Less is better. */
    double value(Outcome outcome, List<Piece> pieces, List<Pump> pumps) {
        if (!(outcome instanceof Outcome.Read read)) {
            return FAILED;
        }
        Aims aims = aims(read.finding(), pieces, pumps);
        return order == Order.LEXICOGRAPHIC ? lexicographic(aims) : weighted(aims, weights);
    }

    /** A layout that is not allowed, by how far it is off. */
    static double refused(double breachM) {
        return REFUSED * (1 + Math.min(10, breachM));
    }

    static Aims aims(Finding finding, List<Piece> pieces, List<Pump> pumps) {
        double discomfort = finding.corals().stream().mapToDouble(CoralFinding::discomfort).average().orElse(0);
        double sand = Math.max(0, finding.sandFraction() / SAND_WARN_FRACTION - 1);
        List<Pump> full = pumps.stream().map(pump -> Pumps.at(pump, 1)).toList();
        double most = Math.max(1e-9, Energy.rankingW(pieces, full));
        return new Aims(finding.out(), discomfort, finding.stillShareFraction(),
                finding.strongShareFraction() + sand, Energy.rankingW(pieces, pumps) / most);
    }

    /** Aims cut into steps and written one behind the other, as digits are; the rest breaks ties. */
    private static double lexicographic(Aims aims) {
        double value = aims.out();
        for (double step : new double[] {step(aims.discomfort()), step(aims.still()), step(aims.strong()),
            step(aims.power())}) {
            value = value * STEPS + step;
        }
        double rest = weighted(aims, new Weights(0, 4, 2, 1, 0.5));
        return value + rest / (1 + rest);
    }

    private static double step(double aim) {
        return Math.min(STEPS - 1, Math.floor(aim / ALIKE));
    }

    private static double weighted(Aims aims, Weights weights) {
        return weights.out() * aims.out() + weights.discomfort() * aims.discomfort() + weights.still() * aims.still()
                + weights.strong() * aims.strong() + weights.power() * aims.power();
    }
}
