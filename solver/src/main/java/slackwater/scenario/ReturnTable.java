package slackwater.scenario;

import java.util.List;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The table [return]. */
final class ReturnTable {
    static final Key FLOW = Key.number("flow", Dimension.FLOW, Limits.above(0, 50_000).typically(300, 5000),
            "what comes back from the sump").needed();
    static final Key NOZZLE = Key.number("nozzle", Dimension.SMALL_LENGTH, Limits.between(2, 200).typically(12, 40),
            "inner diameter of the round nozzle").needed();
    static final Key AT = Places.point("at",
            "middle of the nozzle: from the left, from the front, from the bottom").needed();
    static final Key YAW = PumpTable.YAW;
    static final Key PITCH = PumpTable.PITCH;
    static final Table FORMAT = Table.one("return", "Water that comes in from the sump. Goes with `[overflow]`.",
            List.of(FLOW, NOZZLE, AT, YAW, PITCH));

    private ReturnTable() {
    }

    static Return read(Entry entry) {
        return new Return(entry.number(FLOW), entry.number(NOZZLE), Places.vector(entry, AT), entry.number(YAW),
                entry.number(PITCH));
    }

    static TableWriter write(Return line) {
        return new TableWriter(FORMAT)
                .put(FLOW, line.flowM3PerS())
                .put(NOZZLE, line.nozzleM())
                .put(AT, Places.numbers(line.atM()))
                .put(YAW, line.yawRad())
                .put(PITCH, line.pitchRad());
    }
}
