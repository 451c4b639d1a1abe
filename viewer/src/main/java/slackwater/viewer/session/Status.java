package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Verdict;
import slackwater.field.Settling;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.live.LiveFlow;
import slackwater.viewer.live.Snapshot;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Units;

/** What there is to say about the water of a tank, in a keeper's words. */
public final class Status {
    private static final double LETTER_UNITS = 7;

    private Status() {
    }

    /**
     * The lines below the title of a picture.
     *
     * @param awaited whether still water is wanted that cannot be told yet
     * @param widthUnits how wide the picture is
     */
    public static List<String> notes(Side side, Units units, boolean awaited, double widthUnits) {
        return said(side, units, awaited).stream().flatMap(note -> wrapped(note, widthUnits).stream()).toList();
    }

    /** Lines of so many letters as surely have room; letters are a little narrower on average. */
    static List<String> wrapped(String text, double widthUnits) {
        int most = (int) Math.max(20, (widthUnits - 40) / LETTER_UNITS);
        List<String> lines = new ArrayList<>();
        String left = text;
        while (left.length() > most) {
            int end = left.lastIndexOf(' ', most);
            int cut = end > 0 ? end : most;
            lines.add(left.substring(0, cut));
            left = left.substring(cut).strip();
        }
        lines.add(left);
        return lines;
    }

    private static List<String> said(Side side, Units units, boolean awaited) {
        List<String> notes = new ArrayList<>();
        if (side.flow().isEmpty()) {
            notes.add(side.mean().map(mean -> "A finished result on cells of " + units.length(mean.grid().cellSizeM())
                    + ".").orElse("A layout that has not been computed."));
            return notes;
        }
        LiveFlow flow = side.flow().get();
        if (flow.cellSizeM().isEmpty()) {
            notes.add("Choosing cells that this machine keeps up with.");
            return notes;
        }
        notes.add("Water under way on cells of " + units.length(flow.cellSizeM().getAsDouble()) + side.snapshot()
                .map(now -> String.format(Locale.ROOT, ", %.0f s so far; 'slackwater run' gives the verdict.",
                        now.waterS())).orElse("."));
        notes.add(settling(side) + (awaited ? " Still water shows once the flow has found its way." : ""));
        return notes;
    }

    /** How far the numbers can be trusted, in a sentence. */
    public static String settling(Side side) {
        Optional<Snapshot> now = side.snapshot();
        if (side.flow().isEmpty()) {
            return side.settled() ? "Settled when the run ended."
                    : "The run ended before the water had settled: numbers are grey.";
        }
        if (now.isEmpty()) {
            return "The water is about to start.";
        }
        if (!now.get().scenario().equals(side.scenario())) {
            return "The water is that of the layout before; its numbers are grey.";
        }
        Settling settling = now.get().settling();
        return switch (settling.stage()) {
            case DEVELOPING -> String.format(Locale.ROOT, "Still developing, %.0f s since the change: numbers"
                    + " are grey.",
                    settling.sinceChangeS());
            case AVERAGING -> String.format(Locale.ROOT, "Averaging, %.0f %% of the way: numbers are still grey.",
                    100 * settling.share());
            case SETTLED -> String.format(Locale.ROOT, "Settled: means over %.0f s.", settling.averagedS());
        };
    }

    /** A coral's speed and how it lies to what the coral wants, as far as one grid can tell. */
    public static String reading(CoralReading reading, Units units) {
        return units.speed(reading.reading().meanMPerS()) + " " + units.speedUnit() + ", " + suits(reading);
    }

    /** "suits it", "too slow" or "too fast": no verdict, which needs a run. */
    public static String suits(CoralReading reading) {
        double mean = reading.reading().meanMPerS();
        return mean < reading.range().lowMPerS() ? "too slow" : mean > reading.range().highMPerS() ? "too fast"
                : "suits it";
    }

    /** The colour that goes with it. */
    static Colour accent(CoralReading reading) {
        return Palette.of(suits(reading).equals("suits it") ? Verdict.PASS : Verdict.MARGINAL);
    }

    /** How far it is towards settled, 0..1. */
    public static double share(Side side) {
        if (side.flow().isEmpty()) {
            return 1;
        }
        return side.snapshot().filter(now -> now.scenario().equals(side.scenario()))
                .map(now -> now.settling().settled() ? 1 : Math.min(0.98, now.settling().share())).orElse(0.0);
    }

    /** How the water's clock goes. */
    public static String pace(Side side) {
        if (side.flow().map(LiveFlow::paused).orElse(false)) {
            return "The water is paused (Space).";
        }
        if (side.snapshot().isPresent() && side.flow().map(LiveFlow::resting).orElse(false)) {
            return "The water stands still as it was last.";
        }
        return side.snapshot().map(now -> now.pace() <= 0 ? "" : String.format(Locale.ROOT,
                "1 s here is %.1f s in the tank.", now.pace())).orElse("");
    }
}
