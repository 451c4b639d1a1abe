package slackwater.validation;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import slackwater.lattice.Faces;

/** Taylor and Green's vortices at Re 1600: they break up into turbulence, which decays. Time in L/U, edge 2 pi L. */
class TaylorGreenTest {
    private static final String SOURCE = "512^3 spectral solution of the International Workshops on High-Order CFD"
            + " Methods; points: Brachet et al. 1983, J. Fluid Mech. 130, 411-452, digitised by others, +-2 %";
    private static final String WHERE = "workshop case C3.5: peak of -dE/dt 0.0128575 U^3/L at t 8.97";
    private static final String HEIGHT = "greatest -dE/dt, U^3/L";
    private static final String TIME = "its time, L/U";
    private static final double SPEED = 0.05;
    private static final double PEAK = 0.0128575;
    private static final double PEAK_TIME = 8.97;

    @Test
    @Validated(value = "Taylor-Green vortices, Re 1600, 64 cells", group = Group.TURBULENCE, source = SOURCE,
            where = WHERE, known = Known.SECOND_HAND,
            tolerance = "at 64 cells this is a large-eddy simulation: resolved decay 30 % about the full solution's,"
                    + " its peak within 0.5 L/U, as published ones of this size", chaotic = true)
    void coarse(Sheet sheet) {
        Peak peak = compare(sheet, 64);
        sheet.within(HEIGHT, Range.of(PEAK), Tolerance.share(0.3), peak.height());
        sheet.miss(TIME, Range.of(PEAK_TIME), Tolerance.plain(0.5), peak.time());
    }

    @Test
    @Tag("full")
    @Validated(value = "Taylor-Green vortices, Re 1600, 128 cells", group = Group.TURBULENCE, source = SOURCE,
            where = WHERE, known = Known.SECOND_HAND,
            tolerance = "a fourth of the full solution's cells each way: decay within 15 %, peak within 0.5 L/U",
            chaotic = true)
    void fine(Sheet sheet) {
        Peak peak = compare(sheet, 128);
        sheet.within(HEIGHT, Range.of(PEAK), Tolerance.share(0.15), peak.height());
        sheet.miss(TIME, Range.of(PEAK_TIME), Tolerance.plain(0.5), peak.time());
    }

    private record Peak(double height, double time) {
    }

    private static Peak compare(Sheet sheet, int edge) {
        sheet.grid(edge + " x " + edge + " x " + edge + " cells; U 0.05");
        double k = 2 * Math.PI / edge;
        double unit = 1 / (k * SPEED);
        int looks = 100;
        int steps = (int) Math.round(10 * unit / looks);
        double[] energy = new double[looks + 1];
        int[] size = {edge, edge, edge};
        try (Flow flow = Flow.of(Flow.box(size, Faces.periodic(), Flow.shipped(SPEED / k / 1600)))) {
            flow.start((x, y, z) -> start(k * x, k * y, k * z));
            energy[0] = flow.kineticEnergy();
            for (int look = 1; look <= looks; look++) {
                energy[look] = flow.advance(steps).kineticEnergy();
            }
        }
        double scale = SPEED * SPEED * edge * edge * edge;
        double[] times = new double[looks - 1];
        double[] decay = new double[looks - 1];
        int top = 0;
        for (int n = 0; n < decay.length; n++) {
            times[n] = (n + 1) * steps / unit;
            decay[n] = (energy[n] - energy[n + 2]) / scale / (2 * steps / unit);
            top = times[n] > 4 && decay[n] > decay[top] ? n : top;
        }
        Published brachet = Published.read("tgv_Re1600_Brachet_digitised.csv");
        sheet.plot(Plot.Axis.even("t, L/U"), Plot.Axis.even("-dE/dt, U^3/L")).line("ours", times, decay)
                .points("Brachet et al.", brachet.column("t"), brachet.column("minus_dE_dt"))
                .points("workshop, peak", new double[] {PEAK_TIME}, new double[] {PEAK});
        return new Peak(decay[top], times[top]);
    }

    private static double[] start(double x, double y, double z) {
        double pressure = 3.0 / 16 * SPEED * SPEED * (Math.cos(2 * x) + Math.cos(2 * y)) * (Math.cos(2 * z) + 2);
        return new double[] {pressure, SPEED * Math.sin(x) * Math.cos(y) * Math.cos(z),
            -SPEED * Math.cos(x) * Math.sin(y) * Math.cos(z), 0};
    }
}
