package slackwater.analysis;

/** What a reading means for the keeper, from good to bad; {@code NONE} where there was nothing to judge. */
public enum Verdict {
    NONE("No verdict", '-'), PASS("Pass", '\u2713'), MARGINAL("Marginal", '~'), FAIL("Fail", '\u2717');

    private final String word;
    private final char symbol;

    Verdict(String word, char symbol) {
        this.word = word;
        this.symbol = symbol;
    }

    public String word() {
        return word;
    }

    /** A sign that tells the verdicts apart without colour. */
    public char symbol() {
        return symbol;
    }

    public Verdict worseOf(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
