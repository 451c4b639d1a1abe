package slackwater;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a reader of the source can rely on, in the solver and in the viewer, code and tests alike. */
class SourceRulesTest {
    private static final int MOST_LINES = 500;
    private static final int LONGEST_LINE = 120;
    /** Spelt in two parts, so that this file may go by its own rules. */
    private static final List<String> UNFINISHED = List.of("TO" + "DO", "FIX" + "ME", "@Dis" + "abled");
    private static final Pattern PURPOSE = Pattern.compile("/\\*\\*(.+?)\\*/\\s*package [a-z.]+;", Pattern.DOTALL);

    @Test
    void noFileIsLongerThanItCanBeRead() {
        assertEquals(List.of(), faults((file, lines) -> lines.size() <= MOST_LINES ? List.of()
                : List.of(file + " has " + lines.size() + " lines, at most " + MOST_LINES)));
    }

    @Test
    void noLineIsLongerThanTheScreen() {
        assertEquals(List.of(), lines(line -> line.length() > LONGEST_LINE, "is longer than " + LONGEST_LINE));
    }

    @Test
    void noTabs() {
        assertEquals(List.of(), lines(line -> line.indexOf('\t') >= 0, "has a tab"));
    }

    @Test
    void nothingIsLeftForLater() {
        assertEquals(List.of(), lines(line -> UNFINISHED.stream().anyMatch(line::contains), "puts something off"));
    }

    @Test
    void everyPackageSaysItsPurposeInOneSentence() throws IOException {
        TreeSet<Path> folders = new TreeSet<>();
        Path main = Path.of("src", "main");
        sources().stream().filter(file -> file.subpath(2, 4).equals(main)).map(Path::getParent).forEach(folders::add);
        assertTrue(folders.size() > 10, "found only " + folders);
        List<String> faults = new ArrayList<>();
        for (Path folder : folders) {
            Path info = folder.resolve("package-info.java");
            Matcher purpose = PURPOSE.matcher(Files.exists(info) ? Files.readString(info) : "");
            String words = purpose.find() ? purpose.group(1).replaceAll("\\s*\\n \\*\\s*|\\s+", " ").trim() : "";
            if (!words.endsWith(".") || words.contains(". ")) {
                faults.add(info + ": found \"" + words + "\", must be one sentence");
            }
        }
        assertEquals(List.of(), faults);
    }

    private interface Rule {
        List<String> faults(Path file, List<String> lines);
    }

    private static List<String> faults(Rule rule) {
        return sources().stream().flatMap(file -> rule.faults(file, read(file)).stream()).toList();
    }

    private static List<String> lines(Predicate<String> wrong, String words) {
        return faults((file, lines) -> {
            List<String> faults = new ArrayList<>();
            for (int n = 0; n < lines.size(); n++) {
                if (wrong.test(lines.get(n))) {
                    faults.add(file + ":" + (n + 1) + " " + words);
                }
            }
            return faults;
        });
    }

    private static List<String> read(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    /** Every Java file of both modules. */
    private static List<Path> sources() {
        return Stream.of("solver", "viewer").map(module -> Path.of("..", module, "src"))
                .flatMap(SourceRulesTest::javaFiles).sorted().toList();
    }

    private static Stream<Path> javaFiles(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
