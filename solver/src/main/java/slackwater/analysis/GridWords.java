package slackwater.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the size of the cells does, in sentences. */
final class GridWords {
    private static final double WORTH_SAYING = 0.05;

    private GridWords() {
    }

    static List<String> of(Evidence evidence, Optional<GridDoubt> doubt, List<CoralReading> corals, double cellM) {
        List<String> sentences = new ArrayList<>();
        String cells = "The water was cut into cells of " + Figures.cell(cellM) + ". ";
        if (doubt.isPresent()) {
            double coarseM = evidence.companion().orElseThrow().grid().cellSizeM();
            sentences.add(cells + compared(doubt.get(), coarseM));
            if (byCells(corals)) {
                sentences.add("The cells are the largest doubt at most of the corals: smaller ones, as with --cell-cm "
                        + Figures.cell(cellM / 2).replace(" cm", "") + ", narrow the ranges; a longer run does not.");
            }
        } else {
            sentences.add(cells + "How much their size matters was not computed: the ranges hold chance"
                    + (evidence.pumpFraction() > 0 ? " and the pumps" : "") + " only, and the true doubt is larger.");
        }
        if (!evidence.remark().isEmpty()) {
            sentences.add(evidence.remark());
        }
        return List.copyOf(sentences);
    }

    private static String compared(GridDoubt doubt, double coarseM) {
        double bias = doubt.coarseBiasFraction();
        String moving = bias < 0 ? "slower" : "faster";
        String onward = Math.abs(bias) < WORTH_SAYING ? "" : bias < 0
                ? " Smaller cells would likely show faster water yet, and less of it still."
                : " Smaller cells would likely show slower water yet, and more of it still.";
        return "The same tank was also computed with cells of " + Figures.cell(coarseM) + ": there the water is "
                + Figures.percent(Math.abs(bias)) + " " + moving + " on the whole." + onward
                + " From the difference, the cells put the speed of a typical place off by up to "
                + Figures.percent(doubt.typicalFraction()) + ", two times in three. Each range holds twice this, or"
                + " twice what the two grids show at the coral itself where that is more.";
    }

    private static boolean byCells(List<CoralReading> corals) {
        long most = corals.stream().filter(coral -> coral.doubt().gridMPerS().orElse(0)
                > Math.hypot(coral.doubt().chanceMPerS(), coral.doubt().pumpMPerS())).count();
        return 2 * most > corals.size();
    }
}
