package slackwater.cli;

/** Text that a user wrote, as a cell of a table that a spreadsheet may open. */
final class Cell {
    private Cell() {
    }

    /** In quotes, and with an apostrophe before what a spreadsheet would take for a formula. */
    static String quoted(String text) {
        boolean formula = !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
        return "\"" + (formula ? "'" : "") + text.replace("\"", "\"\"") + "\"";
    }
}
