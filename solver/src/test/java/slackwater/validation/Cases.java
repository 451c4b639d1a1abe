package slackwater.validation;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Method;
import java.util.List;
import java.util.Set;

/** The validation cases that there are, found in the compiled tests. */
final class Cases {
    private Cases() {
    }

    /** What the annotation of every case tells. */
    static List<Story> all() {
        return tests().stream().filter(test -> test.isAnnotationPresent(Validated.class)).map(Story::of).toList();
    }

    /** Every test method of this package but for those of the page's own test. */
    static List<Method> tests() {
        return new ClassFileImporter().importPackages("slackwater.validation").stream()
                .filter(owner -> !owner.isEquivalentTo(ValidationPageTest.class)).map(JavaClass::getMethods)
                .flatMap(Set::stream).filter(Cases::isTest).map(JavaMethod::reflect).toList();
    }

    /** Whether JUnit would run the method: its annotation, whichever it is, is one of JUnit's own test annotations. */
    private static boolean isTest(JavaMethod method) {
        return method.getAnnotations().stream()
                .anyMatch(mark -> mark.getRawType().getSimpleName().matches("(.*Test|Test.*)")
                        && mark.getRawType().getPackageName().startsWith("org.junit"));
    }
}
