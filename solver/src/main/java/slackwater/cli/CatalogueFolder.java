package slackwater.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A folder with the files of pumps. */
final class CatalogueFolder {
    private CatalogueFolder() {
    }

    /** The names of its pumps in one line. */
    static String names(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            String names = files.filter(file -> file.toString().endsWith(".toml")).map(Names::of).sorted()
                    .collect(Collectors.joining(", "));
            return names.isEmpty() ? "no pumps there" : names;
        } catch (IOException missing) {
            return "no such folder; to begin with copy scenarios/pumps beside your scenario, or give one with"
                    + " --catalogue";
        }
    }
}
