package slackwater.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.pump.catalogue.PumpModel;
import slackwater.report.CsvText;
import slackwater.scenario.Outlet;
import slackwater.search.CoralFinding;
import slackwater.search.Endurance;
import slackwater.search.Energy;
import slackwater.search.Finding;
import slackwater.search.Growth;
import slackwater.search.Offer;
import slackwater.search.Outcome;
import slackwater.search.Proposal;
import slackwater.search.PumpSet;
import slackwater.search.Ranked;
import slackwater.search.Spare;
import slackwater.search.Stage;
import slackwater.search.Sturdiness;
import slackwater.search.Trial;
import slackwater.search.Wishes;

/** What is said of pumps to buy, and of what may come. */
class CompareTextTest {
    private static final int CORALS = 4;

    /** Corals in range, of which so many surely, and those that fall out when something is off. */
    private static Offer offer(String name, double price, int inRange, int sure, List<String> fallen) {
        List<CoralFinding> corals = new ArrayList<>();
        for (int n = 0; n < CORALS; n++) {
            corals.add(new CoralFinding("c" + n, n < inRange ? 0.1 : 0.01, 0, 1, 0.05, 0.5,
                    n < sure ? Verdict.PASS : Verdict.MARGINAL));
        }
        PumpModel model = new PumpModel(name, "invented", 1e-3, 0.8, 0.2, new Outlet.Round(0.05), 1,
                OptionalDouble.of(10), OptionalDouble.of(price), 0.3, 1, 0.05, 2, new Vec3(0.05, 0.05, 0.05));
        Trial trial = new Trial(name, Stage.CONFIRM, "", MadeUpTank.scenario().pumps().subList(0, 1),
                new Outcome.Read(new Finding(corals, 0.1, 0, 0, "", 0.5, true)), 1);
        Sturdiness sturdiness = new Sturdiness(List.of(new Sturdiness.Check("weaker", true, fallen)));
        return new Offer(new PumpSet(Collections.nCopies(2, model)), Optional.of(new Proposal(new Ranked(trial, 0),
                Optional.of(sturdiness), false)), List.of(new Sturdiness.Check("'" + name + " 1' stops", true,
                List.of("c0", "c1"))), Optional.of(new Energy(20, 175.2, 52.56)), true,
                Optional.of(new Spare(0.612, 1.2, true)));
    }

    private static String text(Offer... offers) {
        return String.join("\n", CompareText.of(List.of(offers), MadeUpTank.scenario(), Wishes.NONE,
                new Fidelities(0.03, 0.01, 40, 0.2, 1, 1)));
    }

    @Test
    void theCheaperOneMayBeEnough() {
        String text = text(offer("cheap", 50, 4, 4, List.of()), offer("dear", 200, 4, 4, List.of()));
        assertTrue(text.contains("The cheapest with every coral in range as computed: 2 x cheap, for 100; 4 of 4 pass"
                + " for certain."), text);
        assertTrue(text.contains("How sure: sure. On cells of 1 cm, 4 of 4 corals pass for certain and 0 are"), text);
        assertFalse(text.contains("More money"), text);
        assertTrue(text.contains("a kilowatt hour is taken at 0.30, for 24 hours a day"), text);
        assertTrue(text.contains("'cheap 1' stops: loses c0, c1"), text);
        assertTrue(text.contains("On fine cells food and sand were let fall on the corals: one that keeps them counts"
                + " as out of range."), text);
    }

    @Test
    void moreMoneyMayBuySafety() {
        String text = text(offer("cheap", 50, 4, 1, List.of("c2")), offer("dear", 200, 4, 4, List.of()));
        assertTrue(text.contains("More money buys more safety: 2 x dear, for 400, keeps 4 of 4 when something is off,"
                + " that one 3."), text);
        assertTrue(text.contains("How sure: not sure."), text);
    }

    /** All means in range, and still nobody knows: the text must not call it enough. */
    @Test
    void inRangeAsComputedIsNotCalledEnough() {
        String text = text(offer("cheap", 50, 4, 0, List.of()));
        assertTrue(text.contains("in range as computed: 2 x cheap, for 100; 0 of 4 pass for certain."), text);
        assertTrue(text.contains("No set has every coral in range for certain."), text);
        assertFalse(text.contains("enough"), text);
        String both = text(offer("cheap", 50, 4, 0, List.of()), offer("dear", 200, 4, 4, List.of()));
        assertTrue(both.contains("The cheapest with every coral in range for certain: 2 x dear, for 400."), both);
    }

