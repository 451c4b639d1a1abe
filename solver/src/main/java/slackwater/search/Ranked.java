package slackwater.search;

/**
 * A trial and how it ranks.
 *
 * @param value less is better; comparable within one objective only
 */
public record Ranked(Trial trial, double value) {
    /** Whether it has a reading. */
    public boolean isRead() {
        return trial.outcome() instanceof Outcome.Read;
    }

    /** Its finding. */
    public Finding finding() {
        if (trial.outcome() instanceof Outcome.Read read) {
            return read.finding();
        }
        throw new IllegalStateException("trial " + trial.key() + " has no reading");
    }
}
