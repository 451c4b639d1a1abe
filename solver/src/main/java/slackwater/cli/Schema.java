package slackwater.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slackwater.scenario.ScenarioSchema;

/** Prints the form of a scenario file. */
@Command(name = "schema", mixinStandardHelpOptions = true,
        description = "Prints the form of a scenario file as a JSON Schema, for editors that check while you type.",
        footer = {"", "Examples:", "  slackwater schema > slackwater.schema.json",
            "  slackwater schema --markdown    the same as a table to read"})
final class Schema implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--markdown", description = "Print a table of all keys instead.")
    private boolean markdown;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(markdown ? ScenarioSchema.markdown() : ScenarioSchema.json());
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
