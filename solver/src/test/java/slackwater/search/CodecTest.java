package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.scenario.Pump;
import slackwater.scenario.Wall;

class CodecTest {
    private static final List<Piece> TWO = List.of(Piece.of(Tanks.pump("a", 0.04, 0)),
            Piece.of(Tanks.pump("b", 0.04, 0)));

    @Test
    void numbersComeBackFromTheirLayout() {
        Codec codec = new Codec(Tanks.TANK, TWO, Wishes.NONE.on(List.of(Wall.values())));
        ForAll.seeds(500, random -> {
            double[] genes = new double[codec.genes()];
            for (int n = 0; n < genes.length; n++) {
                genes[n] = random.nextDouble();
            }
            List<Pump> pumps = codec.pumps(genes);
            double[] back = codec.genes(pumps).orElseThrow();
            for (int n = 0; n < genes.length; n++) {
                assertEquals(genes[n], back[n], 1e-9, "number " + n);
            }
        });
    }

    @Test
    void onlyAllowedPanesCarryPumps() {
        Codec codec = new Codec(Tanks.TANK, TWO, Wishes.NONE.on(List.of(Wall.BACK, Wall.LEFT)));
        Set<Wall> used = new HashSet<>();
        ForAll.seeds(300, random -> {
            double[] genes = random.doubles(codec.genes(), -0.2, 1.2).toArray();
            for (Pump pump : codec.pumps(genes)) {
                used.add(Pane.nearest(Tanks.TANK, pump.atM()));
                assertTrue(pump.outputFraction() >= 0.3 && pump.outputFraction() <= 1);
                assertTrue(pump.atM().z() < Tanks.TANK.waterLevelM() && pump.atM().z() > Tanks.TANK.sandDepthM());
            }
        });
        assertEquals(Set.of(Wall.BACK, Wall.LEFT), used);
    }

    /** The strip has no seam at a corner: the end of one pane is the beginning of the next. */
    @Test
    void panesMeetAtTheirCorners() {
        Codec codec = new Codec(Tanks.TANK, TWO.subList(0, 1), Wishes.NONE);
        double[] genes = {0, 0.5, 0.5, 0.5, 1};
        Pump before = codec.pumps(genes).get(0);
        for (int n = 1; n <= 1000; n++) {
            genes[0] = n / 1000.0;
            Pump pump = codec.pumps(genes).get(0);
            assertTrue(pump.atM().minus(before.atM()).length() < 0.12, "a jump at " + genes[0]);
            before = pump;
        }
    }
}
