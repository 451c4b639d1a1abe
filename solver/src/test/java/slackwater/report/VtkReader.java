package slackwater.report;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The format's own library, VTK for Python. A test that asks for it where it is missing is left out and says so. */
final class VtkReader {
    private VtkReader() {
    }

    /** Runs a script with its arguments and returns what it prints. */
    static String run(String script, String... arguments) throws IOException, InterruptedException {
        List<String> python = List.of("python3", "/usr/bin/python3").stream().filter(VtkReader::hasVtk).limit(1)
                .toList();
        assumeTrue(!python.isEmpty(), "no Python with VTK here: install the package python3-vtk9 to run this check");
        return start(Stream.concat(Stream.of(python.get(0), "-c", script), Arrays.stream(arguments)).toList());
    }

    private static boolean hasVtk(String python) {
        try {
            return start(List.of(python, "-c", "import vtk; print('yes')")).equals("yes");
        } catch (IOException | InterruptedException missing) {
            return false;
        }
    }

    private static String start(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        process.waitFor();
        return output;
    }
}
