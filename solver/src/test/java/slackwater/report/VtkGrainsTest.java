package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import slackwater.MadeUpTank;
import slackwater.detritus.Census;
import slackwater.detritus.Drift;
import slackwater.detritus.Grains;
import slackwater.detritus.Release;
import slackwater.detritus.Scene;

/** Read back as any XML reader would, and by the format's own library where there is one. */
class VtkGrainsTest {
    private static final String SCRIPT = """
            import sys, vtk
            reader = vtk.vtkXMLPolyDataReader()
            reader.SetFileName(sys.argv[1])
            reader.Update()
            grains = reader.GetOutput()
            print(grains.GetNumberOfPoints(), grains.GetNumberOfVerts(), grains.GetNumberOfCells())
            data = grains.GetPointData()
            names = sorted(data.GetArrayName(n) for n in range(data.GetNumberOfArrays()))
            print(*names)
            for n in range(grains.GetNumberOfPoints()):
                print(*(round(x, 6) for x in grains.GetPoint(n)),
                      *(round(data.GetArray(name).GetTuple1(n), 6) for name in names))
            """;
    private final Scene scene = new Scene(60, new float[] {0.1f, 0.2f}, new float[] {0.3f, 0.4f},
            new float[] {0, 0.45f}, new byte[] {4, 0}, new short[] {2, -1}, new short[] {0, 0});
    private final Release release = new Release(Grains.named("waste", MadeUpTank.scenario()).orElseThrow(),
            new Release.From.Everywhere(), 2, 1);
    private final Drift drift = new Drift(List.of(release), new Census(1, new int[0][][], new int[0][]),
            List.of(scene));

    @Test
    void theFormatsOwnLibraryReadsIt(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("grains.vtp");
        try (OutputStream out = Files.newOutputStream(file)) {
            VtkGrains.write(scene, drift, out);
        }
        assertEquals("""
                2 2 2
                at place release settling_m_per_s
                0.1 0.3 0.0 2.0 4.0 0.0 0.02
                0.2 0.4 0.45 -1.0 0.0 0.0 0.02""", VtkReader.run(SCRIPT, file.toString()));
    }

    @Test
    void theFormatsOwnLibraryReadsNoGrainsToo(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("none.vtp");
        try (OutputStream out = Files.newOutputStream(file)) {
            VtkGrains.write(Drift.NONE.scenes().get(0), Drift.NONE, out);
        }
        assertEquals("0 0 0\nat place release settling_m_per_s", VtkReader.run(SCRIPT, file.toString()));
    }

    @Test
    void everyGrainIsAPointWithItsNumbers() throws Exception {
        Document document = read(scene, drift);
        Element piece = (Element) document.getElementsByTagName("Piece").item(0);
        assertEquals("2", piece.getAttribute("NumberOfPoints"));
        assertEquals("2", piece.getAttribute("NumberOfVerts"));
        Map<String, String> arrays = arrays(document);
        assertEquals("0.10000 0.30000 0.00000 0.20000 0.40000 0.45000", arrays.get(""));
        assertEquals("4 0", arrays.get("place"));
        assertEquals("2 -1", arrays.get("at"));
        assertEquals("0 0", arrays.get("release"));
        assertEquals("0.02000 0.02000", arrays.get("settling_m_per_s"));
        assertEquals("0 1", arrays.get("connectivity"));
        assertEquals("1 2", arrays.get("offsets"));
    }

    @Test
    void noGrainsAreADocumentToo() throws Exception {
        Document document = read(Drift.NONE.scenes().get(0), Drift.NONE);
        assertEquals("0", ((Element) document.getElementsByTagName("Piece").item(0)).getAttribute("NumberOfPoints"));
    }

    private static Document read(Scene scene, Drift drift) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        VtkGrains.write(scene, drift, out);
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(out.toByteArray()));
    }

    private static Map<String, String> arrays(Document document) {
        Map<String, String> arrays = new TreeMap<>();
        NodeList nodes = document.getElementsByTagName("DataArray");
        for (int n = 0; n < nodes.getLength(); n++) {
            Element array = (Element) nodes.item(n);
            arrays.put(array.getAttribute("Name"), array.getTextContent().strip().replaceAll("\\s+", " "));
        }
        return arrays;
    }
}
