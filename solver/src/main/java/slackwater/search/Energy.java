package slackwater.search;

import java.util.List;
import java.util.OptionalDouble;
import slackwater.pump.JetSource;
import slackwater.scenario.Pump;
import slackwater.units.Seawater;

/**
 * What a layout draws and costs to run.
 *
 * @param powerW electric power at the set outputs, watts
 * @param kWhPerYear over 365 days
 * @param costPerYear in the keeper's own money
 */
public record Energy(double powerW, double kWhPerYear, double costPerYear) {
    private static final double DAYS = 365;

    /** Energy of some watts by the keeper's hours and tariff. */
    public static Energy of(double powerW, Wishes wishes) {
        double kWh = powerW * wishes.hoursPerDay() * DAYS / 1000;
        return new Energy(powerW, kWh, kWh * wishes.tariffPerKWh());
    }

    /** Electric power of a layout, watts; empty where one of its pumps does not say. */
    public static OptionalDouble powerW(List<Piece> pieces, List<Pump> pumps) {
        double sum = 0;
        for (int n = 0; n < pumps.size(); n++) {
            OptionalDouble one = pieces.get(n).model().powerW(pumps.get(n).outputFraction());
            if (one.isEmpty()) {
                return one;
            }
            sum += one.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    /** Power that the jets carry, watts: thrust times half the slipstream's speed. What ranks pumps of unknown draw. */
    static double jetsW(List<Pump> pumps) {
        return pumps.stream().map(JetSource::of).mapToDouble(jet -> Seawater.DENSITY_KG_PER_M3
                * jet.momentumFluxM4PerS2() * jet.slipstreamMPerS(0) / 2).sum();
    }

    /** Electric power, or that of the jets where a pump does not say what it draws. */
    static double rankingW(List<Piece> pieces, List<Pump> pumps) {
        return powerW(pieces, pumps).orElseGet(() -> jetsW(pumps));
    }

    /** Whether every pump runs at an output at which it is not heard. */
    public static boolean isQuiet(List<Piece> pieces, List<Pump> pumps) {
        for (int n = 0; n < pumps.size(); n++) {
            if (pumps.get(n).outputFraction() > pieces.get(n).model().quietOutputFraction()) {
                return false;
            }
        }
        return true;
    }
}
