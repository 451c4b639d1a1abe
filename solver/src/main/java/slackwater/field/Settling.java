package slackwater.field;

/**
 * How far the numbers of a flow under way can be trusted.
 *
 * @param stage what is going on
 * @param share how far it is towards settled at best, 0..1
 * @param sinceChangeS water time since the start or the last change, seconds
 * @param averagedS water time that the mean is over, seconds
 */
public record Settling(Stage stage, double share, double sinceChangeS, double averagedS) {
    /** The flow still finds its way; it is being averaged; the averages have stopped changing. */
    public enum Stage { DEVELOPING, AVERAGING, SETTLED }

    public boolean settled() {
        return stage == Stage.SETTLED;
    }
}
