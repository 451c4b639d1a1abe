package slackwater.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import slackwater.discretisation.Discretisation;
import slackwater.discretisation.Discretiser;
import slackwater.discretisation.Voxels;
import slackwater.lattice.BoundaryCondition.FreeSlip;
import slackwater.lattice.BoundaryCondition.NoSlip;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;
import slackwater.scenario.ScenarioFaults;
import slackwater.scenario.ScenarioReader;

/** The tank that is timed, an invented one, with more and more of what a run has. */
enum BenchTank {
    OPEN("open water"),
    ROCK("with a ball of rock, 15 %"),
    WALLS("and the law of the wall"),
    PUMPS("and pumps, return and overflow"),
    RUN("as a run does it, with averages");

    private static final String FILE = "bench-tank.toml";

    private final String words;

    BenchTank(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The tank on cells of a size. */
    Discretisation on(double cellSizeM) {
        Scenario scenario = scenario();
        List<Rock> rocks = this == OPEN ? List.of() : scenario.rocks();
        Voxels voxels = Voxels.of(scenario.tank(), rocks, cellSizeM);
        Discretisation whole = Discretiser.discretise(scenario, voxels, 1);
        if (this == PUMPS || this == RUN) {
            return whole;
        }
        LatticeProblem problem = whole.problem();
        LatticeProblem less = this == WALLS
                ? new LatticeProblem(problem.nx(), problem.ny(), problem.nz(), problem.solid(), problem.surfaces(),
                        problem.faces(), problem.operator(), List.of(), List.of(), 1)
                : new LatticeProblem(problem.nx(), problem.ny(), problem.nz(), problem.solid(), plain(),
                        problem.operator(), List.of(), List.of(), 1);
        return new Discretisation(voxels, whole.units(), whole.plan(), less);
    }

    private static Faces plain() {
        NoSlip wall = new NoSlip();
        return new Faces(wall, wall, wall, wall, wall, new FreeSlip());
    }

    private static Scenario scenario() {
        try (InputStream text = BenchTank.class.getResourceAsStream(FILE)) {
            return ScenarioReader.read(new String(text.readAllBytes(), StandardCharsets.UTF_8), FILE, Path.of("."));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        } catch (ScenarioFaults faults) {
            throw new IllegalStateException(faults);
        }
    }
}
