package slackwater.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import slackwater.report.ParetoPicture;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioWriter;
import slackwater.search.Front;
import slackwater.search.Offer;

/** The files of a comparison. */
final class CompareFiles {
    private CompareFiles() {
    }

    static void write(Path folder, Scenario scenario, List<Offer> offers, List<String> text) {
        OutFile.write(folder.resolve("compare.txt"), text);
        OutFile.write(folder.resolve("compare.csv"), CompareText.csv(offers));
        List<Offer> front = Front.of(offers);
        List<ParetoPicture.Mark> marks = new ArrayList<>();
        for (int n = 0; n < offers.size(); n++) {
            Offer offer = offers.get(n);
            if (offer.set().price().isPresent() && offer.proposal().isPresent()) {
                marks.add(new ParetoPicture.Mark(offer.set().label(), offer.set().price().getAsDouble(),
                        offer.inRange(), offer.kept(), front.contains(offer)));
            }
            if (offer.proposal().isPresent() && !offer.set().models().isEmpty()) {
                OutFile.write(folder.resolve("set-" + n + ".toml"), "# " + offer.set().label()
                        + ": the best layout found. Scanned rock is looked for beside this file.\n" + ScenarioWriter
                        .write(scenario.with(offer.proposal().get().confirmed().trial().pumps())));
            }
        }
        OutFile.write(folder.resolve("pareto.svg"), ParetoPicture.of(marks, scenario.corals().size()));
    }
}
