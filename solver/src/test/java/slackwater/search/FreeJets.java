package slackwater.search;

import java.util.List;
import java.util.function.Function;
import slackwater.analysis.CoralNeeds;
import slackwater.analysis.Verdict;
import slackwater.geometry.Vec3;
import slackwater.pump.JetSource;
import slackwater.scenario.Coral;
import slackwater.scenario.Pump;
import slackwater.scenario.Scenario;
import slackwater.scenario.SpeedRange;

/**
 * A trial function without a run, for problems with a known answer: free round jets in endless water, by Hussein, Capp
 * and George 1994, J. Fluid Mech. 258:31 (decay 5.8, half-radius 0.094 x), their speeds added as squares. No walls, no
 * rock, so still water is not read.
 */
final class FreeJets implements Function<Scenario, Outcome> {
    private static final double DECAY = 5.8;
    private static final double SPREAD = 0.094;

    @Override
    public Outcome apply(Scenario scenario) {
        List<CoralFinding> corals = scenario.corals().stream().map(coral -> coral(scenario, coral)).toList();
        return new Outcome.Read(new Finding(corals, 0, 0, 0, "", 0, true));
    }

    private static CoralFinding coral(Scenario scenario, Coral coral) {
        double squares = 0;
        for (Pump pump : scenario.pumps()) {
            squares += Math.pow(speedMPerS(JetSource.of(pump), coral.atM()), 2);
        }
        double speed = Math.sqrt(squares);
        SpeedRange range = CoralNeeds.rangeFor(coral);
        Verdict verdict = speed >= range.lowMPerS() && speed <= range.highMPerS() ? Verdict.PASS : Verdict.FAIL;
        return new CoralFinding(coral.name(), speed, speed, speed, range.lowMPerS(), range.highMPerS(), verdict);
    }

    static double speedMPerS(JetSource jet, Vec3 at) {
        Vec3 way = at.minus(jet.atM());
        double ahead = way.dot(jet.aim());
        if (ahead <= 0) {
            return 0;
        }
        double beside = way.minus(jet.aim().times(ahead)).length() / (SPREAD * ahead);
        // U_c = B U_0 D/x with U_0 D = sqrt(4 M/pi) for a top hat.
        double axis = DECAY * Math.sqrt(4 * jet.momentumFluxM4PerS2() / Math.PI) / Math.max(ahead, 0.05);
        return axis * Math.exp(-Math.log(2) * beside * beside);
    }
}
