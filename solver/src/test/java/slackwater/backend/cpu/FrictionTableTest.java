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

    /** By vectors and one by one: the same bits, for whatever a cell may hold, numbers that are none too. */
    @Test
    void vectorsGiveTheSameBits() {
        FrictionTable table = new FrictionTable(new WallFriction(VISCOSITY));
        FrictionLanes lanes = new FrictionLanes(table);
        ForAll.seeds(2000, random -> {
            WallRoom room = new WallRoom(2);
            float[] roughDrag = new float[WallRoom.ROW];
            int length = 1 + random.nextInt(WallRoom.LONGEST_RUN);
            for (int n = 0; n < length; n++) {
                room.values[n] = random.nextInt(4) == 0 ? Float.intBitsToFloat(random.nextInt())
                        : (float) Math.pow(10, -8 + 9 * random.nextDouble());
                roughDrag[n] = random.nextInt(3) == 0 ? 0.03f * random.nextFloat() : 0;
            }
            lanes.rates(room, 0, WallRoom.ROW, roughDrag, 0, length);
            for (int n = 0; n < length; n++) {
                assertEquals(table.rate(room.values[n], roughDrag[n]), room.values[WallRoom.ROW + n],
                        "speed " + room.values[n]);
            }
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
