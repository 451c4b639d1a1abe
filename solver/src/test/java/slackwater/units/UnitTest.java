package slackwater.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import slackwater.ForAll;

class UnitTest {
    /** NIST SP 811 (2008), appendix B.8: 1 in = 2.54 E-02 m, exact; 1 US gallon = 3.785412 E-03 m3, 231 cubic inches. */
    @Test
    void legalDefinitionsHold() {
        assertEquals(0.0254, Unit.INCH.toSi(1));
        assertEquals(25.4, Unit.MM.fromSi(Unit.INCH.toSi(1)));
        assertEquals(231 * 16.387064, 3785.411784, 1e-9);
        assertEquals(3.785411784e-3 / 3600, Unit.GALLON_PER_HOUR.toSi(1), 1e-21);
        assertEquals(378.5411784, Unit.LITRE_PER_HOUR.fromSi(Unit.GALLON_PER_HOUR.toSi(100)), 1e-12);
        assertEquals(1.0 / 3600, Unit.LITRE_PER_HOUR.toSi(1000));
    }

    @Test
    void everydayNumbersAreTheNearestDoubles() {
        assertEquals(0.6, Unit.CM.toSi(60));
        assertEquals(0.0005, Unit.MM.toSi(0.5));
        assertEquals(Math.PI / 2, Unit.DEGREE.toSi(90));
        assertEquals(0.8, Unit.PERCENT.toSi(80));
    }

    @Test
    void everyWrittenNumberComesBackShortAndExact() {
        for (Unit unit : Unit.values()) {
            ForAll.seeds(2000, random -> {
                double written = (random.nextInt(2_000_000) - 500_000) / 100.0;
                double si = unit.toSi(written);
                assertTrue(unit.holds(si), () -> unit + " " + written);
                assertEquals(si, unit.toSi(unit.fromSi(si)));
                assertTrue(Double.toString(unit.fromSi(si)).length() <= Double.toString(written).length(),
                        () -> unit + " " + written + " came back as " + unit.fromSi(si));
            });
        }
    }

    @Test
    void aComputedNumberComesBackToTheLastPlace() {
        for (Unit unit : Unit.values()) {
            ForAll.seeds(500, random -> {
                double si = random.nextDouble() * 3;
                assertEquals(si, unit.toSi(unit.fromSi(si)), 2 * Math.ulp(si));
            });
        }
    }

    /** ITTC 7.5-02-01-03 (2011), seawater at 25 degrees C: 1023.34 kg/m3 and 0.937e-6 m2/s. */
    @Test
    void seawaterIsAsTheTowingTanksHaveIt() {
        assertEquals(1023.343, Seawater.DENSITY_KG_PER_M3, 0.0036);
        assertEquals(0.959e-3, Seawater.KINEMATIC_VISCOSITY_M2_PER_S * Seawater.DENSITY_KG_PER_M3, 0.015 * 0.959e-3);
    }
}
