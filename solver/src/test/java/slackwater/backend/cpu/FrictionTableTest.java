package slackwater.backend.cpu;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.lattice.WallFriction;

/** The table against the law itself. */
class FrictionTableTest {
    private static final double VISCOSITY = 3e-6;

    @Test
    void offByLessThanOneInTenThousand() {
        WallFriction law = new WallFriction(VISCOSITY);
        FrictionTable table = new FrictionTable(law);
        ForAll.seeds(20_000, random -> {
            double reynolds = Math.pow(10, -3 + 12 * random.nextDouble());
            double speed = reynolds * VISCOSITY / 0.5;
            double drag = random.nextInt(3) == 0 ? 0.03 * random.nextDouble() : 0;
            double expected = law.rate(speed, drag);
            assertEquals(expected, table.rate((float) speed, (float) drag), 1e-4 * expected, "Re " + reynolds);
        });
    }

    @Test
    void laminarAtRestAndTopOfTheTableBeyondIt() {
        FrictionTable table = new FrictionTable(new WallFriction(VISCOSITY));
        assertEquals(VISCOSITY / 0.5, table.rate(0, 0.02f), 1e-4 * VISCOSITY / 0.5);
        double top = table.rate((float) (0x1p30 * VISCOSITY / 0.5), 0);
        assertEquals(top, table.rate((float) (0x1p33 * VISCOSITY / 0.5), 0), 1e-9 * top);
        assertEquals(top, table.rate(1e30f, 0), 1e-9 * top);
    }
}
