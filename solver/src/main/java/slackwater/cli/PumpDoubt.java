package slackwater.cli;

/** How far all pumps may be off together, as it is written on the command line. */
final class PumpDoubt {
    private static final double MOST_PERCENT = 60;

    private PumpDoubt() {
    }

    /**
     * As a share, 0..0.6.
     *
     * @param text such as 20 or 20%
     * @throws BadInput if it is no number or out of bounds
     */
    static double fraction(String text) {
        double percent = percent(text.strip());
        if (!(percent >= 0 && percent <= MOST_PERCENT)) {
            throw new BadInput("--pump-uncertainty: found '" + text + "', must be 0 to 60, such as 20%");
        }
        if (percent > 0 && percent < 1) {
            throw new BadInput("--pump-uncertainty: found '" + text + "', must be 0 or 1 to 60: write a fifth"
                    + " as 20%");
        }
        return percent / 100;
    }

    /** The number, or no number where there is none. */
    private static double percent(String text) {
        String digits = text.endsWith("%") ? text.substring(0, text.length() - 1).strip() : text;
        return digits.matches("[0-9]+(\\.[0-9]*)?|\\.[0-9]+") ? Double.parseDouble(digits) : Double.NaN;
    }
}
