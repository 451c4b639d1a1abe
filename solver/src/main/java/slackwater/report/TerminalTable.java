package slackwater.report;

import java.util.Locale;
import slackwater.analysis.Assessment;
import slackwater.analysis.ClearanceWords;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
import slackwater.analysis.Figures;
import slackwater.analysis.Leavings;
import slackwater.analysis.SandBed;
import slackwater.analysis.Sloshing;
import slackwater.analysis.StillWater;
import slackwater.result.FlowResult;

/** The short table for the terminal: no line above 100 columns, and no control character from the user's words. */
public final class TerminalTable {
    private static final int COLUMNS = 100;
    private static final int NAME_COLUMNS = 34;
    private static final String CLEARED = "%-36s %-30s %s\n";
    private static final String ROW = "%-10s %-34s %-12s %21s %12s\n";

    private TerminalTable() {
    }

    /** The whole table with a line end after each line. */
    public static String of(FlowResult result) {
        Assessment assessment = result.assessment();
        StringBuilder table = new StringBuilder();
        if (!assessment.corals().isEmpty()) {
            table.append(row("Verdict", "Coral", "Group", "cm/s (95 % range)", "Wanted"));
            assessment.corals().forEach(coral -> table.append(row(coral)));
            table.append('\n');
        }
        table.append(clearances(assessment));
        table.append(wrapped(assessment.verdict().symbol() + " " + assessment.verdict().word() + ": "
                + assessment.summary()));
        StillWater still = assessment.stillWater();
        table.append(wrapped("Still water: likely " + Figures.litres(still.volumeM3()) + " l, surely "
                + Figures.litres(still.surelyM3()) + " l, possibly " + Figures.litres(still.possiblyM3())
                + " l; expected " + Figures.litres(still.expectedM3()) + " l."));
        assessment.sandBed().map(SandBed::sentence).ifPresent(sentence -> table.append(wrapped(sentence)));
        Sloshing.warnings(result.scenario()).forEach(warning -> table.append(wrapped(warning)));
        assessment.leavings().ifPresent(leavings -> {
            for (int n = 0; n < leavings.heaps().size(); n++) {
                table.append(wrapped(Leavings.sentence(leavings.litter().fates().get(n), leavings.heaps().get(n))));
            }
        });
        return table.toString();
    }

    /** How long food and fine sand take to leave each coral; nothing where that was not tried. */
    private static String clearances(Assessment assessment) {
        StringBuilder table = new StringBuilder();
        for (CoralReading coral : assessment.corals()) {
            if (!coral.clearances().isEmpty()) {
                table.append(String.format(Locale.ROOT, CLEARED,
                        Html.shortened(printable(coral.coral().name()), NAME_COLUMNS),
                        ClearanceWords.range(coral.clearances().get(0)),
                        ClearanceWords.range(coral.clearances().get(1))));
            }
        }
        return table.isEmpty() ? "" : String.format(Locale.ROOT, CLEARED, "Gone (if it clings less to more)",
                "food", "fine sand") + table + "\n";
    }

    private static String row(CoralReading coral) {
        return row(coral.verdict().symbol() + " " + coral.verdict().word(),
                Html.shortened(printable(coral.coral().name()), NAME_COLUMNS), CoralNeeds.nameOf(coral.coral().group()),
                CoralTable.reading(coral), CoralTable.wanted(coral));
    }

    private static String row(String verdict, String name, String group, String reading, String wanted) {
        return String.format(Locale.ROOT, ROW, verdict, name, group, reading, wanted);
    }

    static String wrapped(String text) {
        StringBuilder lines = new StringBuilder();
        int column = 0;
        for (String word : printable(text).split(" ")) {
            String piece = Html.shortened(word, COLUMNS - 2);
            if (column > 0 && column + 1 + piece.length() > COLUMNS) {
                lines.append('\n').append("  ");
                column = 2;
            } else if (column > 0) {
                lines.append(' ');
                column++;
            }
            lines.append(piece);
            column += piece.length();
        }
        return lines.append('\n').toString();
    }

    /** Without characters that would steer the terminal. */
    static String printable(String text) {
        return text.replaceAll("\\p{Cntrl}|\\p{Cf}", "?");
    }
}
