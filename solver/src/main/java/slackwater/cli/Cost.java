package slackwater.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.LongUnaryOperator;
import slackwater.backend.Backend;
import slackwater.backend.FlowSolver;
import slackwater.backend.cpu.CpuBackend;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.field.FlowRecorder;
import slackwater.field.Grid;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.scenario.Scenario;
import slackwater.scenario.Tank;
import slackwater.simulation.Simulator;

/**
 * What a run will cost.
 *
 * @param cells cells of the grid
 * @param bytes memory at most
 * @param leastS shortest wall time, seconds
 * @param mostS longest wall time, seconds
 */
public record Cost(long cells, long bytes, double leastS, double mostS) {
    private static final int TRIAL_EDGE = 48;
    private static final int TRIAL_STEPS = 120;
    private static final int WARM_UP_STEPS = 300;
    private static final double BYTES_PER_MIB = 1024.0 * 1024;
    private static final long FIXED_BYTES = 96L * 1024 * 1024;
    /**
     * Rock, links, statistics, the companion's too, and the voxeliser on top of the populations, bytes a cell: 60 were
     * measured; kinds of surface, cells at walls and two more fields of the statistics are 12 by count.
     */
    private static final long OTHER_BYTES_PER_CELL = 72;

    /**
     * Refuses a grid that this Java machine cannot hold, before anything is allocated.
     *
     * @throws BadInput if it does not fit
     */
    static void requireRoom(Scenario scenario, double cellSizeM) {
        refuse(List.of(scenario), cellSizeM, Cost::bytes);
    }

    /**
     * The same for tanks whose water is computed at the same time, other than in a run.
     *
     * @param cellSizeM edge of a cell of all of them, metres
     * @param bytesOfCells what so many cells need
     * @throws BadInput if they do not fit together
     */
    public static void requireRoom(List<Scenario> together, double cellSizeM, LongUnaryOperator bytesOfCells) {
        refuse(together, cellSizeM, (nx, ny, nz) -> bytesOfCells.applyAsLong((long) nx * ny * nz));
    }

    /** Memory of a grid, bytes. */
    private interface Need {
        long bytes(int nx, int ny, int nz);
    }

    private static void refuse(List<Scenario> together, double cellSizeM, Need need) {
        double cells = 0;
        double needed = 0;
        for (Scenario scenario : together) {
            Tank tank = scenario.tank();
            double nx = Math.ceil(tank.insideM().x() / cellSizeM);
            double ny = Math.ceil(tank.insideM().y() / cellSizeM);
            double nz = Math.ceil(tank.waterLevelM() / cellSizeM);
            cells += nx * ny * nz;
            needed += nx * ny * nz > Integer.MAX_VALUE ? Double.POSITIVE_INFINITY
                    : need.bytes((int) nx, (int) ny, (int) nz);
        }
        long room = Runtime.getRuntime().maxMemory();
        if (needed > room) {
            double cell = cellSizeM * 100 * Math.cbrt(Math.min(1e9, needed / room));
            throw new BadInput(String.format(Locale.ROOT, "%.0f million cells of %.3g cm need about %s of memory, and"
                    + " Java may use %.0f MB here: take cells of at least %.2g cm (--cell-cm), or give Java more with"
                    + " the environment variable SLACKWATER_MEMORY (for example 8g)", cells / 1e6, cellSizeM * 100,
                    Double.isInfinite(needed) ? "more than 150 GB" : String.format(Locale.ROOT, "%.0f MB",
                            needed / BYTES_PER_MIB), room / BYTES_PER_MIB, Math.ceil(cell * 10) / 10));
        }
    }

    /**
     * Refuses a problem that the back end cannot take.
     *
     * @throws BadInput with its obstacles
     */
    static void requireAble(Backend backend, LatticeProblem problem) {
        List<String> obstacles = backend.obstacles(problem);
        if (!obstacles.isEmpty()) {
            throw new BadInput(String.join("; ", obstacles));
        }
    }

    /**
     * Estimates a run by a short trial of the solver on this machine, in open water that fits its cache, so rather as
     * too short than as too long: the tank on cells that are larger by a ratio, fewer and with fewer steps, and then on
     * its own from there.
     */
    static Cost of(Discretisation discretisation, int threads, double ratio) {
        Grid grid = discretisation.voxels().grid();
        double perStepS = grid.cells() / trialCellsPerS(discretisation, threads);
        double[] steps = steps(discretisation.plan(), ratio, Double.POSITIVE_INFINITY);
        return new Cost(grid.cells(), bytes(grid.nx(), grid.ny(), grid.nz()), steps[0] * perStepS, steps[1] * perStepS);
    }

    /**
     * Steps of a run that begins with what a companion on larger cells ended with, least and most; the companion's are
     * in them, as so many on the run's own cells as cost the same: it has fewer cells and fewer steps.
     *
     * @param ratio how much larger the companion's cells are
     * @param turns of the water at most in each of the two; may be infinite
     */
    static double[] steps(TimePlan plan, double ratio, double turns) {
        double[] companion = steps(plan, true, turns);
        double[] own = steps(plan, false, turns);
        double share = 1 / Math.pow(ratio, 4);
        return new double[] {own[0] + share * companion[0], own[1] + share * companion[1]};
    }

    /** The same of a run by itself; one cut short has begun its last batch, half of which is to come. */
    static double[] steps(TimePlan plan, boolean fromRest, double turns) {
        long[] range = Simulator.stepRange(plan, fromRest);
        double most = (turns + 0.5) * plan.stepsPerSample() * plan.samplesPerBatch();
        return new double[] {Math.min(range[0], most), Math.min(range[1], most)};
    }

    private static long bytes(int nx, int ny, int nz) {
        long cells = (long) nx * ny * nz;
        return FIXED_BYTES + CpuBackend.populationBytes(nx, ny, nz) + Simulator.bytes(cells)
                + FlowRecorder.bytes(cells)
                + OTHER_BYTES_PER_CELL * cells;
    }

    private static double trialCellsPerS(Discretisation discretisation, int threads) {
        int cells = TRIAL_EDGE * TRIAL_EDGE * TRIAL_EDGE;
        LatticeProblem trial = new LatticeProblem(TRIAL_EDGE, TRIAL_EDGE, TRIAL_EDGE, new boolean[cells],
                Faces.tank(), discretisation.problem().operator(), List.of(), List.of(), 1);
        try (FlowSolver solver = new CpuBackend(threads).solver(trial)) {
            solver.advance(WARM_UP_STEPS);
            long start = System.nanoTime();
            solver.advance(TRIAL_STEPS);
            return (double) TRIAL_STEPS * cells / ((System.nanoTime() - start) * 1e-9);
        }
    }

    /** One line for the terminal. */
    String sentence() {
        return String.format(Locale.ROOT, "%,d cells, about %.0f MB of memory, %s to %s on this machine", cells,
                bytes / BYTES_PER_MIB, time(leastS), time(mostS));
    }

    /** A time in words: seconds, minutes or hours. */
    static String time(double seconds) {
        if (seconds < 90) {
            return String.format(Locale.ROOT, "%.0f s", Math.max(1, seconds));
        }
        return seconds < 5400 ? String.format(Locale.ROOT, "%.0f min", seconds / 60)
                : String.format(Locale.ROOT, "%.1f h", seconds / 3600);
    }
}
