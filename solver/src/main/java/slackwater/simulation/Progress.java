package slackwater.simulation;

/** Told how far a run is. */
public interface Progress {
    Progress SILENT = (share, waterS, leftS) -> { };

    /**
     * @param share share of the longest possible run that is done, 0..1
     * @param waterS water time so far
     * @param leftS wall time left at most
     */
    void at(double share, double waterS, double leftS);
}
