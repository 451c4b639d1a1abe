package slackwater.units;

/**
 * The scale between SI and the lattice.
 *
 * @param cellSizeM edge of a cell, metres
 * @param timeStepS length of a step, seconds
 * @param densityKgPerM3 density that lattice density 1 stands for
 */
public record LatticeUnits(double cellSizeM, double timeStepS, double densityKgPerM3) {
    /** Metres per second of one cell a step. */
    public double speedMPerS() {
        return cellSizeM / timeStepS;
    }

    /** Kinematic viscosity, m2/s to lattice. */
    public double viscosity(double viscosityM2PerS) {
        return viscosityM2PerS * timeStepS / (cellSizeM * cellSizeM);
    }

    /** Force, newtons to momentum a step. */
    public double force(double forceN) {
        return forceN * timeStepS * timeStepS / (densityKgPerM3 * Math.pow(cellSizeM, 4));
    }

    /** Pascals of a lattice stress of 1. */
    public double stressPa() {
        return densityKgPerM3 * speedMPerS() * speedMPerS();
    }

    /** Volume flow, m3/s to cells a step. */
    public double flow(double flowM3PerS) {
        return flowM3PerS * timeStepS / Math.pow(cellSizeM, 3);
    }

    /** Seconds to steps. */
    public double steps(double seconds) {
        return seconds / timeStepS;
    }
}
