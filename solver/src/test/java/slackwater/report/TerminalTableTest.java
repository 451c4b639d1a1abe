package slackwater.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import slackwater.MadeUpTank;
import slackwater.field.FlowStatistics;
import slackwater.geometry.Vec3;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Scenario;

class TerminalTableTest {
    private final Scenario scenario = MadeUpTank.scenario();
    private final FlowStatistics flow = MadeUpTank.flow(scenario, 0.02);

    @Test
    void hasALineACoralAndTheVerdict() {
        String table = TerminalTable.of(MadeUpTank.result(scenario, flow));
        scenario.corals().forEach(coral ->
                assertEquals(1, table.lines().filter(line -> line.contains("  " + coral.name() + "  ")
                        || line.contains(" " + coral.name() + "   ")).count(), coral.name()));
        assertTrue(table.lines().anyMatch(line -> line.startsWith("\u2717 Fail: 1 of 4 corals")), table);
        assertTrue(table.lines().anyMatch(line -> line.matches(".* [0-9.]+ \\([0-9.]+ to [0-9.]+\\) .*")), table);
        assertTrue(table.contains("Still water: likely "));
        assertTrue(table.contains("The sand "));
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
    }

    /** A pump that pulses with the first wave along 1.2 m of water 0.44 m deep: 1.371 s, worked by hand from Lamb. */
    @Test
    void pumpsInTimeWithAWaveAreWarnedOf() {
        assertFalse(TerminalTable.of(MadeUpTank.result(scenario, flow)).contains("pulses"));
        Scenario pulsing = MadeUpTank.pulsing(scenario, 1.35);
        String table = TerminalTable.of(MadeUpTank.result(pulsing, flow)).replaceAll("\\s+", " ");
        assertTrue(table.contains("Pump 'left' pulses every 1.35 s, in time with the wave that goes along the tank in"
                + " 1.37 s"), table);
        String page = ReportHtml.write(MadeUpTank.result(pulsing, flow), flow);
        assertTrue(page.contains("<h2>Waves</h2>") && page.contains("along the tank in 1.37 s"));
        assertFalse(ReportHtml.write(MadeUpTank.result(scenario, flow), flow).contains("<h2>Waves</h2>"));
    }

    @Test
    void staysNarrowAndHarmlessWhateverTheNames() {
        Scenario odd = MadeUpTank.with(scenario, List.of(
                MadeUpTank.coral("x".repeat(500), CoralGroup.SOFT, new Vec3(0.6, 0.25, 0.25), 0.1),
                MadeUpTank.coral("\u001b[2Jclear", CoralGroup.SMALL_POLYP, new Vec3(0.98, 0.44, 0.06), 0.08)));
        String table = TerminalTable.of(MadeUpTank.result(odd, flow));
        assertTrue(table.lines().allMatch(line -> line.length() <= 100), table);
        assertFalse(table.contains("\u001b"));
    }
}
