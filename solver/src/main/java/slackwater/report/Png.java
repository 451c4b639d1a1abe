package slackwater.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes an image as PNG (ISO/IEC 15948:2004). No graphics toolkit is needed, so it works on a machine without a
 * display.
 */
public final class Png {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte BITS = 8;
    private static final byte INDEXED = 3;
    private static final byte TRUE_COLOUR = 2;
    private static final int RGB = 3;
    /** The byte before a row that says that each byte is told as its difference from the one a pixel before. */
    private static final byte LEFT = 1;

    private Png() {
    }

    /** @param rgb three bytes a pixel, rows from the top */
    public static byte[] encode(int width, int height, byte[] rgb) {
        if (rgb.length != RGB * width * height) {
            throw new IllegalArgumentException("a picture must have three bytes a pixel");
        }
        int row = RGB * width;
        byte[] rows = new byte[height * (row + 1)];
        for (int y = 0; y < height; y++) {
            rows[y * (row + 1)] = LEFT;
            for (int n = 0; n < row; n++) {
                int before = n < RGB ? 0 : rgb[y * row + n - RGB];
                rows[y * (row + 1) + 1 + n] = (byte) (rgb[y * row + n] - before);
            }
        }
        ByteArrayOutputStream out = start(width, height, TRUE_COLOUR);
        chunk(out, "IDAT", deflated(rows, Deflater.DEFAULT_COMPRESSION));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    /**
     * @param pixels one palette entry a pixel, rows from the top
     * @param palette up to 256 colours as 0xRRGGBB
     */
    static byte[] encode(int width, int height, byte[] pixels, int[] palette) {
        ByteArrayOutputStream out = start(width, height, INDEXED);
        ByteBuffer colours = ByteBuffer.allocate(3 * palette.length);
        for (int rgb : palette) {
            colours.put((byte) (rgb >> 16)).put((byte) (rgb >> 8)).put((byte) rgb);
        }
        chunk(out, "PLTE", colours.array());
        chunk(out, "IDAT", compressed(width, height, pixels));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static ByteArrayOutputStream start(int width, int height, byte kind) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(SIGNATURE);
        chunk(out, "IHDR", ByteBuffer.allocate(13).putInt(width).putInt(height).put(BITS).put(kind).array());
        return out;
    }

    private static byte[] compressed(int width, int height, byte[] pixels) {
        byte[] rows = new byte[height * (width + 1)];
        for (int row = 0; row < height; row++) {
            // the first byte of a row names its filter: 0, none
            System.arraycopy(pixels, row * width, rows, row * (width + 1) + 1, width);
        }
        return deflated(rows, Deflater.BEST_COMPRESSION);
    }

    private static byte[] deflated(byte[] rows, int level) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream zip = new DeflaterOutputStream(out, new Deflater(level))) {
            zip.write(rows);
        } catch (IOException e) {
            throw new IllegalStateException("memory can always be written", e);
        }
        return out.toByteArray();
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(name);
        check.update(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(name);
        out.writeBytes(data);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }
}
