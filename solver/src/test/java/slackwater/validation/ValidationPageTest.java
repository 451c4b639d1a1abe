package slackwater.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every case says where its values come from, and docs/validation.md holds every case and nothing else. */
class ValidationPageTest {
    private static final int SHORTEST_REASON = 40;

    @Test
    void everyTestHereSaysWhereItsValuesComeFrom() {
        List<String> silent = Cases.tests().stream().filter(test -> !test.isAnnotationPresent(Validated.class))
                .map(Method::toString).toList();
        assertEquals(List.of(), silent);
        assertTrue(Cases.all().size() >= 2, "found only " + Cases.all());
    }

    @Test
    void noneOfTheWordsIsEmpty() {
        for (Story story : Cases.all()) {
            assertTrue(story.title().length() > 5 && !story.source().isBlank() && !story.where().isBlank(),
                    story.toString());
            assertTrue(story.why().length() >= SHORTEST_REASON, "the tolerance needs a reason: " + story);
        }
    }

    @Test
    void everyCaseIsStoredWithItsWords() throws IOException {
        for (Story story : Cases.all()) {
            if (story.waits()) {
                continue;
            }
            if (Boolean.getBoolean("slackwater.write")) {
                Page.storeWords(story); // new words need no new run
            }
            assertEquals(Page.json(story), Page.json(Page.load(story.name()).words()), story.title() + Page.STALE);
        }
    }

    @Test
    void nothingElseIsStored() throws IOException {
        Set<String> wanted = new TreeSet<>();
        for (Story story : Cases.all()) {
            if (story.waits()) {
                continue;
            }
            wanted.add(story.name() + ".json");
            wanted.addAll(Page.load(story.name()).plots());
        }
        try (Stream<Path> files = Files.list(Page.FOLDER)) {
            assertEquals(wanted, files.map(file -> file.getFileName().toString())
                    .collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    @Test
    void thePageIsWhatTheCasesMakeOfIt() throws IOException {
        if (Boolean.getBoolean("slackwater.write")) {
            Files.writeString(Page.PAGE, Page.text());
        }
        assertEquals(Page.text(), Files.readString(Page.PAGE), "docs/validation.md" + Page.STALE);
    }
}
