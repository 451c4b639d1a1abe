package slackwater;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every citation key in the code leads to docs/references.md, and every entry there says how well it is known. */
class ReferencesTest {
    private static final Path PAGE = Path.of("..", "docs", "references.md");
    private static final Path CODE = Path.of("src", "main", "java");
    private static final Pattern KEY = Pattern.compile("\\[([A-Z][A-Za-z]+[0-9]{4}[a-z]?)]");
    private static final Pattern ENTRY = Pattern.compile("(?m)^- \\*\\*" + KEY + "\\*\\* .+");
    private static final Pattern KNOWN = Pattern.compile("\\((read|second-hand|from memory)\\)");

    @Test
    void everyKeyInTheCodeIsResolved() throws IOException {
        Set<String> cited = keys(code());
        assertTrue(cited.size() >= 8, "found only " + cited);
        cited.removeAll(entries());
        assertEquals(Set.of(), cited, "cited in the code, not in docs/references.md");
    }

    @Test
    void everyKeyedEntryIsCited() throws IOException {
        Set<String> entries = entries();
        entries.removeAll(keys(code()));
        assertEquals(Set.of(), entries, "in docs/references.md under a key, cited nowhere in the code");
    }

    @Test
    void everyEntrySaysHowWellItIsKnown() throws IOException {
        List<String> silent = Pattern.compile("(?m)^- (.+(?:\\n  .+)*)").matcher(Files.readString(PAGE)).results()
                .map(MatchResult::group).filter(entry -> !KNOWN.matcher(entry).find()).toList();
        assertEquals(List.of(), silent);
    }

    private static Set<String> entries() throws IOException {
        return ENTRY.matcher(Files.readString(PAGE)).results().map(entry -> entry.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> keys(String text) {
        return KEY.matcher(text).results().map(key -> key.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String code() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(CODE)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).sorted().toList()) {
                all.append(Files.readString(file));
            }
        }
        return all.toString();
    }
}
