package slackwater.discretisation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import slackwater.discretisation.Pace.Disc;
import slackwater.discretisation.Pace.Spout;
import slackwater.field.Grid;
import slackwater.field.UnfitGrid;
import slackwater.geometry.Vec3;
import slackwater.lattice.BodyForce;
import slackwater.lattice.CollisionOperator;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.lattice.MassSource;
import slackwater.lattice.Modulation;
import slackwater.pump.JetSource;
import slackwater.scenario.Overflow;
import slackwater.scenario.Pattern;
import slackwater.scenario.Pump;
import slackwater.scenario.Return;
import slackwater.scenario.Scenario;
import slackwater.units.LatticeUnits;
import slackwater.units.Seawater;

/** Turns a scenario into a lattice problem. The constants are argued for in docs/numerics.md. */
public final class Discretiser {
    /** Speed of the fastest source in cells a step: Mach 0.26. */
    private static final double LATTICE_SPEED = 0.15;
    private static final double SMAGORINSKY = 0.18;
    /** r.m.s. of the random part of a jet's force, as a share of the force. */
    private static final double FLUCTUATION = 0.2;
    /** A tank without any jet still needs a step: that of a jet this fast, m/s. */
    private static final double LEAST_SPEED_M_PER_S = 0.05;
    private static final double SHORTEST_TURN_S = 2;
    private static final double LONGEST_TURN_S = 60;
    private static final double WEIR_CELLS = 2;

    private Discretiser() {
    }

    /** The collision operator that runs use, for a relaxation time in steps; validation asks here what to test. */
    public static CollisionOperator operator(double relaxationTime) {
        return new Bgk(relaxationTime, SMAGORINSKY);
    }

    /** r.m.s. of the random part of a jet's force that runs use, as a share of the force, for validation too. */
    public static double fluctuation() {
        return FLUCTUATION;
    }

    /**
     * Puts a scenario on the cells cut for its tank.
     *
     * @throws UnfitGrid if the tank, an outlet or the weir has no water at this cell size, or the weir's cannot be
     *     reached from the return
     */
    public static Discretisation discretise(Scenario scenario, Voxels voxels, long seed) {
        return discretise(scenario, voxels, seed, 1);
    }

    /**
     * The same with shorter steps, for water that elsewhere goes faster than at any source.
     *
     * @param haste share of the usual step, above 0, at most 1
     */
    public static Discretisation discretise(Scenario scenario, Voxels voxels, long seed, double haste) {
        if (voxels.waterCells() == 0) {
            throw new UnfitGrid("rock and sand leave no water in the tank at this cell size");
        }
        double h = voxels.grid().cellSizeM();
        List<JetSource> jets = jets(scenario);
        List<Disc> discs = jets.stream().map(jet -> new Disc(jet, Patch.of(jet, voxels))).toList();
        List<Spout> spouts = spouts(scenario, voxels);
        double fastest = Math.max(LEAST_SPEED_M_PER_S, Pace.fastestMPerS(discs, spouts, voxels));
        double momentum = jets.stream().mapToDouble(JetSource::momentumFluxM4PerS2).sum();
        TimePlan plan = TimePlan.of(haste * LATTICE_SPEED * h / fastest, turnS(scenario, momentum),
                jets.stream().map(JetSource::pattern).toList());
        LatticeUnits units = new LatticeUnits(h, plan.timeStepS(), Seawater.DENSITY_KG_PER_M3);
        double tau = 0.5 + 3 * units.viscosity(Seawater.KINEMATIC_VISCOSITY_M2_PER_S);
        Grid grid = voxels.grid();
        LatticeProblem problem = new LatticeProblem(grid.nx(), grid.ny(), grid.nz(), voxels.solid(),
                Roughness.of(scenario.tank(), voxels), Faces.tank(), operator(tau),
                forces(discs, units), massSources(spouts, units), seed);
        return new Discretisation(voxels, units, plan, problem);
    }

    /** Time for the water to go once about the tank, V^(2/3)/sqrt(sum of M): an order of magnitude for the batches. */
    private static double turnS(Scenario scenario, double momentumFlux) {
        double turn = Math.pow(scenario.tank().waterVolumeM3(), 2.0 / 3) / Math.sqrt(momentumFlux);
        return Math.max(SHORTEST_TURN_S, Math.min(LONGEST_TURN_S, turn));
    }

