package slackwater.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.viewer.scene.LabelPlan.Area;
import slackwater.viewer.scene.LabelPlan.Pin;

class LabelPlanTest {
    private static final Area PAGE = new Area(0, 0, 1200, 700);

    /** A dozen labels have room on a page, wherever their points are: none covers another or leaves the page. */
    @Test
    void labelsKeepOffEachOtherAndOnThePage() {
        for (long seed = 1; seed <= 60; seed++) {
            Random random = new Random(seed);
            List<Pin> pins = new ArrayList<>();
            for (int n = 0; n < 12; n++) {
                pins.add(new Pin(100 + random.nextDouble() * 1000, 100 + random.nextDouble() * 500, 10,
                        80 + random.nextDouble() * 100, 38));
            }
            List<Area> areas = LabelPlan.place(pins, PAGE, List.of());
            assertEquals(pins.size(), areas.size());
            for (int n = 0; n < areas.size(); n++) {
                assertTrue(areas.get(n).isWithin(PAGE), "seed " + seed + ", label " + n);
                for (int other = 0; other < n; other++) {
                    assertFalse(areas.get(n).overlaps(areas.get(other)), "seed " + seed + ": " + n + ", " + other);
                }
            }
        }
    }

    @Test
    void oneByItselfStandsAboveItsPoint() {
        Area area = LabelPlan.place(List.of(new Pin(600, 300, 10, 100, 30)), PAGE, List.of()).get(0);
        assertEquals(600, area.x() + area.width() / 2, 1e-9);
        assertTrue(area.y() + area.height() < 300);
    }
}
