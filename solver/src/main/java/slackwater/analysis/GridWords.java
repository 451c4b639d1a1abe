package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the size of the cells does, in sentences. */
final class GridWords {
    private GridWords() {
    }

    static List<String> of(Evidence evidence, Optional<GridDoubt> doubt, double cellM) {
        List<String> sentences = new ArrayList<>();
        String cells = "The water was cut into cells of " + size(cellM) + ". ";
        if (doubt.isPresent()) {
            double coarseM = evidence.companion().orElseThrow().grid().cellSizeM();
            sentences.add(cells + "The same tank was also computed with cells of " + size(coarseM) + ": there the"
                    + " water " + bias(doubt.get().coarseBiasFraction()) + ". From the difference, the cells alone may"
                    + " put the speed of a typical place off by about " + Figures.percent(doubt.get().typicalFraction())
                    + "; each range holds this, or what the two show at the coral itself where that is more.");
        } else {
            sentences.add(cells + "How much their size matters was not computed: the ranges hold chance"
                    + (evidence.pumpFraction() > 0 ? " and the pumps" : "") + " only, and the true doubt is larger.");
        }
        if (!evidence.remark().isEmpty()) {
            sentences.add(evidence.remark());
        }
        return List.copyOf(sentences);
    }

    private static String bias(double fraction) {
        String share = Figures.percent(Math.abs(fraction));
        return "is " + (fraction < 0 ? share + " slower" : share + " faster") + " on the whole";
    }

    private static String size(double cellM) {
        return Figures.decimal(cellM * 100, 2).replaceFirst("\\.?0+$", "") + " cm";
    }
}
