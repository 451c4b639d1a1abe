package slackwater.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.IntFunction;
import slackwater.detritus.Drift;
import slackwater.detritus.Scene;

/**
 * Grains as VTK XML PolyData (VTK file formats, "XML file formats"), one point a grain in metres, in plain text: number
 * of its release (for each coral three of food and three of sand, by how hard they cling; food in the tank; waste in
 * the tank), place (0 in suspension, 1 on sand, 2 on rock, 3 on the bare bottom, 4 on a coral, 5 in the filter, 6 in a
 * pump) and the number of that coral or pump, from 0.
 */
public final class VtkGrains {
    private static final int A_LINE = 12;

    private VtkGrains() {
    }

    /** Writes the whole document as UTF-8 and leaves the stream open; no grains make a document without points. */
    public static void write(Scene scene, Drift drift, OutputStream stream) throws IOException {
        int grains = scene.grains();
        StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<VTKFile type=\"PolyData\" version=\"1.0\" byte_order=\"LittleEndian\">\n<PolyData>\n"
                + "<Piece NumberOfPoints=\"" + grains + "\" NumberOfVerts=\"" + grains
                + "\" NumberOfLines=\"0\" NumberOfStrips=\"0\" NumberOfPolys=\"0\">\n<PointData>\n");
        array(text, "Name=\"release\" type=\"Int32\"", grains, n -> "" + scene.group()[n]);
        array(text, "Name=\"place\" type=\"Int32\"", grains, n -> "" + scene.place()[n]);
        array(text, "Name=\"at\" type=\"Int32\"", grains, n -> "" + scene.at()[n]);
        array(text, "Name=\"settling_m_per_s\" type=\"Float32\"", grains, n -> String.format(Locale.ROOT, "%.5f",
                drift.releases().get(scene.group()[n]).grain().settlingMPerS()));
        text.append("</PointData>\n<Points>\n");
        array(text, "type=\"Float32\" NumberOfComponents=\"3\"", grains, n -> String.format(Locale.ROOT,
                "%.5f %.5f %.5f", scene.xM()[n], scene.yM()[n], scene.zM()[n]));
        text.append("</Points>\n<Verts>\n");
        array(text, "Name=\"connectivity\" type=\"Int32\"", grains, n -> "" + n);
        array(text, "Name=\"offsets\" type=\"Int32\"", grains, n -> "" + (n + 1));
        text.append("</Verts>\n</Piece>\n</PolyData>\n</VTKFile>\n");
        stream.write(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static void array(StringBuilder text, String attributes, int count, IntFunction<String> value) {
        text.append("<DataArray ").append(attributes).append(" format=\"ascii\">\n");
        for (int n = 0; n < count; n++) {
            text.append(value.apply(n)).append((n + 1) % A_LINE == 0 || n + 1 == count ? '\n' : ' ');
        }
        text.append("</DataArray>\n");
    }
}
