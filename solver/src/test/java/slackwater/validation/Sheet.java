package slackwater.validation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Where a validation case enters what it found. */
final class Sheet {
    private final Story words;
    private final List<Row> rows = new ArrayList<>();
    private final List<Double> slack = new ArrayList<>();
    private final List<String> surprises = new ArrayList<>();
    private final Map<String, Plot> plots = new LinkedHashMap<>();
    private String grid = "";

    Sheet(Story words) {
        this.words = words;
    }

    /** Cells, and what else fixes the resolution. */
    void grid(String cells) {
        grid = cells;
    }

    /** A quantity that has to agree. */
    void within(String quantity, Range theirs, Tolerance tolerance, double ours) {
        enter(quantity, theirs, tolerance, ours, Row.WITHIN);
    }

    /** A quantity known not to agree, kept in sight; the test fails when it does. */
    void miss(String quantity, Range theirs, Tolerance tolerance, double ours) {
        enter(quantity, theirs, tolerance, ours, Row.MISS);
    }

    private void enter(String quantity, Range theirs, Tolerance tolerance, double ours, String expected) {
        Row row = Row.of(quantity, theirs, tolerance, ours);
        rows.add(row);
        slack.add(0.25 * tolerance.about(theirs, ours));
        if (!row.verdict().equals(expected)) {
            surprises.add("expected to be " + expected + ": " + row);
        }
    }

    /** A new plot, drawn below the table. */
    Plot plot(Plot.Axis x, Plot.Axis y) {
        Plot plot = new Plot(words.title(), x, y);
        plots.put(words.name() + (plots.isEmpty() ? "" : "-" + (plots.size() + 1)) + ".svg", plot);
        return plot;
    }

    Story story() {
        return words.withResults(grid, rows, List.copyOf(plots.keySet()));
    }

    Map<String, Plot> plots() {
        return plots;
    }

    /** How far the result in a row may drift where the flow is chaotic. */
    double slack(int row) {
        return slack.get(row);
    }

    /** Rows that came out other than expected. */
    List<String> surprises() {
        return surprises;
    }
}
