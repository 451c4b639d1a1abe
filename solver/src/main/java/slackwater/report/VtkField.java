package slackwater.report;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.result.UnreadableResult;

/** A field as {@link VtkImageData} wrote it, read back: the grid, and each array by its name. */
public final class VtkField {
    private static final int HEADER_BYTES = 8;
    private static final String VELOCITY = "mean_velocity";
    private static final String GUSTS = "wall_shear_gust_Pa";

    private final Path file;
    private final Map<String, byte[]> arrays = new LinkedHashMap<>();
    private Grid grid = new Grid(0, 0, 0, 1);

    private VtkField(Path file) {
        this.file = file;
    }

    /** @throws UnreadableResult where it is not such a file, or not all of it is there */
    public static VtkField read(Path file) throws UnreadableResult {
        VtkField field = new VtkField(file);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
            factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
            factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
            field.read(factory.createXMLStreamReader(in, StandardCharsets.UTF_8.name()));
            return field;
        } catch (XMLStreamException | IOException | IllegalArgumentException broken) {
            throw new UnreadableResult(file + ": is no whole field of ours; run the scenario again");
        }
    }

    public Grid grid() {
        return grid;
    }

    /** The names of all arrays, in the order of the file. */
    public Set<String> names() {
        return Collections.unmodifiableSet(arrays.keySet());
    }

    /** One value a cell. */
    public float[] array(String name) throws UnreadableResult {
        return floats(name, 1, 0);
    }

    /** The flow; needs every array of it but that of the gusts, which older files lack. */
    public FlowStatistics flow() throws UnreadableResult {
        byte[] water = bytes("fluid", 1);
        boolean[] fluid = new boolean[grid.cells()];
        for (int cell = 0; cell < fluid.length; cell++) {
            fluid[cell] = water[cell] != 0;
        }
        FlowStatistics flow = new FlowStatistics(grid, fluid, floats(VELOCITY, 3, 0), floats(VELOCITY, 3, 1),
                floats(VELOCITY, 3, 2), array("mean_speed"), array("rms_speed"), array("standard_error_speed"),
                array("wall_shear_Pa"), array("rms_wall_shear_Pa"));
        return arrays.containsKey(GUSTS) ? new FlowStatistics(grid, fluid, flow.meanU(), flow.meanV(), flow.meanW(),
                flow.meanSpeed(), flow.rmsSpeed(), flow.standardErrorSpeed(), flow.wallShear(), flow.rmsWallShear(),
                array(GUSTS)) : flow;
    }

    private float[] floats(String name, int components, int component) throws UnreadableResult {
        ByteBuffer buffer = ByteBuffer.wrap(bytes(name, components * Float.BYTES)).order(ByteOrder.LITTLE_ENDIAN);
        float[] values = new float[grid.cells()];
        for (int cell = 0; cell < values.length; cell++) {
            values[cell] = buffer.getFloat((cell * components + component) * Float.BYTES);
        }
        return values;
    }

    private byte[] bytes(String name, int bytesPerCell) throws UnreadableResult {
        return Optional.ofNullable(arrays.get(name)).filter(all -> all.length == (long) grid.cells() * bytesPerCell)
                .orElseThrow(() -> new UnreadableResult(file + ": has no whole array " + name
                        + ", an older version wrote it; run the scenario again"));
    }

    private void read(XMLStreamReader xml) throws XMLStreamException, IOException {
        while (xml.hasNext()) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                if (xml.getLocalName().equals("ImageData")) {
                    grid = grid(xml.getAttributeValue("", "WholeExtent"), xml.getAttributeValue("", "Spacing"));
                } else if (xml.getLocalName().equals("DataArray")) {
                    String name = xml.getAttributeValue("", "Name");
                    int components = Optional.ofNullable(xml.getAttributeValue("", "NumberOfComponents"))
                            .map(Integer::parseInt).orElse(1);
                    int bytes = "UInt8".equals(xml.getAttributeValue("", "type")) ? 1 : Float.BYTES;
                    arrays.put(name, content(xml, (long) grid.cells() * components * bytes));
                }
            }
        }
    }

    /** Counts and spacing; a lying count is found out here, before memory is asked for. */
    private Grid grid(String extent, String spacing) throws IOException {
        String[] ends = extent.trim().split("\\s+");
        int nx = Integer.parseInt(ends[1]);
        int ny = Integer.parseInt(ends[3]);
        int nz = Integer.parseInt(ends[5]);
        if (Math.min(nx, Math.min(ny, nz)) < 1 || (double) nx * ny * nz > Files.size(file)) {
            throw new IOException("the file is too short for its cells");
        }
        return new Grid(nx, ny, nz, Double.parseDouble(spacing.trim().split("\\s+")[0]));
    }

    private static byte[] content(XMLStreamReader xml, long bytes) throws XMLStreamException, IOException {
        Base64Gulps gulps = new Base64Gulps(Math.toIntExact(HEADER_BYTES + bytes));
        while (xml.next() == XMLStreamConstants.CHARACTERS) {
            gulps.take(xml.getTextCharacters(), xml.getTextStart(), xml.getTextLength());
        }
        ByteBuffer all = gulps.whole();
        if (all.order(ByteOrder.LITTLE_ENDIAN).getLong() != bytes) {
            throw new IOException("an array says another length than it has");
        }
        byte[] values = new byte[Math.toIntExact(bytes)];
        all.get(values);
        return values;
    }

    /** Base64 that comes in pieces of any length. */
    private static final class Base64Gulps {
        private final ByteBuffer decoded;
        private final byte[] waiting = new byte[1 << 14];
        private int filled;

        Base64Gulps(int length) {
            decoded = ByteBuffer.allocate(length);
        }

        void take(char[] text, int start, int length) throws IOException {
            for (int n = start; n < start + length; n++) {
                if (text[n] > ' ') {
                    waiting[filled++] = (byte) text[n];
                    if (filled == waiting.length) {
                        decode();
                    }
                }
            }
        }

        private void decode() throws IOException {
            byte[] some = Base64.getDecoder().decode(ByteBuffer.wrap(waiting, 0, filled)).array();
            filled = 0;
            if (some.length > decoded.remaining()) {
                throw new IOException("an array is longer than its cells");
            }
            decoded.put(some);
        }

        ByteBuffer whole() throws IOException {
            decode();
            if (decoded.hasRemaining()) {
                throw new IOException("an array ends early");
            }
            return decoded.flip();
        }
    }
}
