package slackwater.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Overflow;
import slackwater.scenario.Return;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;
import slackwater.scenario.Wall;

/** What may come over a tank, and what it does to each coral. */
class EnduranceTest {
    private static final Coral PLATE = new Coral("plate", CoralGroup.PLATING, new Vec3(0.5, 0.25, 0.2),
            new Vec3(0, 0, 1), 0.10, Optional.empty());
    private static final Mishap.Severity USUAL = new Mishap.Severity(0.4, Optional.of("b"), 0.5, Growth.USUAL, 0.01);

    private static Scenario tank(List<Coral> corals) {
        return new Scenario("invented", Tanks.TANK, List.of(), List.of(Tanks.pump("a", 0.04, 0),
                Tanks.pump("b", 0.96, 180)), Optional.of(new Return(3e-4, 0.02, new Vec3(0.9, 0.45, 0.4), Math.PI, 0)),
                Optional.of(new Overflow(Wall.BACK, 0.2, 0.5)), corals);
    }

    /** 3 cm a year is a radius of 5 + 4.5 cm after 18 months. */
    @Test
    void platesGrowByTheMonthAndStandInTheWater() {
        Growth.Grown grown = Growth.USUAL.grown(tank(List.of(PLATE)), 18, 0.01);
        assertEquals(0.095, Growth.USUAL.radiusM(PLATE, 18), 1e-12);
        var disc = grown.scenario().rocks().get(0).solid();
        assertTrue(disc.contains(new Vec3(0.5 + 0.094, 0.25, 0.21)));
        assertTrue(!disc.contains(new Vec3(0.5 + 0.096, 0.25, 0.21)));
        Coral onTop = grown.scenario().corals().get(0);
        assertEquals(0.22, onTop.atM().z(), 1e-12);
        assertEquals(0.19, onTop.sizeM(), 1e-12);
        assertTrue(disc.signedDistanceM(onTop.atM()) >= -1e-12, "the coral sits on its plate, not in it");
        assertEquals(0.23, Growth.USUAL.grown(tank(List.of(PLATE)), 0, 0.03).scenario().corals().get(0).atM().z(),
                1e-12, "on cells of 3 cm a plate is a cell thick");
    }

    @Test
    void aCoralInAPlatesWayIsGrownOver() {
        Coral beside = Tanks.coral("beside", CoralGroup.SOFT, 0.58, 0.25, 0.2);
        Scenario tank = tank(List.of(PLATE, beside));
        assertEquals(List.of(), Growth.USUAL.grown(tank, 6, 0.01).covered());
        assertEquals(List.of("beside"), Growth.USUAL.grown(tank, 18, 0.01).covered());
    }

    /** Against the collected data: the range that is told is that of plating and foliose forms. */
    @Test
    void growthRatesAreThoseOfTheCollection() throws IOException {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        try (InputStream file = EnduranceTest.class.getResourceAsStream("montipora_extension.csv")) {
            for (String line : new String(file.readAllBytes(), StandardCharsets.UTF_8).lines().toList()) {
                String[] cells = line.split(",");
                if (cells.length > 3 && (cells[1].equals("plating") || cells[1].equals("foliose"))) {
                    least = Math.min(least, Double.parseDouble(cells[2]));
                    String top = cells[3].isEmpty() ? cells[2] : cells[3].substring(cells[3].indexOf('-') + 1);
                    most = Math.max(most, Double.parseDouble(top));
                }
            }
        }
        assertEquals(least / 100, Growth.SLOW.radialMPerYear(), 0.0005);
        assertEquals(most / 100, Growth.FAST.radialMPerYear(), 1e-12);
        assertTrue(Growth.USUAL.radialMPerYear() > Growth.SLOW.radialMPerYear()
                && Growth.USUAL.radialMPerYear() < Growth.FAST.radialMPerYear());
        assertEquals(15, Growth.SLOW.monthsFor(Growth.USUAL, 6), 1e-9);
    }

    @Test
    void everyCaseIsThere() {
        List<Mishap> all = Mishap.all(tank(List.of(PLATE)), USUAL);
        assertEquals(List.of("as it is", "pump 'a' stops", "pump 'b' stops", "the return stops",
                "all pumps at 70 % from dirt", "at night, outputs at 40 %", "power cut, 'b' on battery at 50 %",
                "plates drawn solid, today", "plates after 6 months", "plates after 12 months",
                "plates after 18 months"), all.stream().map(Mishap::name).toList());
        assertEquals(List.of("b"), all.get(1).scenario().pumps().stream().map(pump -> pump.name()).toList());
        assertEquals(0.3, all.get(4).scenario().pumps().get(0).foulingFraction(), 1e-12);
        assertEquals(0.24, all.get(5).scenario().pumps().get(0).outputFraction(), 1e-12);
        Scenario dark = all.get(6).scenario();
        assertTrue(dark.returnLine().isEmpty() && dark.overflow().isEmpty(), "in a power cut the return stops too");
        assertEquals(List.of("b"), dark.pumps().stream().map(pump -> pump.name()).toList());
        assertEquals(0.3, dark.pumps().get(0).outputFraction(), 1e-12);
        assertEquals(List.of(), Mishap.all(tank(List.of(Tanks.coral("soft", CoralGroup.SOFT, 0.5, 0.2, 0.1))), USUAL)
                .stream().filter(mishap -> mishap.months().isPresent()).toList(), "without plates nothing grows here");
    }

    @Test
    void monthAndFaultAreToldForEachCoral() {
        List<Coral> corals = List.of(PLATE);
        List<Mishap> mishaps = Mishap.all(tank(corals), USUAL);
        SpeedRange wanted = CoralNeeds.rangeFor(PLATE);
        List<Outcome> outcomes = mishaps.stream().<Outcome>map(mishap -> {
            boolean slow = mishap.name().contains("'a' stops") || mishap.months().orElse(0) >= 12;
            return new Outcome.Read(new Finding(List.of(new CoralFinding("plate", slow ? 0.01 : 0.1, 0, 1,
                    wanted.lowMPerS(), wanted.highMPerS(), Verdict.MARGINAL)), 0, 0, 0, "", 0, true));
        }).toList();
        Endurance plate = Endurance.of(mishaps, outcomes).get(0);
        assertEquals(OptionalInt.of(12), plate.firstMonthOut());
        assertEquals(List.of("pump 'a' stops"), plate.faultsOut());
    }

    @Test
    void aFailedCaseIsUnknownAndAGrownOverCoralIsOut() {
        Coral beside = Tanks.coral("beside", CoralGroup.SOFT, 0.59, 0.25, 0.2);
        List<Mishap> mishaps = Mishap.all(tank(List.of(PLATE, beside)), USUAL);
        CoralFinding good = new CoralFinding("beside", 0.1, 0, 1, 0.02, 0.2, Verdict.PASS);
        List<Outcome> outcomes = mishaps.stream().<Outcome>map(mishap -> mishap.name().startsWith("pump")
                ? new Outcome.Failed("ran away") : new Outcome.Read(new Finding(mishap.covered().isEmpty()
                        ? List.of(good) : List.of(), 0, 0, 0, "", 0, true))).toList();
        Endurance one = Endurance.of(mishaps, outcomes).get(0);
        assertEquals(OptionalInt.of(18), one.firstMonthOut());
        assertEquals(List.of(), one.faultsOut());
        assertEquals("ran away", one.cases().get(1).remark());
    }
}
