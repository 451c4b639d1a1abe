package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import slackwater.MadeUpTank;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.report.ParetoPicture.Mark;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;

/** The pictures of the search, read as XML by another reader. */
class SearchPicturesTest {
    private static Document read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void aLayoutShowsPumpsCoralsAndVerdictsAndObeysNoName() throws Exception {
        Scenario tank = MadeUpTank.with(MadeUpTank.scenario(), List.of(MadeUpTank.coral("<script>x</script>",
                CoralGroup.SOFT, new Vec3(0.5, 0.2, 0.1), 0.1)));
        String svg = LayoutPicture.of(tank, tank.pumps().subList(0, 1), List.of(Verdict.FAIL));
        Document picture = read(svg);
        assertEquals(0, picture.getElementsByTagName("script").getLength());
        assertTrue(picture.getDocumentElement().getTextContent().contains("1 \u2717 Fail: <script>x</script>"));
        // In each of the two views a line for each pump, and the surface in the one from the front.
        assertEquals(2 * (2 + 1) + 1, picture.getElementsByTagName("line").getLength());
        assertFalse(svg.contains("NaN"));
    }

    /** A jet along a pane close by, and one that blows out of the water: their lines end where the tank does. */
    @Test
    void noLineOfAJetLeavesTheTank() throws Exception {
        Scenario tank = MadeUpTank.with(MadeUpTank.scenario(), List.of()).with(List.of(
                MadeUpTank.pump("along", new Vec3(1.16, 0.45, 0.36), 100, 0, 1),
                MadeUpTank.pump("up", new Vec3(0.6, 0.25, 0.45), 0, 80, 1)));
        Document picture = read(LayoutPicture.of(tank, List.of(), List.of()));
        NodeList panes = picture.getElementsByTagName("rect");
        NodeList tips = picture.getElementsByTagName("circle");
        assertEquals(4, tips.getLength());
        for (int n = 0; n < 2; n++) {
            Element pane = (Element) IntStream.range(0, panes.getLength()).mapToObj(panes::item)
                    .filter(node -> ((Element) node).getAttribute("stroke").equals("black")).toList().get(n);
            double top = number(pane, "y");
            for (int tip = 2 * n; tip < 2 * n + 2; tip++) {
                double y = number((Element) tips.item(tip), "cy");
                assertTrue(y >= top - 0.2 && y <= top + number(pane, "height") + 0.2, "view " + n + ": " + y);
            }
        }
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    @Test
    void everyOfferHasItsMark() throws Exception {
        List<Mark> marks = List.of(new Mark("no pumps", 0, 0, 0, true), new Mark("a & b", 100, 3, 2, true),
                new Mark("dear", 300, 3, 3, false));
        Document picture = read(ParetoPicture.of(marks, 3));
        assertEquals(3, picture.getElementsByTagName("circle").getLength());
        assertTrue(picture.getDocumentElement().getTextContent().contains("a & b"));
        assertEquals(1, picture.getElementsByTagName("path").getLength());
        assertEquals(0, read(ParetoPicture.of(List.of(), 3)).getElementsByTagName("circle").getLength());
    }

    /** Twenty offers at one place: every label finds a line of its own, and the picture ends. */
    @Test
    void labelsDoNotCoverEachOther() throws Exception {
        String svg = ParetoPicture.of(Collections.nCopies(20, new Mark("the same", 100, 2, 2, false)), 3);
        long lines = svg.lines().filter(line -> line.contains("the same"))
                .map(line -> line.replaceAll(".* y=\"([^\"]*)\".*", "$1")).distinct().count();
        assertEquals(20, lines);
    }
}
