package slackwater.viewer.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** An inch is 25.4 mm, exactly (international yard and pound agreement, 1959). */
class UnitsTest {
    @Test
    void lengthsFollowTheUnits() {
        assertEquals("2 cm", Units.METRIC.length(0.02));
        assertEquals("0.5 in", Units.US.length(0.0127));
        assertEquals("10 cm", Units.METRIC.rulers().get(0).words());
        assertEquals(4 * 0.0254, Units.US.rulers().get(0).lengthM(), 1e-12);
        assertEquals(1, Units.US.speedNumber(0.0254), 1e-12);
        assertEquals(0.0254, Units.US.speedMPerS(1), 1e-12);
    }

    /** What is said in centimetres is told in inches; speeds, names and options stay. */
    @Test
    void sentencesFollowToo() {
        String said = "pump \"left\" found [25.4, 5.08, -2.54] cm inside rock, must be 12.7 cm off and 2.54"
                + " to 5.08 cm up; near x 254, y 127, z 0 cm. At 5 cm/s, take larger cells (--cell-cm)";
        assertEquals(said, Units.METRIC.sentence(said));
        assertEquals("pump \"left\" found [10, 2, -1] in inside rock, must be 5 in off and 1 to 2 in up;"
                + " near x 100, y 50, z 0 in. At 5 cm/s, take larger cells (--cell-cm)", Units.US.sentence(said));
    }
}