    private static List<JetSource> jets(Scenario scenario) {
        List<JetSource> jets = new ArrayList<>();
        for (Pump pump : scenario.pumps()) {
            jets.add(JetSource.of(pump));
        }
        scenario.returnLine().map(JetSource::of).ifPresent(jets::add);
        jets.removeIf(jet -> jet.momentumFluxM4PerS2() == 0);
        return jets;
    }

    private static List<BodyForce> forces(List<Disc> discs, LatticeUnits units) {
        List<BodyForce> forces = new ArrayList<>();
        for (Disc disc : discs) {
            JetSource jet = disc.jet();
            Patch patch = disc.patch();
            double thrustN = Seawater.DENSITY_KG_PER_M3 * jet.momentumFluxM4PerS2();
            Vec3 force = jet.aim().times(units.force(thrustN));
            double least = Patch.LEAST_HALF_WIDTH_CELLS * units.cellSizeM();
            double turnoverS = 2 * Math.max(jet.halfWidthM(), least) / jet.slipstreamMPerS(least);
            forces.add(new BodyForce(patch.cells(), patch.weights(), force.x(), force.y(), force.z(), FLUCTUATION,
                    units.steps(turnoverS), modulation(jet.pattern(), units)));
        }
        return forces;
    }

    private static Modulation modulation(Pattern pattern, LatticeUnits units) {
        double period = units.steps(pattern.periodS());
        double low = pattern.lowFraction();
        double phase = pattern.phaseFraction();
        return switch (pattern.kind()) {
            case STEADY -> new Modulation.Steady();
            case PULSE -> new Modulation.Square(period, low, phase);
            case ALTERNATE -> new Modulation.Square(period, low, phase + 0.5);
            case SINE -> new Modulation.Sine(period, low, phase);
        };
    }

    private static List<MassSource> massSources(List<Spout> spouts, LatticeUnits units) {
        return spouts.stream().map(spout -> new MassSource(spout.patch().cells(), spout.patch().weights(),
                units.flow(spout.flowM3PerS()))).toList();
    }

    /** The nozzle's and the weir's cells, in so far as water can go from one to the other. */
    private static List<Spout> spouts(Scenario scenario, Voxels voxels) {
        if (scenario.returnLine().isEmpty() || scenario.overflow().isEmpty()) {
            return List.of();
        }
        Return line = scenario.returnLine().get();
        Patch nozzle = Patch.of(JetSource.of(line), voxels);
        BitSet reach = Reach.from(nozzle.nearest(line.atM(), voxels.grid()), voxels);
        Patch weir = weir(scenario.overflow().get(), voxels).within(reach).orElseThrow(() -> new UnfitGrid("rock and"
                + " sand leave no way for the water from the return to the overflow at this cell size: open one as"
                + " wide as two cells at least, or use smaller cells"));
        return List.of(new Spout(nozzle.within(reach).orElse(nozzle), line.flowM3PerS()),
                new Spout(weir, -line.flowM3PerS()));
    }

    private static Patch weir(Overflow weir, Voxels voxels) {
        Grid grid = voxels.grid();
        double h = grid.cellSizeM();
        double band = WEIR_CELLS * h;
        double top = grid.nz() * h;
        double width = grid.nx() * h;
        double depth = grid.ny() * h;
        double from = weir.fromM();
        double to = weir.toM();
        return switch (weir.wall()) {
            case FRONT -> box(voxels, from, to, 0, band, top - band);
            case BACK -> box(voxels, from, to, depth - band, depth, top - band);
            case LEFT -> box(voxels, 0, band, from, to, top - band);
            case RIGHT -> box(voxels, width - band, width, from, to, top - band);
        };
    }

    private static Patch box(Voxels voxels, double x0, double x1, double y0, double y1, double z0) {
        double above = (voxels.grid().nz() + 1) * voxels.grid().cellSizeM();
        return Patch.ofBox(voxels, new Vec3(x0, y0, z0), new Vec3(x1, y1, above), "overflow");
    }
}
