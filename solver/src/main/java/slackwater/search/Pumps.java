package slackwater.search;

import java.util.List;
import slackwater.scenario.Pump;

/** Pumps with one thing changed. */
final class Pumps {
    private Pumps() {
    }

    /** At another output, 0..1. */
    static Pump at(Pump pump, double outputFraction) {
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), pump.atM(), pump.yawRad(), pump.pitchRad(),
                pump.rollRad(), outputFraction, pump.foulingFraction(), pump.thrustFactor(), pump.pattern());
    }

    /** All at a multiple of their outputs. */
    static List<Pump> times(List<Pump> pumps, double factor) {
        return pumps.stream().map(pump -> at(pump, pump.outputFraction() * factor)).toList();
    }

    /** With a share of the flow lost to dirt. */
    static Pump fouled(Pump pump, double fraction) {
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), pump.atM(), pump.yawRad(), pump.pitchRad(),
                pump.rollRad(), pump.outputFraction(), fraction, pump.thrustFactor(), pump.pattern());
    }

    /** Turned sideways and up. */
    static Pump turned(Pump pump, double yawRad, double pitchRad) {
        double pitch = Math.max(-Math.PI / 2, Math.min(Math.PI / 2, pump.pitchRad() + pitchRad));
        return new Pump(pump.name(), pump.flowM3PerS(), pump.outlet(), pump.atM(), pump.yawRad() + yawRad, pitch,
                pump.rollRad(), pump.outputFraction(), pump.foulingFraction(), pump.thrustFactor(), pump.pattern());
    }
}
