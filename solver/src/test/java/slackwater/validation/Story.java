package slackwater.validation;

import java.lang.reflect.Method;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Tag;

/**
 * All that the page tells of a case; stored as one file per case, from which the page is put together.
 *
 * @param run in which build the case runs: every one, or the full one
 * @param grid cells and what else fixes the resolution
 * @param plots names of the plots' files
 */
record Story(String title, Group group, String source, String where, String known, String why, String run, String grid,
             List<Row> rows, List<String> plots) {
    /** What the annotation alone tells, with neither grid nor rows. */
    static Story of(Method test) {
        Validated words = test.getAnnotation(Validated.class);
        Tag tag = test.isAnnotationPresent(Tag.class) ? test.getAnnotation(Tag.class)
                : test.getDeclaringClass().getAnnotation(Tag.class);
        return new Story(words.value(), words.group(), words.source(), words.where(), words.known().words,
                words.tolerance(), tag == null ? "every build" : tag.value(), "", List.of(), List.of());
    }

    /** True for a case of the full set that has no result yet: it has not been run since the solver last changed. */
    boolean waits() {
        return !run.equals("every build") && !Files.exists(Page.FOLDER.resolve(name() + ".json"));
    }

    /** The case's name as a file's, without ending. */
    String name() {
        return title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    Story withResults(String cells, List<Row> found, List<String> drawn) {
        return new Story(title, group, source, where, known, why, run, cells, List.copyOf(found), List.copyOf(drawn));
    }

    /** Only what the annotation tells. */
    Story words() {
        return withResults("", List.of(), List.of());
    }
}
