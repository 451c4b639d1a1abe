package slackwater.cli;

import java.util.List;
import java.util.Optional;
import slackwater.analysis.Probes;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.Probe;
import slackwater.field.Velocity;
import slackwater.scenario.Scenario;

/**
 * A scenario on cells of one size, ready to be computed.
 *
 * @param haste share of the usual step that is taken
 */
record Setup(Scenario scenario, long seed, double haste, Voxels voxels, Discretisation discretisation,
             List<Probe> probes) {
    /** @throws slackwater.field.UnfitGrid if the tank, an outlet, the weir or a coral has no water at this cell size */
    static Setup of(Scenario scenario, double cellSizeM, long seed) {
        Voxels voxels = Voxels.of(scenario.tank(), scenario.rocks(), cellSizeM);
        return new Setup(scenario, seed, 1, voxels, Discretiser.discretise(scenario, voxels, seed),
                Probes.of(scenario, voxels.grid(), voxels.fluid()));
    }

    /** The same with half the step. */
    Setup slower() {
        double half = haste / 2;
        return new Setup(scenario, seed, half, voxels, Discretiser.discretise(scenario, voxels, seed, half)
                .begunWith(discretisation.start()), probes);
    }

    /** The same, begun with water that is given, if any is. */
    Setup begunWith(Optional<Velocity> water) {
        return new Setup(scenario, seed, haste, voxels, discretisation.begunWith(water), probes);
    }

    /** The same with nobody watching at any place. */
    Setup unwatched() {
        return new Setup(scenario, seed, haste, voxels, discretisation, List.of());
    }
}
