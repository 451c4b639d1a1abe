package slackwater.validation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * On a test that compares the solver with a published or exact value. The test takes a {@link Sheet} and enters its
 * rows there; {@link SheetKeeper} compares them with docs/validation.md, or writes them.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@ExtendWith(SheetKeeper.class)
@interface Validated {
    /** Name of the case, for people; the files take theirs from it. */
    String value();

    Group group();

    /** Who published the value: authors, year, journal and page, or how it is derived. */
    String source();

    /** Table, figure or equation there. */
    String where();

    Known known();

    /** Why the tolerance is what it is. */
    String tolerance();

    /** True where another machine's rounding changes the flow (turbulence): then a quarter of the tolerance is free. */
    boolean chaotic() default false;
}
