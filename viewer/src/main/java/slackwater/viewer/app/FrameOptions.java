package slackwater.viewer.app;

import java.util.Locale;
import picocli.CommandLine.Option;
import slackwater.cli.BadInput;
import slackwater.viewer.camera.Frame;

/** Options that say how large a picture is. */
final class FrameOptions {
    private static final int LEAST_PX = 64;
    private static final int MOST_PX = 16384;
    /** Twice 8K: with its smooth edges about 3 GB where no graphics card has memory of its own. */
    private static final long MOST_ALL_PX = 67_108_864;
    private static final double LEAST_SCALE = 0.5;
    private static final double MOST_SCALE = 4;

    @Option(names = "--size", paramLabel = "WxH", defaultValue = "1600x900",
            description = "Size in units of type; pixels at scale 1 (default ${DEFAULT-VALUE}).")
    private String size;

    @Option(names = "--scale", paramLabel = "S", defaultValue = "1",
            description = "Pixels a unit of type, 0.5 to 4 (default ${DEFAULT-VALUE}): 1.5 makes all finer.")
    private double scale;

    Frame frame() {
        String[] sides = size.toLowerCase(Locale.ROOT).split("x");
        try {
            int width = (int) Math.round(Integer.parseInt(sides[0]) * scale);
            int height = (int) Math.round(Integer.parseInt(sides[1]) * scale);
            if (sides.length == 2 && Math.min(width, height) >= LEAST_PX && Math.max(width, height) <= MOST_PX
                    && (long) width * height <= MOST_ALL_PX && scale >= LEAST_SCALE && scale <= MOST_SCALE) {
                return new Frame(width, height, scale);
            }
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException odd) {
            throw refused();
        }
        throw refused();
    }

    private BadInput refused() {
        return new BadInput("--size, --scale: found " + size + " at " + scale + ", must be like 1600x900, " + LEAST_PX
                + " to " + MOST_PX + " pixels each way and 67 million in all, at 0.5 to 4");
    }
}
