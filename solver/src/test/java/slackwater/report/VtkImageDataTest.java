package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;

/** Read back by an XML parser and a decoder of the test's own, and by the format's own library where there is one. */
class VtkImageDataTest {
    private static final String SCRIPT = """
            import sys, vtk
            reader = vtk.vtkXMLImageDataReader()
            reader.SetFileName(sys.argv[1])
            reader.Update()
            image = reader.GetOutput()
            cells = image.GetCellData()
            print(*image.GetDimensions(), *image.GetOrigin(), *image.GetSpacing(), image.GetNumberOfCells())
            names = [cells.GetArrayName(n) for n in range(cells.GetNumberOfArrays())]
            print(*names)
            n = int(sys.argv[2])
            print(*cells.GetArray('mean_velocity').GetTuple3(n), cells.GetArray('mean_speed').GetTuple1(n),
                  cells.GetArray('rms_speed').GetTuple1(n), cells.GetArray('wall_shear_Pa').GetTuple1(n),
                  cells.GetArray('fluid').GetTuple1(n))
            """;
    private final FlowStatistics flow = MadeUpTank.flow(MadeUpTank.scenario(), 0.02);
    private final Grid grid = flow.grid();
    private final float[] still = MadeUpTank.result(MadeUpTank.scenario(), flow).assessment().stillWater()
            .probability();

    @Test
    void anXmlParserReadsItBack() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        VtkImageData.write(flow, still, out);
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(out.toByteArray()));
        Element image = (Element) document.getElementsByTagName("ImageData").item(0);
        assertEquals("0 60 0 25 0 24", image.getAttribute("WholeExtent"));
        assertEquals("0 0 0", image.getAttribute("Origin"));
        assertEquals("0.02 0.02 0.02", image.getAttribute("Spacing"));
        ByteBuffer velocity = array(document, "mean_velocity", 12);
        ByteBuffer speed = array(document, "mean_speed", 4);
        ByteBuffer rms = array(document, "rms_speed", 4);
        ByteBuffer shear = array(document, "wall_shear_Pa", 4);
        ByteBuffer probability = array(document, "still_probability", 4);
        ByteBuffer fluid = array(document, "fluid", 1);
        for (int cell = 0; cell < grid.cells(); cell++) {
            assertEquals(flow.meanU()[cell], velocity.getFloat());
            assertEquals(flow.meanV()[cell], velocity.getFloat());
            assertEquals(flow.meanW()[cell], velocity.getFloat());
            assertEquals(flow.meanSpeed()[cell], speed.getFloat());
            assertEquals(flow.rmsSpeed()[cell], rms.getFloat());
            assertEquals(flow.wallShear()[cell], shear.getFloat());
            assertEquals(still[cell], probability.getFloat());
            assertEquals(flow.fluid()[cell] ? 1 : 0, fluid.get());
        }
    }

    /** Gusts that were counted come back as they were; a file without them gives the estimate from mean and r.m.s. */
    @Test
    void gustsComeBackWhereTheyWereWritten(@TempDir Path folder) throws Exception {
        float[] counted = new float[grid.cells()];
        for (int cell = 0; cell < counted.length; cell++) {
            counted[cell] = cell % 7;
        }
        for (Map<String, float[]> more : List.of(Map.of("wall_shear_gust_Pa", counted), Map.<String, float[]>of())) {
            Path file = folder.resolve("flow.vti");
            try (OutputStream out = Files.newOutputStream(file)) {
                VtkImageData.write(flow, still, more, out);
            }
            FlowStatistics back = VtkField.read(file).flow();
            assertArrayEquals(more.isEmpty() ? flow.gustWallShear() : counted, back.gustWallShear());
            assertArrayEquals(flow.wallShear(), back.wallShear());
        }
    }

    @Test
    void theFormatsOwnLibraryReadsIt(@TempDir Path folder) throws Exception {
        Path file = folder.resolve("flow.vti");
        try (OutputStream out = Files.newOutputStream(file)) {
            VtkImageData.write(flow, still, out);
        }
        int cell = grid.index(20, 12, 18);
        String[] lines = VtkReader.run(SCRIPT, file.toString(), Integer.toString(cell)).split("\n");
        assertArrayEquals(new double[] {61, 26, 25, 0, 0, 0, 0.02, 0.02, 0.02, grid.cells()}, numbers(lines[0]), 1e-9);
        assertEquals("mean_velocity mean_speed rms_speed standard_error_speed wall_shear_Pa rms_wall_shear_Pa"
                + " still_probability fluid", lines[1]);
        assertArrayEquals(new double[] {flow.meanU()[cell], flow.meanV()[cell], flow.meanW()[cell],
            flow.meanSpeed()[cell], flow.rmsSpeed()[cell], flow.wallShear()[cell], 1}, numbers(lines[2]), 1e-7);
    }

    private static ByteBuffer array(Document document, String name, int bytesPerCell) {
        NodeList arrays = document.getElementsByTagName("DataArray");
        for (int n = 0; n < arrays.getLength(); n++) {
            Element element = (Element) arrays.item(n);
            if (element.getAttribute("Name").equals(name)) {
                ByteBuffer bytes = ByteBuffer.wrap(Base64.getDecoder().decode(element.getTextContent().strip()))
                        .order(ByteOrder.LITTLE_ENDIAN);
                assertEquals((long) bytesPerCell * 60 * 25 * 24, bytes.getLong(), name);
                assertEquals(bytesPerCell * 60 * 25 * 24, bytes.remaining(), name);
                return bytes;
            }
        }
        throw new AssertionError("no array " + name);
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
