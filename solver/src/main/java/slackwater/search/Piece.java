package slackwater.search;

import slackwater.geometry.Vec3;
import slackwater.pump.catalogue.PumpModel;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;

/**
 * One pump to find a place for.
 *
 * @param name what to call it in the tank
 * @param model what is known of it
 * @param rollRad turn of a slot outlet about its aim, kept as it is
 * @param foulingFraction share of the flow lost to dirt, kept as it is
 * @param pattern change with time, kept as it is
 */
public record Piece(String name, PumpModel model, double rollRad, double foulingFraction, Pattern pattern) {
    /** A clean, steady, level pump of a model. */
    public static Piece of(String name, PumpModel model) {
        return new Piece(name, model, 0, 0, Pattern.STEADY);
    }

    /** A pump that a scenario has already. */
    public static Piece of(Pump pump) {
        return new Piece(pump.name(), PumpModel.of(pump), pump.rollRad(), pump.foulingFraction(), pump.pattern());
    }

    Pump placed(Vec3 atM, double yawRad, double pitchRad, double outputFraction) {
        return new Pump(name, model.flowM3PerS(), model.outlet(), atM, yawRad, pitchRad, rollRad, outputFraction,
                foulingFraction, model.thrustFactor(), pattern);
    }

    /** Half of the greater of the body's width and height, metres. */
    double reachM() {
        return Math.max(model.bodyM().y(), model.bodyM().z()) / 2;
    }

    /** Half of the greatest width of its outlet, metres. */
    double outletHalfM() {
        return model.outlet() instanceof Outlet.Slot slot ? Math.max(slot.widthM(), slot.heightM()) / 2
                : ((Outlet.Round) model.outlet()).diameterM() / 2;
    }
}
