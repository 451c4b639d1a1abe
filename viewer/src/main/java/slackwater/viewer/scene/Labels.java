package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.CoralReading;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/** Names of things with what there is to say of each. */
public final class Labels {
    private static final int LONGEST_NAME = 34;

    private Labels() {
    }

    /** Corals with reading and verdict, pumps with their output, return and weir. */
    public static List<Label> of(Scene scene, Units units) {
        List<Label> labels = new ArrayList<>();
        Scenario scenario = scene.scenario();
        boolean pale = scene.water().isPresent() && !scene.water().get().settled();
        for (int n = 0; n < scenario.corals().size(); n++) {
            labels.add(scene.readings().isEmpty() ? plain(scenario.corals().get(n))
                    : read(scene.readings().get(n), units, pale));
        }
        scenario.pumps().forEach(pump -> labels.add(pump(pump, units)));
        scenario.returnLine().ifPresent(line -> labels.add(new Label(line.atM(), line.nozzleM(), "return",
                units.flow(line.flowM3PerS()), Palette.PUMP, false)));
        scenario.overflow().ifPresent(weir -> labels.add(new Label(TankParts.middle(weir, scenario.tank()), 0,
                "overflow", "", Palette.PUMP, false)));
        return labels;
    }

    private static Label plain(Coral coral) {
        return new Label(CoralParts.topM(coral), coral.sizeM() / 3, shortened(coral.name()),
                CoralNeeds.nameOf(coral.group()), Palette.PLAIN, false);
    }

    private static Label read(CoralReading reading, Units units, boolean pale) {
        String detail = units.speed(reading.reading().meanMPerS()) + " " + units.speedUnit() + "  "
                + reading.verdict().symbol() + " " + reading.verdict().word();
        Coral coral = reading.coral();
        return new Label(CoralParts.topM(coral), coral.sizeM() / 3, shortened(coral.name()), detail,
                Palette.of(reading.verdict()), pale);
    }

    private static Label pump(Pump pump, Units units) {
        Vec3 behind = pump.atM().minus(pump.aim().times(0.02));
        String detail = pump.outputFraction() > 0
                ? units.flow(pump.flowM3PerS() * pump.outputFraction() * (1 - pump.foulingFraction())) : "off";
        return new Label(behind, Math.sqrt(pump.outlet().areaM2() / 3), shortened(pump.name()), detail, Palette.PUMP,
                false);
    }

    private static String shortened(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST_NAME ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST_NAME - 1)) + "\u2026";
    }
}
