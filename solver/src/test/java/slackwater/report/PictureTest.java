package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;

class PictureTest {
    @Test
    void anIndependentReaderReadsTheImage() throws IOException {
        int[] palette = {0x102030, 0xf0e0d0, 0x00ff00};
        byte[] pixels = {0, 1, 2, 2, 1, 0};
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(Png.encode(3, 2, pixels, palette)));
        for (int n = 0; n < pixels.length; n++) {
            assertEquals(palette[pixels[n]], image.getRGB(n % 3, n / 3) & 0xffffff);
        }
    }

    @Test
    void theTopOfTheTankIsTheTopOfThePicture() throws IOException {
        FlowStatistics flow = MadeUpTank.flow(MadeUpTank.scenario(), 0.02);
        Slice slice = Slice.at(Plane.FRONT, 0.25, flow);
        Colouring colouring = Colouring.ofSpeed(flow, Scale.of(flow));
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(new SliceImage(slice, colouring).png()));
        int perCell = image.getWidth() / slice.columns();
        int column = 5;
        int row = 18;
        double speed = flow.meanSpeed()[slice.cell(column, row)];
        int middleX = column * perCell + perCell / 2;
        int middleY = image.getHeight() - row * perCell - perCell / 2 - 1;
        int expected = Cividis.rgb(colouring.fraction(speed));
        assertEquals(expected >> 8 & 0xff, image.getRGB(middleX, middleY) >> 8 & 0xff, 6);
    }

    /** Ends and middle of the published table: Nunez, Anderton and Renslow 2018, PLoS ONE 13:e0199239. */
    @Test
    void theColoursArePublishedOnes() {
        assertEquals(0x00224e, Cividis.rgb(0));
        assertEquals(0xfee838, Cividis.rgb(1));
        assertEquals(0xfee838, Cividis.rgb(7));
    }

    @Test
    void lightnessRisesAllTheWay() {
        double before = -1;
        for (int step = 0; step < 256; step += 3) {
            int rgb = Cividis.rgb((step + 0.5) / 256);
            // relative luminance: IEC 61966-2-1 weights on linearised channels
            double luminance = 0.2126 * Math.pow((rgb >> 16) / 255.0, 2.2)
                    + 0.7152 * Math.pow((rgb >> 8 & 255) / 255.0, 2.2)
                    + 0.0722 * Math.pow((rgb & 255) / 255.0, 2.2);
            assertTrue(luminance > before, "step " + step);
            before = luminance;
        }
    }

    @Test
    void outlinesASingleCellAsADiamondAndAHoleAsASecondLoop() {
        String single = new Outline(3, 3, (column, row) -> column == 1 && row == 1).path(10);
        assertEquals(1, loops(single));
        assertEquals(4, single.chars().filter(letter -> letter == 'L' || letter == 'M').count());
        String ring = new Outline(5, 5, (column, row) -> column != 2 || row != 2).path(10);
        assertEquals(2, loops(ring));
        assertEquals("", new Outline(3, 3, (column, row) -> false).path(10));
    }

    private static long loops(String path) {
        return path.chars().filter(letter -> letter == 'Z').count();
    }
}
