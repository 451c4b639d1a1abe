package slackwater.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.extension.AfterTestExecutionCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands a case its sheet, and afterwards compares it with what is stored, or with -Dslackwater.write=true stores it.
 * Each case minds its own file, so the order of the tests does not matter.
 */
final class SheetKeeper implements ParameterResolver, AfterTestExecutionCallback {
    private static final ExtensionContext.Namespace SHEETS = ExtensionContext.Namespace.create(SheetKeeper.class);

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
        return parameter.getParameter().getType() == Sheet.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext test) {
        Sheet sheet = new Sheet(Story.of(test.getRequiredTestMethod()));
        test.getStore(SHEETS).put(Sheet.class, sheet);
        return sheet;
    }

    @Override
    public void afterTestExecution(ExtensionContext test) throws IOException {
        Sheet sheet = test.getStore(SHEETS).get(Sheet.class, Sheet.class);
        if (test.getExecutionException().isPresent()) {
            return;
        }
        assertTrue(!sheet.story().rows().isEmpty() && !sheet.story().grid().isEmpty(), "a case needs rows and a grid");
        if (Boolean.getBoolean("slackwater.write")) {
            Page.store(sheet);
        } else {
            compare(sheet, Page.load(sheet.story().name()),
                    test.getRequiredTestMethod().getAnnotation(Validated.class).chaotic());
        }
        assertEquals(List.of(), sheet.surprises());
    }

    private static void compare(Sheet sheet, Story stored, boolean chaotic) {
        Story fresh = sheet.story();
        assertEquals(fresh.rows().size(), stored.rows().size(), "rows of " + fresh.title() + Page.STALE);
        Story told = fresh;
        if (chaotic) {
            for (int n = 0; n < fresh.rows().size(); n++) {
                assertEquals(Double.parseDouble(stored.rows().get(n).ours()),
                        Double.parseDouble(fresh.rows().get(n).ours()), sheet.slack(n),
                        fresh.title() + ", " + fresh.rows().get(n).quantity() + Page.STALE);
            }
            List<Row> rows = IntStream.range(0, fresh.rows().size())
                    .mapToObj(n -> fresh.rows().get(n).withResultOf(stored.rows().get(n))).toList();
            told = fresh.withResults(fresh.grid(), rows, fresh.plots());
        }
        assertEquals(Page.json(told), Page.json(stored), "what docs/validation.md says of " + fresh.title()
                + Page.STALE);
    }
}
