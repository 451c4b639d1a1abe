package slackwater.units;

import java.util.List;

/** What a number in a scenario measures, with the units it may be written in: the metric one first. */
public enum Dimension {
    /** Tanks, places and corals, metres. */
    LENGTH(Unit.CM, Unit.INCH),
    /** Outlets and grains, metres. */
    SMALL_LENGTH(Unit.MM, Unit.INCH),
    /** Cubic metres per second. */
    FLOW(Unit.LITRE_PER_HOUR, Unit.GALLON_PER_HOUR),
    /** Metres per second. */
    SPEED(Unit.CM_PER_S, Unit.INCH_PER_S),
    /** Radians. */
    ANGLE(Unit.DEGREE),
    /** A fraction. */
    SHARE(Unit.PERCENT),
    /** Seconds. */
    TIME(Unit.SECOND),
    /** Kilograms per cubic metre. */
    DENSITY(Unit.KG_PER_M3),
    /** Pascals. */
    STRESS(Unit.PASCAL),
    /** Watts. */
    POWER(Unit.WATT),
    /** A number with no unit. */
    PLAIN(Unit.NONE);

    private final List<Unit> units;

    Dimension(Unit... units) {
        this.units = List.of(units);
    }

    /** Every unit it may be written in, the metric one first. */
    public List<Unit> units() {
        return units;
    }

    public Unit metric() {
        return units.get(0);
    }
}
