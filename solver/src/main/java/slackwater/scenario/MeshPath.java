package slackwater.scenario;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import slackwater.geometry.MeshFault;

/** Where a mesh may lie: in the scenario's folder or below, so that a stranger's file cannot make us read others. */
final class MeshPath {
    private static final String STAY = "must lie in the scenario's folder or below; copy it there";

    private MeshPath() {
    }

    static Path within(Path folder, String name) throws MeshFault {
        try {
            Path path = folder.resolve(name).normalize();
            if (Path.of(name).isAbsolute() || !path.startsWith(folder.normalize())) {
                throw new MeshFault(STAY);
            }
            if (Files.exists(path) && !path.toRealPath().startsWith(folder.toRealPath())) {
                throw new MeshFault(STAY);
            }
            return path;
        } catch (InvalidPathException | IOException unusable) {
            throw new MeshFault("is no usable file name; " + STAY);
        }
    }
}