    @Test
    void noneMayBeEnough() {
        String text = text(offer("cheap", 50, 2, 2, List.of()), offer("dear", 200, 3, 2, List.of()));
        assertTrue(text.contains("None of these is enough. The most that was found is 3 of 4 corals in range, with 2 x"
                + " dear."), text);
        assertTrue(text.contains("How sure: fairly sure."), text);
    }

    @Test
    void theDoubtOfThePumpsIsTold() {
        assertTrue(text(offer("cheap", 50, 4, 4, List.of())).contains("Ranges hold pumps that are all off by up to 20 %"
                + " together."));
        assertTrue(PlacingText.doubt(0).startsWith("Ranges take the pumps at their word; --pump-uncertainty 20% "));
    }

    @Test
    void whatCouldNotBeTriedIsUnknown() {
        Offer tried = offer("cheap", 50, 3, 2, List.of());
        Offer failed = new Offer(tried.set(), tried.proposal(), List.of(new Sturdiness.Check("'cheap 1' stops", true,
                false, List.of("c0", "c1", "c2"))), tried.energy(), tried.quiet(), tried.spare());
        String text = text(failed);
        assertTrue(text.contains("'cheap 1' stops: unknown, since a run failed"), text);
        assertTrue(text.lines().anyMatch(line -> line.startsWith("2 x cheap") && line.endsWith(" ?")), text);
        assertTrue(CompareText.csv(List.of(failed)).get(1).endsWith(",62,"));
    }

    @Test
    void theTableHasTheFigures() {
        String row = text(offer("cheap", 50, 3, 2, List.of("c2"))).lines()
                .filter(line -> line.startsWith("2 x cheap")).findFirst().orElseThrow();
        assertEquals("2 x cheap 100 3 2 2 10 50 20 175 53 62 -2", row.replaceAll(" +", " "));
        // 61.2 % is the least, so 61 % would be too little: rounded up in both.
        String cells = CompareText.csv(List.of(offer("cheap", 50, 3, 2, List.of("c2")))).get(1);
        assertEquals("\"2 x cheap\",100.00,4,3,2,2,10.0,50,20.0,yes,175,52.56,62,2", cells);
    }

    /** A spreadsheet takes what begins so for a formula; a set of one pump begins with the name that a file gave it. */
    @Test
    void aNameIsNeverAFormula() {
        for (String first : List.of("=", "+", "-", "@", "\t", "\r")) {
            assertEquals("\"'" + first + "1+\"\"A\"\"\"", CsvText.quoted(first + "1+\"A\""));
        }
        assertEquals("\"a=b\"", CsvText.quoted("a=b"));
        assertEquals("\"\"", CsvText.quoted(""));
        Offer two = offer("=SUM(A1)", 50, 3, 2, List.of());
        Offer one = new Offer(new PumpSet(two.set().models().subList(0, 1)), two.proposal(), two.outages(),
                two.energy(), two.quiet(), two.spare());
        assertTrue(CompareText.csv(List.of(one)).get(1).startsWith("\"'=SUM(A1)\",50.00,"));
    }

    /** 3 cm a year for 12 months is reached in 12 x 3/5.8 = 6.2 and 12 x 3/1.2 = 30 months by the published rates. */
    @Test
    void theMonthIsToldWithItsRange() {
        CoralFinding good = new CoralFinding("plate", 0.1, 0.05, 0.15, 0.04, 0.35, Verdict.PASS);
        CoralFinding slow = new CoralFinding("plate", 0.02, 0.01, 0.03, 0.04, 0.35, Verdict.FAIL);
        Endurance plate = new Endurance("plate", 0.04, 0.35, List.of(
                new Endurance.Case("as it is", OptionalInt.empty(), Optional.of(good), ""),
                new Endurance.Case("pump 'a' stops", OptionalInt.empty(), Optional.of(slow), ""),
                new Endurance.Case("plates after 6 months", OptionalInt.of(6), Optional.of(good), ""),
                new Endurance.Case("plates after 12 months", OptionalInt.of(12), Optional.of(slow), "")));
        String text = String.join("\n", WhatIfText.of(MadeUpTank.scenario(), List.of(plate), Growth.USUAL, 0.02));
        assertTrue(text.contains("Falls out of range: by growth at month 12 (month 6 with the fastest growth published,"
                + " month 30 with the slowest); pump 'a' stops."), text);
        assertTrue(text.contains("2.0 cm/s (1.0 to 3.0) \u2717 Fail, too slow"), text);
    }
}
