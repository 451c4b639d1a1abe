package slackwater.field;

/** Is shown the water while it is averaged. What it does with it must not depend on wall time. */
public interface FlowObserver {
    FlowObserver NONE = new FlowObserver() {
        @Override
        public boolean wants(double timeS) {
            return false;
        }

        @Override
        public void see(Snapshot now) {
            // asks for nothing, so is shown nothing
        }
    };

    /** Asked at every sample of the statistics: whether to show this one. Seconds of water since averaging began. */
    boolean wants(double timeS);

    /** Shows one moment; the arrays hold until this returns. */
    void see(Snapshot now);
}
