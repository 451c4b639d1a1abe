package slackwater.viewer.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The tables against entries as published, and against what they are chosen for. */
class ColourMapTest {
    /** First, middle (number 128) and last rows of the published tables, as shipped with matplotlib 3.11. */
    @Test
    void endsAndMiddlesAreThosePublished() {
        published(ColourMap.VIRIDIS, new double[][] {{0.267004, 0.004874, 0.329415}, {0.127568, 0.566949, 0.550556},
            {0.993248, 0.906157, 0.143936}});
        published(ColourMap.CIVIDIS, new double[][] {{0, 0.135112, 0.304751}, {0.488697, 0.485318, 0.471008},
            {0.995737, 0.909344, 0.217772}});
        published(ColourMap.MANAGUA, new double[][] {{1, 0.81263, 0.40424}, {0.34056, 0.16094, 0.28636},
            {0.50411, 0.90708, 0.99978}});
    }

    private static void published(ColourMap map, double[][] rows) {
        int[] steps = {0, 128, 255};
        for (int n = 0; n < steps.length; n++) {
            Colour colour = map.at((steps[n] + 0.5) / 256);
            double half = 0.5 / 255 + 1e-6;
            assertEquals(rows[n][0], colour.red(), half, map + " " + steps[n]);
            assertEquals(rows[n][1], colour.green(), half, map + " " + steps[n]);
            assertEquals(rows[n][2], colour.blue(), half, map + " " + steps[n]);
        }
    }

    /** Lightness L* of CIE 1976 from sRGB (IEC 61966-2-1) rises from step to step, within the rounding to 8 bits. */
    @ParameterizedTest
    @EnumSource(names = {"CIVIDIS", "VIRIDIS"})
    void lightnessRises(ColourMap map) {
        double before = -1;
        for (int rgb : map.table()) {
            double lightness = lightness(rgb);
            assertTrue(lightness > before - 0.25, map + " falls from " + before + " to " + lightness);
            before = Math.max(before, lightness);
        }
        assertTrue(before - lightness(map.table()[0]) > 70, map + " has too little contrast");
    }

    private static double lightness(int rgb) {
        double y = 0.2126 * linear(rgb >> 16 & 255) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
        return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : 24389.0 / 27 * y;
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void aScaleSaysWhatItsColoursMean() {
        ColourScale scale = ColourScale.ofSpeed(0.25);
        assertEquals(0, scale.fraction(0));
        assertEquals(0.5, scale.fraction(0.0625), 1e-12, "colours go with the root");
        assertEquals(1, scale.fraction(3));
        assertEquals(ColourMap.CIVIDIS.at(1), scale.colour(0.9));
        List<ColourScale.Tick> ticks = scale.ticks();
        assertEquals("0", ticks.get(0).text());
        assertEquals(new ColourScale.Tick(1, "25+"), ticks.get(ticks.size() - 1));
        for (int n = 1; n < ticks.size(); n++) {
            assertTrue(ticks.get(n).fraction() - ticks.get(n - 1).fraction() > 0.1, "crowded: " + ticks);
        }
    }

    @Test
    void everyTopHasItsTicks() {
        for (double top = 0.001; top < 5; top *= 1.37) {
            for (ColourScale scale : List.of(ColourScale.ofSpeed(top), ColourScale.ofSpeedInInches(top),
                    ColourScale.ofShear(top), ColourScale.ofDifference(top))) {
                List<ColourScale.Tick> ticks = scale.ticks();
                assertTrue(ticks.size() >= 3 && ticks.size() <= 9, scale + ": " + ticks);
                ticks.forEach(tick -> assertEquals(tick.fraction(), scale.fraction(
                        Double.parseDouble(tick.text().replace("+", "")) / scale.perUnit()), 0.02, ticks.toString()));
            }
        }
    }

    /** No two numbers under a bar run into each other, whatever the letters' width; both ends are told. */
    @Test
    void ticksLeaveEachOtherRoom() {
        for (double top = 0.001; top < 5; top *= 1.17) {
            for (ColourScale scale : List.of(ColourScale.ofSpeed(top), ColourScale.ofSpeedInInches(top),
                    ColourScale.ofShear(top), ColourScale.ofDifference(top))) {
                List<ColourScale.Tick> all = scale.ticks();
                List<ColourScale.Tick> ticks = scale.ticks(240, 6, text -> 6.5 * text.length());
                assertEquals(all.get(0), ticks.get(0));
                assertEquals(all.get(all.size() - 1), ticks.get(ticks.size() - 1));
                for (int n = 1; n < ticks.size(); n++) {
                    double before = 6.5 * ticks.get(n - 1).text().length() / 2;
                    double end = Math.max(2 * before, ticks.get(n - 1).fraction() * 240 + before);
                    double start = ticks.get(n).fraction() * 240 - 6.5 * ticks.get(n).text().length() / 2;
                    assertTrue(start - end >= 6 - 1e-9, ticks.toString());
                }
            }
        }
    }

    @Test
    void aDifferenceOfNothingLiesInTheMiddle() {
        ColourScale scale = ColourScale.ofDifference(0.1);
        assertEquals(0.5, scale.fraction(0), 1e-12);
        assertTrue(scale.ticks().stream().anyMatch(tick -> tick.text().equals("0")), scale.ticks().toString());
    }
}
