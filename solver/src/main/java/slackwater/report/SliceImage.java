package slackwater.report;

import java.util.Base64;

/** A slice's values as a PNG image: linear between cell centres, from cells of water only. */
final class SliceImage {
    private static final int MOST_PIXELS = 960;
    private static final int MOST_PER_CELL = 8;
    private static final int COLOURS = 256;

    private final Slice slice;
    private final Colouring colouring;
    private final int perCell;

    SliceImage(Slice slice, Colouring colouring) {
        this.slice = slice;
        this.colouring = colouring;
        this.perCell = Math.max(1, Math.min(MOST_PER_CELL, MOST_PIXELS / Math.max(slice.columns(), slice.rows())));
    }

    /** The image as a data address. */
    String address() {
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(png());
    }

    byte[] png() {
        int width = slice.columns() * perCell;
        int height = slice.rows() * perCell;
        byte[] pixels = new byte[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double column = (x + 0.5) / perCell - 0.5;
                double row = (height - y - 0.5) / perCell - 0.5;
                double colour = Math.floor(colouring.fraction(value(column, row)) * COLOURS);
                pixels[y * width + x] = (byte) (int) Math.min(COLOURS - 1, colour);
            }
        }
        int[] palette = new int[COLOURS];
        for (int colour = 0; colour < COLOURS; colour++) {
            palette[colour] = Cividis.rgb((colour + 0.5) / COLOURS);
        }
        return Png.encode(width, height, pixels, palette);
    }

    private double value(double column, double row) {
        int left = (int) Math.floor(column);
        int low = (int) Math.floor(row);
        double sum = 0;
        double weights = 0;
        for (int n = 0; n < 4; n++) {
            int c = Math.max(0, Math.min(slice.columns() - 1, left + n % 2));
            int r = Math.max(0, Math.min(slice.rows() - 1, low + n / 2));
            int cell = slice.cell(c, r);
            double weight = (1 - Math.abs(column - left - n % 2)) * (1 - Math.abs(row - low - n / 2));
            if (slice.flow().fluid()[cell] && weight > 0) {
                sum += weight * colouring.values()[cell];
                weights += weight;
            }
        }
        return weights == 0 ? 0 : sum / weights;
    }
}
