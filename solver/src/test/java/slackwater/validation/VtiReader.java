package slackwater.validation;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Reads VTK ImageData with inline base64 data, written from the format's description alone (VTK file formats, XML,
 * "Image data"), so that a test sees what any other reader would.
 */
final class VtiReader {
    final int[] cells = new int[3];
    final double[] origin = new double[3];
    final double[] spacing = new double[3];
    private final Map<String, float[]> arrays = new HashMap<>();

    VtiReader(Path file) throws IOException {
        Element root = parse(file);
        int headerBytes = root.getAttribute("header_type").equals("UInt64") ? 8 : 4;
        Element image = (Element) root.getElementsByTagName("ImageData").item(0);
        String[] extent = image.getAttribute("WholeExtent").trim().split("\\s+");
        for (int axis = 0; axis < 3; axis++) {
            cells[axis] = Integer.parseInt(extent[2 * axis + 1]) - Integer.parseInt(extent[2 * axis]);
            origin[axis] = Double.parseDouble(image.getAttribute("Origin").trim().split("\\s+")[axis]);
            spacing[axis] = Double.parseDouble(image.getAttribute("Spacing").trim().split("\\s+")[axis]);
        }
        NodeList list = root.getElementsByTagName("DataArray");
        for (int n = 0; n < list.getLength(); n++) {
            Element array = (Element) list.item(n);
            if (array.getAttribute("type").equals("Float32")) {
                ByteBuffer bytes = ByteBuffer.wrap(Base64.getDecoder().decode(array.getTextContent().trim()));
                float[] values = new float[(bytes.capacity() - headerBytes) / Float.BYTES];
                bytes.position(headerBytes).slice().order(ByteOrder.LITTLE_ENDIAN).asFloatBuffer().get(values);
                arrays.put(array.getAttribute("Name"), values);
            }
        }
    }

    private static Element parse(Path file) throws IOException {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())
                    .getDocumentElement();
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(e);
        }
    }

    float[] array(String name) {
        return arrays.get(name);
    }

    int index(int i, int j, int k) {
        return (k * cells[1] + j) * cells[0] + i;
    }

    /** Trilinear interpolation between cell centres of one component of mean_velocity, m/s; the position in metres. */
    double velocity(int component, double x, double y, double z) {
        double[] at = {(x - origin[0]) / spacing[0] - 0.5, (y - origin[1]) / spacing[1] - 0.5,
            (z - origin[2]) / spacing[2] - 0.5};
        double sum = 0;
        for (int corner = 0; corner < 8; corner++) {
            double weight = 1;
            int[] cell = new int[3];
            for (int axis = 0; axis < 3; axis++) {
                int low = (int) Math.floor(at[axis]);
                int bit = corner >> axis & 1;
                cell[axis] = Math.max(0, Math.min(cells[axis] - 1, low + bit));
                weight *= bit == 1 ? at[axis] - low : 1 - at[axis] + low;
            }
            sum += weight * array("mean_velocity")[3 * index(cell[0], cell[1], cell[2]) + component];
        }
        return sum;
    }
}
