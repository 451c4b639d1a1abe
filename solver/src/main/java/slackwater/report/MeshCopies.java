package slackwater.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import slackwater.geometry.Mesh;
import slackwater.geometry.Solid;
import slackwater.geometry.Union;
import slackwater.scenario.Rock;
import slackwater.scenario.Scenario;

/** The meshes that a scenario names, put beside its result by the same names, so that the result stands by itself. */
public final class MeshCopies {
    private MeshCopies() {
    }

    /**
     * Copies every mesh; a scenario's own folder is left as it is.
     *
     * @param file the scenario file, beside which the meshes lie
     * @throws NotWrittenException where one cannot be copied
     */
    public static void put(Scenario scenario, Path file, Path directory) {
        Path from = file.toAbsolutePath().normalize().getParent();
        Path to = directory.toAbsolutePath().normalize();
        try {
            for (String name : scenario.rocks().stream().map(Rock::solid).flatMap(solid -> names(solid).stream())
                    .distinct().toList()) {
                Path copy = to.resolve(name).normalize();
                if (!from.equals(to) && copy.startsWith(to)) {
                    Files.createDirectories(copy.getParent());
                    Files.copy(from.resolve(name), copy, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        } catch (IOException e) {
            throw new NotWrittenException(directory, e);
        }
    }

    private static List<String> names(Solid solid) {
        if (solid instanceof Union union) {
            return union.parts().stream().flatMap(part -> names(part).stream()).toList();
        }
        return solid instanceof Mesh mesh ? List.of(mesh.placement().file()) : List.of();
    }
}
