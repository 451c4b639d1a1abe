package slackwater.analysis;

import java.util.List;
import slackwater.field.RunQuality;

/** The tank's verdict in plain sentences. */
final class Summary {
    private Summary() {
    }

    static String of(List<CoralReading> corals, StillWater still, RunQuality quality) {
        String settled = quality.settled() ? ""
                : " The water had not settled when the run stopped, so nothing here passes for certain.";
        return corals(corals) + " " + still(still) + settled;
    }

    private static String corals(List<CoralReading> corals) {
        if (corals.isEmpty()) {
            return "No corals to judge.";
        }
        long failed = count(corals, Verdict.FAIL);
        long marginal = count(corals, Verdict.MARGINAL);
        if (failed + marginal == 0) {
            return corals.size() == 1 ? "The coral stands in water that suits it."
                    : "All " + corals.size() + " corals stand in water that suits them.";
        }
        String ofAll = " of " + corals.size() + (corals.size() == 1 ? " coral" : " corals");
        String wrong = failed == 0 ? "" : failed + ofAll + (failed == 1 ? " stands" : " stand")
                + " in water that does not suit " + (failed == 1 ? "it" : "them") + ": " + names(corals, Verdict.FAIL)
                + ".";
        String close = marginal == 0 ? "" : marginal + ofAll + (marginal == 1 ? " is" : " are")
                + " too close to call: " + names(corals, Verdict.MARGINAL) + ".";
        return (wrong + " " + close).strip();
    }

    private static String still(StillWater still) {
        if (still.volumeM3() == 0) {
            return "No water is likely to stand still.";
        }
        String most = still.regions().isEmpty() ? "" : ", the largest stretch " + still.regions().get(0).place();
        return "Likely still: " + Figures.percent(still.shareFraction()) + " of the water ("
                + Figures.litres(still.volumeM3()) + " l)" + most + ".";
    }

    private static long count(List<CoralReading> corals, Verdict verdict) {
        return corals.stream().filter(reading -> reading.verdict() == verdict).count();
    }

    private static String names(List<CoralReading> corals, Verdict verdict) {
        return String.join(", ", corals.stream().filter(reading -> reading.verdict() == verdict)
                .map(reading -> reading.coral().name()).toList());
    }
}
