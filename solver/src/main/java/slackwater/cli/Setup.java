package slackwater.cli;

import java.util.List;
import slackwater.analysis.Probes;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.field.Probe;
import slackwater.scenario.Scenario;

/** A scenario on cells of one size, ready to be computed. */
record Setup(Voxels voxels, Discretisation discretisation, List<Probe> probes) {
    /** @throws slackwater.field.UnfitGrid if the tank, an outlet, the weir or a coral has no water at this cell size */
    static Setup of(Scenario scenario, double cellSizeM, long seed) {
        Voxels voxels = Voxels.of(scenario.tank(), scenario.rocks(), cellSizeM);
        return new Setup(voxels, Discretiser.discretise(scenario, voxels, seed),
                Probes.of(scenario, voxels.grid(), voxels.fluid()));
    }
}
