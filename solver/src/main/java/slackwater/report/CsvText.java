package slackwater.report;

/** Text that a user wrote, as a cell of a table (RFC 4180) that a spreadsheet may open. */
public final class CsvText {
    private static final String STARTS_A_FORMULA = "=+-@\t\r\n";

    private CsvText() {
    }

    /** In quotes, and with an apostrophe before what a spreadsheet would take for a formula. */
    public static String quoted(String text) {
        boolean formula = !text.isEmpty() && STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0;
        return '"' + (formula ? "'" : "") + text.replace("\"", "\"\"") + '"';
    }
}
