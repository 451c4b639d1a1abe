package slackwater.viewer.scene;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slackwater.detritus.Scene;
import slackwater.geometry.Vec3;
import slackwater.scenario.Coral;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/**
 * Where grains that lie are to be seen. They lie on the steps of the cells; sand, rock and corals are drawn as they
 * are, so each is set onto what is drawn, straight up or down. What was found is kept, since a scan takes long to ask.
 */
public final class Seats {
    private static final double LIFT_M = 0.001;
    private static final int PIECES = 24;
    private static final int MOST_KEPT = 20_000;

    private final Scenario scenario;
    private final double reachM;
    private final Map<List<Float>, Float> found = new HashMap<>();

    /** @param cellSizeM of the water's grid, metres: no step is further off than that */
    public Seats(Scenario scenario, double cellSizeM) {
        this.scenario = scenario;
        this.reachM = cellSizeM;
    }

    /** The place of a grain that lies, metres. */
    float[] of(Scene scene, int n) {
        float x = scene.xM()[n];
        float y = scene.yM()[n];
        float z = scene.zM()[n];
        return switch (scene.place(n)) {
            case SAND -> new float[] {x, y, (float) (scenario.tank().sandDepthM() + LIFT_M)};
            case ROCK -> new float[] {x, y, onRock(x, y, z)};
            case CORAL -> scene.at()[n] < scenario.corals().size()
                    ? onCoral(scenario.corals().get(scene.at()[n]), new Vec3(x, y, z)) : new float[] {x, y, z};
            default -> new float[] {x, y, (float) (z + LIFT_M)};
        };
    }

    private static float[] onCoral(Coral coral, Vec3 at) {
        Vec3 facing = coral.facing().normalised();
        Vec3 off = at.minus(coral.atM());
        double before = off.dot(facing);
        double beside = off.minus(facing.times(before)).length();
        Vec3 seat = at.plus(facing.times(CoralParts.heightM(coral, beside) - before));
        return new float[] {(float) seat.x(), (float) seat.y(), (float) seat.z()};
    }

    private float onRock(float x, float y, float z) {
        if (found.size() > MOST_KEPT) {
            found.clear();
        }
        return found.computeIfAbsent(List.of(x, y, z), place -> (float) (top(x, y, z) + LIFT_M));
    }

    /** The highest rock within a cell above or below; the step itself where there is none. */
    private double top(double x, double y, double z) {
        for (int piece = 0; piece <= PIECES; piece++) {
            double height = z + reachM * (1 - 2.0 * piece / PIECES);
            Vec3 at = new Vec3(x, y, height);
            for (Rock rock : scenario.rocks()) {
                if (rock.solid().contains(at)) {
                    return height;
                }
            }
        }
        return z;
    }
}
