package slackwater.validation;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** docs/validation.md and the files that it is made from, one for each case. */
final class Page {
    static final Path PAGE = Path.of("..", "docs", "validation.md");
    static final Path FOLDER = Path.of("..", "docs", "validation");
    static final String STALE = " (docs/validation.md is stale, or the solver has changed:"
            + " if that is meant, run the command at its top)";

    private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();
    private static final String TOP = """
            # Validation

            What the solver gives, against values that others have published or that are exact. Written by the tests;
            don't edit. To run every case and write this page and its plots anew, which takes an hour or so:

            ```
            mvn -B verify -Dslackwater.validation=full -Dslackwater.write=true
            ```

            Without `write` the tests compare instead, and a stale page fails: all words and published values must be
            equal, our values to the last digit printed, and to a quarter of the tolerance where the flow is turbulent
            and so differs with a machine's rounding. Cases marked `full` are left out of a plain `mvn verify`.

            *Known* says how the published value is known to us: *exact* (derived, or computed in the test), *read* in
            the source, *read second-hand* in a careful transcription, or *from memory*: check before quoting it. The
            error counts from the nearer end where several publications span a band. A **miss** is known, and its test
            fails when it is mended. The operator is the one that runs use; in flows that the cells resolve (exact
            solutions, cavities, step, sphere) it is used without its eddy viscosity, which stands for eddies below a
            cell. Turbulent cases use it whole.
            """;

    private Page() {
    }

    static Story load(String name) throws IOException {
        Path file = FOLDER.resolve(name + ".json");
        if (!Files.exists(file)) {
            throw new IOException(file + " is not there" + STALE);
        }
        return GSON.fromJson(Files.readString(file), Story.class);
    }

    static String json(Story story) {
        return GSON.toJson(story) + "\n";
    }

    /** Stores a case and its plots, and puts the page together anew. */
    static void store(Sheet sheet) throws IOException {
        Story story = sheet.story();
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve(story.name() + ".json"), json(story));
        for (Map.Entry<String, Plot> plot : sheet.plots().entrySet()) {
            Files.writeString(FOLDER.resolve(plot.getKey()), plot.getValue().svg());
        }
        Files.writeString(PAGE, text());
    }

    /** Stores what the annotation of a case now says, and keeps its results. */
    static void storeWords(Story words) throws IOException {
        Story stored = load(words.name());
        Story renewed = words.withResults(stored.grid(), stored.rows(), stored.plots());
        Files.writeString(FOLDER.resolve(words.name() + ".json"), json(renewed));
        Files.writeString(PAGE, text());
    }

    /** All stored cases, in the order of the page. */
    static List<Story> stories() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json")).toList();
            List<Story> stories = new ArrayList<>();
            for (String name : names) {
                stories.add(load(name.substring(0, name.length() - ".json".length())));
            }
            stories.sort(Comparator.comparing(Story::group).thenComparing(Story::title));
            return stories;
        }
    }

    /** The page as the stored cases make it. */
    static String text() throws IOException {
        List<Story> stories = stories();
        long all = stories.stream().mapToLong(story -> story.rows().size()).sum();
        long missed = stories.stream().flatMap(story -> story.rows().stream())
                .filter(row -> row.verdict().equals(Row.MISS)).count();
        StringBuilder page = new StringBuilder(TOP);
        page.append("\n").append(all).append(" quantities in ").append(stories.size()).append(" cases, ")
                .append(missed).append(missed == 1 ? " miss.\n" : " misses.\n");
        for (Group group : Group.values()) {
            List<Story> here = stories.stream().filter(story -> story.group() == group).toList();
            if (!here.isEmpty()) {
                page.append("\n## ").append(group.heading).append("\n\n");
                table(here, page);
                here.forEach(story -> below(story, page));
            }
        }
        List<Story> waiting = Cases.all().stream().filter(Story::waits).sorted(Comparator.comparing(Story::title))
                .toList();
        if (!waiting.isEmpty()) {
            page.append("\n## Written, but not run since the operator changed\n\n");
            waiting.forEach(story -> page.append("- ").append(story.title()).append(": ").append(story.source())
                    .append("; ").append(story.where()).append(" (").append(story.known()).append(")\n"));
        }
        return page.toString();
    }

    private static void table(List<Story> stories, StringBuilder page) {
        page.append("| case | quantity | published | ours | error | tolerance | | known | grid |\n");
        page.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        for (Story story : stories) {
            for (Row row : story.rows()) {
                String verdict = row.verdict().equals(Row.MISS) ? "**miss**" : row.verdict();
                page.append("| ").append(String.join(" | ", story.title(), row.quantity(), row.theirs(), row.ours(),
                        row.error(), row.tolerance(), verdict, story.known(), story.grid())).append(" |\n");
            }
        }
    }

    private static void below(Story story, StringBuilder page) {
        page.append("\n**").append(story.title()).append("** (run: ").append(story.run()).append("). Source: ")
                .append(story.source()).append("; ").append(story.where()).append(" (").append(story.known())
                .append("). Tolerance: ").append(story.why()).append("\n");
        for (String plot : story.plots()) {
            page.append("\n![").append(story.title()).append(": ours as lines, published as points](validation/")
                    .append(plot).append(")\n");
        }
    }
}
