package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.geometry.Vec3;
import slackwater.pump.catalogue.CatalogueReader;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.Pump;

class EnergyTest {
    /** Arithmetic: 20 W all year is 20 x 8760 h = 175.2 kWh, at 0.30 that is 52.56. */
    @Test
    void wattsBecomeKilowattHoursAndMoney() {
        Energy energy = Energy.of(20, Wishes.NONE);
        assertEquals(175.2, energy.kWhPerYear(), 1e-9);
        assertEquals(52.56, energy.costPerYear(), 1e-9);
        Wishes halfADay = new Wishes(Wishes.NONE.panes(), List.of(), Wishes.NONE.cablePane(), 1,
                Wishes.Clearances.USUAL, 0.4, 12);
        assertEquals(35.04, Energy.of(20, halfADay).costPerYear(), 1e-9);
    }

    /** The affinity laws (common knowledge of the field, from memory): half the flow takes an eighth of the power. */
    @Test
    void outputsGoWithTheCube() throws Exception {
        PumpModel model = CatalogueReader.read(Path.of("..", "scenarios", "pumps", "mid-propeller.toml"));
        List<Piece> pieces = List.of(Piece.of("a", model), Piece.of("b", model));
        List<Pump> pumps = List.of(pieces.get(0).placed(Vec3.ZERO, 0, 0, 0.5),
                pieces.get(1).placed(Vec3.ZERO, 0, 0, 1));
        assertEquals(14 / 8.0 + 14, Energy.powerW(pieces, pumps).getAsDouble(), 1e-12);
        assertFalse(Energy.isQuiet(pieces, pumps), "one runs above its quiet output");
        assertTrue(Energy.isQuiet(pieces.subList(0, 1), pumps.subList(0, 1)));
        assertTrue(Energy.powerW(List.of(Piece.of(pumps.get(0))), pumps.subList(0, 1)).isEmpty(),
                "a scenario's own pump does not say what it draws");
    }

    /** A nozzle's jet carries rho Q^3/(2 A^2), exact. */
    @Test
    void jetsCarryTheirKineticEnergy() {
        Pump pump = Tanks.pump("a", 0.04, 0);
        double flow = pump.flowM3PerS() * pump.outputFraction();
        double area = pump.outlet().areaM2();
        assertEquals(1023.34 / 2 * Math.pow(flow, 3) / (area * area), Energy.jetsW(List.of(pump)), 1e-9);
    }
}
