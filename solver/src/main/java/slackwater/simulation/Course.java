package slackwater.simulation;

import java.util.List;
import java.util.Optional;
import slackwater.backend.FlowSolver;
import slackwater.backend.Moments;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.TimePlan;
import slackwater.lattice.Modulation;

/** A flow on its way from sample to sample, watched for numbers that run away. */
final class Course {
    /** Steps between two looks at most: what runs away soon fills the tank, and then nobody knows where it began. */
    private static final int LONGEST_UNSEEN = 100;

    private final Discretisation discretisation;
    private final FlowSolver solver;
    private final int stepsPerSample;
    private final Moments moments;
    private final float[] wallStress;
    private Health last;
    private double greatestMach;

    Course(Discretisation discretisation, FlowSolver solver, int stepsPerSample) {
        this.discretisation = discretisation;
        this.solver = solver;
        this.stepsPerSample = stepsPerSample;
        this.moments = new Moments(discretisation.problem().cells());
        this.wallStress = new float[moments.cells()];
        look();
    }

    /**
     * When samples are taken for statistics: half as often if no pump pulses, since speeds at corals are then alike by
     * 0.99 over a tenth of a second.
     */
    static TimePlan plan(Discretisation discretisation) {
        boolean steady = discretisation.problem().forces().stream()
                .allMatch(force -> force.modulation() instanceof Modulation.Steady);
        return steady ? discretisation.plan().thinned() : discretisation.plan();
    }

    private void look() {
        solver.read(moments);
        last = Health.of(moments, discretisation.voxels(), solver.threads());
    }

    /** Goes on to the next sample; false if the numbers ran away. */
    boolean sample() {
        for (int left = stepsPerSample; left > 0; left -= LONGEST_UNSEEN) {
            solver.advance(Math.min(left, LONGEST_UNSEEN));
            look();
            greatestMach = Math.max(greatestMach, last.mach());
            if (last.diverged()) {
                return false;
            }
        }
        return true;
    }

    /** Adds the present sample to averages and probes. */
    void addTo(Averages averages, List<ProbeRecord> probes) {
        solver.readWallStress(wallStress);
        averages.add(moments, wallStress, solver.threads());
        probes.forEach(probe -> probe.add(moments, discretisation.units().speedMPerS()));
    }

    /** Where the numbers ran away, if they did. */
    Optional<RunOutcome.Diverged> diverged(double waterS) {
        return last.diverged() ? Optional.of(last.divergedIn(discretisation.voxels().grid(), waterS))
                : Optional.empty();
    }

    /** The water as it was looked at last. */
    Moments moments() {
        return moments;
    }

    /** The walls' stress at the sample that was added last. */
    float[] wallStress() {
        return wallStress;
    }

    Health last() {
        return last;
    }

    double greatestMach() {
        return greatestMach;
    }
}
