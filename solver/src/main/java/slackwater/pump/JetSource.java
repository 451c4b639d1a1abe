package slackwater.pump;

import slackwater.geometry.Vec3;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;

/**
 * What a pump or nozzle does to the water: a force over a small disc (or sheet). Far from the pump only its kinematic
 * momentum flux M matters (thrust over density), so M is exact and the disc may be widened to fit a grid.
 *
 * <p>A disc of area A_d that pushes with M sends out a slipstream of speed sqrt(2 M/A_d) and area A_d/2 (Rankine and
 * Froude, [Rajaratnam1976] for the far field). The disc therefore has the area 2 A/k, with A the outlet and k the
 * thrust factor: for a nozzle (k = 1) the slipstream is the jet Q/A itself, for a bare propeller (k = 2) the disc is
 * its own.
 *
 * @param name the pump's name
 * @param atM centre of the disc, metres
 * @param aim unit vector along the jet
 * @param across unit vector along the width of a slot, square to the aim
 * @param round whether the disc is round
 * @param halfWidthM radius, or half the width along {@code across}, metres
 * @param halfHeightM radius, or half the height, metres
 * @param momentumFluxM4PerS2 M at full speed, m4/s2
 * @param flowM3PerS flow Q at full speed
 * @param pattern change of the speed with time; the force goes with its square
 */
public record JetSource(String name, Vec3 atM, Vec3 aim, Vec3 across, boolean round, double halfWidthM,
                        double halfHeightM, double momentumFluxM4PerS2, double flowM3PerS, Pattern pattern) {
    /** The jet of a pump at its set output. */
    public static JetSource of(Pump pump) {
        double flow = pump.flowM3PerS() * pump.outputFraction() * (1 - pump.foulingFraction());
        double momentum = pump.thrustFactor() * flow * flow / pump.outlet().areaM2();
        double widen = Math.sqrt(2 / pump.thrustFactor());
        Vec3 aim = pump.aim();
        Vec3 across = across(aim, pump.yawRad(), pump.rollRad());
        if (pump.outlet() instanceof Outlet.Slot slot) {
            return new JetSource(pump.name(), pump.atM(), aim, across, false, widen * slot.widthM() / 2,
                    widen * slot.heightM() / 2, momentum, flow, pump.pattern());
        }
        double radius = widen * ((Outlet.Round) pump.outlet()).diameterM() / 2;
        return new JetSource(pump.name(), pump.atM(), aim, across, true, radius, radius, momentum, flow,
                pump.pattern());
    }

    /** The jet of the return's nozzle. */
    public static JetSource of(Return line) {
        double flow = line.flowM3PerS();
        Outlet nozzle = new Outlet.Round(line.nozzleM());
        double radius = Math.sqrt(2) * line.nozzleM() / 2;
        return new JetSource("return", line.atM(), line.aim(), across(line.aim(), line.yawRad(), 0), true, radius,
                radius, flow * flow / nozzle.areaM2(), flow, Pattern.STEADY);
    }

    /** Reynolds number of the jet, sqrt(4 M/pi)/nu: for a round nozzle its speed times its diameter over nu. */
    public double reynolds(double kinematicViscosityM2PerS) {
        return Math.sqrt(4 * momentumFluxM4PerS2 / Math.PI) / kinematicViscosityM2PerS;
    }

    /** Speed of the jet when the disc is widened to at least a given half width, m/s. */
    public double slipstreamMPerS(double leastHalfM) {
        double width = Math.max(halfWidthM, leastHalfM);
        double height = Math.max(halfHeightM, leastHalfM);
        double area = round ? Math.PI * width * width : 4 * width * height;
        return Math.sqrt(2 * momentumFluxM4PerS2 / area);
    }

    /** The level direction square to the aim, turned about the aim by the roll. */
    private static Vec3 across(Vec3 aim, double yawRad, double rollRad) {
        Vec3 level = new Vec3(-Math.sin(yawRad), Math.cos(yawRad), 0);
        Vec3 upright = aim.cross(level);
        return level.times(Math.cos(rollRad)).plus(upright.times(Math.sin(rollRad)));
    }
}
