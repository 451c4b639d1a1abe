package slackwater.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slackwater.pump.JetSource;
import slackwater.scenario.Scenario;
import slackwater.units.Seawater;

/** What pumps that are not quite what their makers say do to the findings, in sentences. */
final class PumpWords {
    /** An example where the user gave no figure: a common difference between box and tank, no source. */
    static final double EXAMPLE_FRACTION = 0.2;
    /** Round jets are turbulent all along above about this; common knowledge of the field, Rajaratnam 1976. */
    static final double TURBULENT_REYNOLDS = 3000;

    private PumpWords() {
    }

    static List<String> of(Scenario scenario, List<CoralReading> corals, double fraction) {
        List<String> sentences = new ArrayList<>();
        if (fraction > 0) {
            sentences.add("All pumps and the return may together deliver up to " + Figures.percent(fraction)
                    + " more or less than they are set to (95 %); every speed then changes by the same share, and the"
                    + " ranges and the still water hold that.");
        } else {
            sentences.add("A pump is known here only by its maker's flow and its outlet, and taken at its word."
                    + closest(corals).map(PumpWords::example).orElse("")
                    + " Say how well you know yours with --pump-uncertainty.");
        }
        sentences.add("Speeds follow the pumps in step only where all of them are off by the same share: a single worn"
                + " pump also moves the places where jets meet. Slow corners, and water close to smooth glass, follow a"
                + " little less than in step.");
        weak(scenario).forEach(jet -> sentences.add("The jet of '" + jet.name() + "' is weak: its Reynolds number is"
                + " about " + Figures.decimal(jet.reynolds(Seawater.KINEMATIC_VISCOSITY_M2_PER_S), 0) + ", and below "
                + Figures.decimal(TURBULENT_REYNOLDS, 0) + " a jet may flow smoothly for a while. Its speeds need not"
                + " follow its output in step."));
        return List.copyOf(sentences);
    }

    private static String example(CoralReading coral) {
        Doubt doubt = coral.doubt().withPumps(EXAMPLE_FRACTION, coral.reading().meanMPerS());
        Interval interval = Interval.about(coral.reading().meanMPerS(), doubt);
        Verdict verdict = CoralJudge.verdict(interval, coral.range(), coral.verdict() == Verdict.PASS);
        return " Were all of them up to " + Figures.percent(EXAMPLE_FRACTION) + " off, " + coral.coral().name()
                + ", the coral closest to a limit, would have " + Figures.interval(interval) + " cm/s: "
                + verdict.word() + ".";
    }

    /** The coral whose reading is closest to one of its limits, as a share of the reading. */
    private static Optional<CoralReading> closest(List<CoralReading> corals) {
        return corals.stream().filter(coral -> Double.isFinite(coral.interval().highMPerS()))
                .min(Comparator.comparingDouble(coral -> Math.min(
                        Math.abs(coral.reading().meanMPerS() - coral.range().lowMPerS()),
                        Math.abs(coral.range().highMPerS() - coral.reading().meanMPerS()))
                        / coral.reading().meanMPerS()));
    }

    private static List<JetSource> weak(Scenario scenario) {
        Stream<JetSource> pumps = scenario.pumps().stream().filter(Reasons::isRunning).map(JetSource::of);
        Stream<JetSource> fromSump = scenario.returnLine().stream().map(JetSource::of);
        return Stream.concat(pumps, fromSump).filter(jet -> jet.flowM3PerS() > 0)
                .filter(jet -> jet.reynolds(Seawater.KINEMATIC_VISCOSITY_M2_PER_S) < TURBULENT_REYNOLDS).toList();
    }
}
