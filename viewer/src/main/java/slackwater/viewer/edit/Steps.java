package slackwater.viewer.edit;

import slackwater.geometry.Vec3;
import slackwater.units.Unit;

/**
 * The steps in which things move and turn, so that what is saved has round numbers.
 *
 * @param unit the person's unit of length
 * @param length step of a place, in that unit
 * @param angleDeg step of an aim, degrees
 */
public record Steps(Unit unit, double length, double angleDeg) {
    public static final Steps METRIC = new Steps(Unit.CM, 0.5, 1);
    public static final Steps US = new Steps(Unit.INCH, 0.25, 1);

    /** The nearest place on the steps, metres. */
    public Vec3 place(Vec3 placeM) {
        return new Vec3(length(placeM.x()), length(placeM.y()), length(placeM.z()));
    }

    private double length(double lengthM) {
        return unit.toSi(Math.rint(unit.fromSi(lengthM) / length) * length);
    }

    /** The nearest angle on the steps, radians. */
    public double angle(double angleRad) {
        return Unit.DEGREE.toSi(Math.rint(Unit.DEGREE.fromSi(angleRad) / angleDeg) * angleDeg);
    }

    /** One step of a place, metres. */
    public double lengthM() {
        return unit.toSi(length);
    }
}
