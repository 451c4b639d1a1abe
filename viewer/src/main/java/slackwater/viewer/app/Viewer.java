package slackwater.viewer.app;

/** Stands where the viewer will be: it says that it is not built yet and what to use until then. */
public final class Viewer {
    private static final int NOT_AVAILABLE = 2;

    private Viewer() {
    }

    /** Prints one sentence and exits with 2, since nothing can be shown yet. */
    public static void main(String[] arguments) {
        System.err.println("The viewer is not built yet. Use 'slackwater run SCENARIO': its report.html shows slices,"
                + " and flow.vti opens in any viewer of VTK files.");
        System.exit(NOT_AVAILABLE);
    }
}
