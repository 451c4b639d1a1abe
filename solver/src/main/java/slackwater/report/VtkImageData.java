package slackwater.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.function.ObjIntConsumer;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;

/**
 * The field as VTK XML ImageData (VTK file formats, "XML file formats", serial image data): cell data in metres,
 * metres per second and pascals, each array as base64 of a 64-bit byte count and little-endian values. Written as a
 * stream: memory does not grow with the grid.
 */
public final class VtkImageData {
    private static final int CHUNK_BYTES = 3 * 4096;

    private VtkImageData() {
    }

    /**
     * Writes the whole document as UTF-8 and leaves the stream open.
     *
     * @param stillProbability that a cell's water stands still, 0..1, one value a cell
     */
    public static void write(FlowStatistics flow, float[] stillProbability, OutputStream stream) throws IOException {
        write(flow, stillProbability, Map.of(), stream);
    }

    /**
     * The same with more arrays.
     *
     * @param more by name, one value a cell
     */
    public static void write(FlowStatistics flow, float[] stillProbability, Map<String, float[]> more,
                             OutputStream stream) throws IOException {
        OutputStream out = new BufferedOutputStream(stream);
        Grid grid = flow.grid();
        String extent = "0 " + grid.nx() + " 0 " + grid.ny() + " 0 " + grid.nz();
        double h = grid.cellSizeM();
        text(out, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<VTKFile type=\"ImageData\" version=\"1.0\" byte_order=\"LittleEndian\" header_type=\"UInt64\">\n"
                + "<ImageData WholeExtent=\"" + extent + "\" Origin=\"0 0 0\" Spacing=\"" + h + " " + h + " " + h
                + "\">\n<Piece Extent=\"" + extent + "\">\n"
                + "<CellData Scalars=\"mean_speed\" Vectors=\"mean_velocity\">\n");
        array(out, "mean_velocity", "Float32\" NumberOfComponents=\"3", 12, grid.cells(), (buffer, cell) ->
                buffer.putFloat(flow.meanU()[cell]).putFloat(flow.meanV()[cell]).putFloat(flow.meanW()[cell]));
        array(out, "mean_speed", "Float32", 4, grid.cells(), (buffer, cell) -> buffer.putFloat(flow.meanSpeed()[cell]));
        array(out, "rms_speed", "Float32", 4, grid.cells(), (buffer, cell) -> buffer.putFloat(flow.rmsSpeed()[cell]));
        array(out, "standard_error_speed", "Float32", 4, grid.cells(),
                (buffer, cell) -> buffer.putFloat(flow.standardErrorSpeed()[cell]));
        array(out, "wall_shear_Pa", "Float32", 4, grid.cells(),
                (buffer, cell) -> buffer.putFloat(flow.wallShear()[cell]));
        array(out, "rms_wall_shear_Pa", "Float32", 4, grid.cells(),
                (buffer, cell) -> buffer.putFloat(flow.rmsWallShear()[cell]));
        array(out, "still_probability", "Float32", 4, grid.cells(),
                (buffer, cell) -> buffer.putFloat(stillProbability[cell]));
        array(out, "fluid", "UInt8", 1, grid.cells(),
                (buffer, cell) -> buffer.put((byte) (flow.fluid()[cell] ? 1 : 0)));
        for (Map.Entry<String, float[]> one : more.entrySet()) {
            array(out, one.getKey(), "Float32", 4, grid.cells(), (buffer, cell) ->
                    buffer.putFloat(one.getValue()[cell]));
        }
        text(out, "</CellData>\n</Piece>\n</ImageData>\n</VTKFile>\n");
        out.flush();
    }

    private static void array(OutputStream out, String name, String type, int bytesPerCell, int cells,
                              ObjIntConsumer<ByteBuffer> value) throws IOException {
        text(out, "<DataArray Name=\"" + name + "\" type=\"" + type + "\" format=\"binary\">");
        ByteBuffer buffer = ByteBuffer.allocate(CHUNK_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        try (OutputStream base64 = Base64.getEncoder().wrap(new Unclosed(out))) {
            buffer.putLong((long) bytesPerCell * cells);
            for (int cell = 0; cell < cells; cell++) {
                if (buffer.remaining() < bytesPerCell) {
                    drain(buffer, base64);
                }
                value.accept(buffer, cell);
            }
            drain(buffer, base64);
        }
        text(out, "</DataArray>\n");
    }

    private static void drain(ByteBuffer buffer, OutputStream out) throws IOException {
        out.write(buffer.array(), 0, buffer.position());
        buffer.clear();
    }

    private static void text(OutputStream out, String text) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Lets the encoder write its last characters without closing the file beneath it. */
    private static final class Unclosed extends OutputStream {
        private final OutputStream out;

        Unclosed(OutputStream out) {
            this.out = out;
        }

        @Override
        public void write(int value) throws IOException {
            out.write(value);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            out.write(bytes, offset, length);
        }

        @Override
        public void close() throws IOException {
            out.flush();
        }
    }
}
