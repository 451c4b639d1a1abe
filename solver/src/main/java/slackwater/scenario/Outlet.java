package slackwater.scenario;

/** The opening that a pump blows through. */
public sealed interface Outlet {
    double areaM2();

    /** Round, diameter in metres. */
    record Round(double diameterM) implements Outlet {
        @Override
        public double areaM2() {
            return Math.PI / 4 * diameterM * diameterM;
        }
    }

    /** A wide sheet; the width lies level unless the pump is rolled. Metres. */
    record Slot(double widthM, double heightM) implements Outlet {
        @Override
        public double areaM2() {
            return widthM * heightM;
        }
    }
}
