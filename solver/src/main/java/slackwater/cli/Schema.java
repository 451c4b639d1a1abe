package slackwater.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.pump.catalogue.CatalogueReader;
import slackwater.scenario.ScenarioSchema;
import slackwater.search.WishesReader;

/** Prints the form of a scenario file. */
@Command(name = "schema", mixinStandardHelpOptions = true,
        description = "Prints the form of a scenario file, or of another file that you write, as a JSON Schema, for"
                + " editors that check while you type.",
        footer = {"", "Examples:", "  slackwater schema > slackwater.schema.json",
            "  slackwater schema --markdown    the same as a table to read",
            "  slackwater schema --of pump     of a file of the catalogue"})
final class Schema implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--markdown", description = "Print a table of all keys instead.")
    private boolean markdown;

    @Option(names = "--of", paramLabel = "FILE", defaultValue = "scenario",
            description = "Which file's: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).")
    private Form form;

    /** Files that a keeper writes. */
    private enum Form {
        SCENARIO, PUMP, WISHES
    }

    @Override
    public Integer call() {
        String text = switch (form) {
            case SCENARIO -> markdown ? ScenarioSchema.markdown() : ScenarioSchema.json();
            case PUMP -> markdown ? CatalogueReader.markdown() : CatalogueReader.json();
            case WISHES -> markdown ? WishesReader.markdown() : WishesReader.json();
        };
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
