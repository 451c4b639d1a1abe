package slackwater.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
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
        List<String> silent = tests().stream().filter(test -> !test.isAnnotationPresent(Validated.class))
                .map(Method::toString).toList();
        assertEquals(List.of(), silent);
        assertTrue(cases().size() >= 2, "found only " + cases());
    }

    @Test
    void noneOfTheWordsIsEmpty() {
        for (Story story : cases()) {
            assertTrue(story.title().length() > 5 && !story.source().isBlank() && !story.where().isBlank(),
                    story.toString());
            assertTrue(story.why().length() >= SHORTEST_REASON, "the tolerance needs a reason: " + story);
        }
    }

    @Test
    void everyCaseIsStoredWithItsWords() throws IOException {
        for (Story story : cases()) {
            if (Boolean.getBoolean("slackwater.write")) {
                Page.storeWords(story); // new words need no new run
            }
            assertEquals(Page.json(story), Page.json(Page.load(story.name()).words()), story.title() + Page.STALE);
        }
    }

    @Test
    void nothingElseIsStored() throws IOException {
        Set<String> wanted = new TreeSet<>();
        for (Story story : cases()) {
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

    private static List<Story> cases() {
        return tests().stream().filter(test -> test.isAnnotationPresent(Validated.class)).map(Story::of).toList();
    }

    /** Every test method of this package but for those of this class. */
    private static List<Method> tests() {
        return new ClassFileImporter().importPackages("slackwater.validation").stream()
                .filter(owner -> !owner.isEquivalentTo(ValidationPageTest.class)).map(JavaClass::getMethods)
                .flatMap(Set::stream).filter(ValidationPageTest::isTest).map(JavaMethod::reflect).toList();
    }

    /** Whether JUnit would run the method: its annotation, whichever it is, is one of JUnit's own test annotations. */
    private static boolean isTest(JavaMethod method) {
        return method.getAnnotations().stream()
                .anyMatch(mark -> mark.getRawType().getSimpleName().matches("(.*Test|Test.*)")
                        && mark.getRawType().getPackageName().startsWith("org.junit"));
    }
}
