package slackwater.detritus;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slackwater.field.Grid;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.CoralGroup;
import slackwater.scenario.Outlet;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;

/**
 * What grains can come to lie on or be drawn into: sand, rock and bottom pane as the grid has them, corals as thin
 * discs that the water does not feel, and the mouths of pumps.
 */
final class Ground {
    /** What lies on rock or sand this close to a coral's disc, metres, lies on the coral. */
    private static final double FOOT_M = 0.012;
    private static final double LEAST_MOUTH_CELLS = 1.5;
    private static final double[] LIFTS_CELLS = {0.1, 0.35, 0.6, 0.85, 1.1, 1.6, 2.1};
    private static final int TRIED = 200;

    private final Grid grid;
    private final boolean[] fluid;
    private final int sandCells;
    private final List<Disc> corals = new ArrayList<>();
    private final List<Footing> flesh = new ArrayList<>();
    private final List<Disc> pumps = new ArrayList<>();
    private final short[] coralNear;
    private final short[] pumpNear;
    private final double footCells;

    Ground(Scenario scenario, Grid grid, boolean[] fluid) {
        this.grid = grid;
        this.fluid = fluid;
        long layers = Math.round(scenario.tank().sandDepthM() / grid.cellSizeM());
        this.sandCells = (int) Math.min(fluid.length, layers * grid.nx() * grid.ny());
        this.footCells = 1 + FOOT_M / grid.cellSizeM();
        for (Coral coral : scenario.corals()) {
            corals.add(disc(coral));
            flesh.add(coral.group() == CoralGroup.SMALL_POLYP ? Footing.SAND : Footing.SMOOTH);
        }
        scenario.pumps().forEach(pump -> pumps.add(mouth(pump)));
        coralNear = near(corals, 2 * footCells);
        pumpNear = near(pumps, 2);
    }

    /** The disc of a coral, lifted off the steps of the grid until half of it is in water. */
    private Disc disc(Coral coral) {
        Disc most = Disc.of(coral.atM(), coral.facing(), coral.sizeM() / 2, grid);
        int wettest = -1;
        for (double lift : LIFTS_CELLS) {
            Disc tried = new Disc(Disc.of(coral.atM(), coral.facing(), 0, grid).centre()
                    .plus(coral.facing().normalised().times(lift)), coral.facing().normalised(), most.across());
            int wet = 0;
            for (int n = 0; n < TRIED; n++) {
                wet += isWater(tried.point((n + 0.5) / TRIED, 2.4 * n)) ? 1 : 0;
            }
            if (2 * wet >= TRIED) {
                return tried;
            }
            if (wet > wettest) {
                wettest = wet;
                most = tried;
            }
        }
        return most;
    }

    private Disc mouth(Pump pump) {
        double half = pump.outlet() instanceof Outlet.Slot slot ? slot.widthM() / 2
                : ((Outlet.Round) pump.outlet()).diameterM() / 2;
        double open = pump.outputFraction() > 0 ? 1 : 0;
        return Disc.of(pump.atM(), pump.aim(), open * Math.max(half, LEAST_MOUTH_CELLS * grid.cellSizeM()), grid);
    }

    /** For each cell the disc that it is nearest to, where it is within a reach of one; else -1. */
    private short[] near(List<Disc> discs, double reachCells) {
        short[] near = new short[fluid.length];
        Arrays.fill(near, (short) -1);
        double[] nearest = new double[fluid.length];
        for (int n = 0; n < discs.size(); n++) {
            Disc disc = discs.get(n);
            int span = (int) Math.ceil(disc.across() + reachCells + 1);
            for (int k = low(disc.centre().z(), span); k < high(disc.centre().z(), span, grid.nz()); k++) {
                for (int j = low(disc.centre().y(), span); j < high(disc.centre().y(), span, grid.ny()); j++) {
                    for (int i = low(disc.centre().x(), span); i < high(disc.centre().x(), span, grid.nx()); i++) {
                        double before = Math.abs(disc.before(i + 0.5, j + 0.5, k + 0.5));
                        double beside = disc.beside(i + 0.5, j + 0.5, k + 0.5) - disc.across();
                        double away = Math.max(before, Math.max(0, beside));
                        int cell = grid.index(i, j, k);
                        if (away < reachCells && (near[cell] < 0 || away < nearest[cell])) {
                            near[cell] = (short) n;
                            nearest[cell] = away;
                        }
                    }
                }
            }
        }
        return near;
    }

    private static int low(double centre, int span) {
        return Math.max(0, (int) Math.floor(centre) - span);
    }

    private static int high(double centre, int span, int count) {
        return Math.min(count, (int) Math.floor(centre) + span + 1);
    }

    boolean isWater(Vec3 cells) {
        return cells.x() >= 0 && cells.y() >= 0 && cells.z() >= 0 && cells.x() < grid.nx() && cells.y() < grid.ny()
                && cells.z() < grid.nz() && fluid[grid.index((int) cells.x(), (int) cells.y(), (int) cells.z())];
    }

    /** What lies under a cell of water that has a floor. */
    Place under(int cell) {
        int below = cell - grid.nx() * grid.ny();
        return below < 0 ? Place.GLASS : below < sandCells ? Place.SAND : Place.ROCK;
    }

    Footing footing(Place place, int coral) {
        return switch (place) {
            case SAND -> Footing.SAND;
            case ROCK -> Footing.BROKEN;
            case CORAL -> flesh.get(coral);
            default -> Footing.SMOOTH;
        };
    }

    /** The coral on whose foot a grain that comes to lie here is; -1 for none. */
    int coralAt(int cell, double x, double y, double z) {
        int near = coralNear[cell];
        return near >= 0 && isAt(near, x, y, z) ? near : -1;
    }

    /** Whether a place is on a coral's foot or just above it. */
    boolean isAt(int coral, double x, double y, double z) {
        Disc disc = corals.get(coral);
        return Math.abs(disc.before(x, y, z)) <= footCells && disc.beside(x, y, z) <= disc.across();
    }

    int coralNear(int cell) {
        return coralNear[cell];
    }

    int pumpNear(int cell) {
        return pumpNear[cell];
    }

    Disc coral(int n) {
        return corals.get(n);
    }

    Disc pump(int n) {
        return pumps.get(n);
    }

    int corals() {
        return corals.size();
    }
}
