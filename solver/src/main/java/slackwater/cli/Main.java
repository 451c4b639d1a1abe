package slackwater.cli;

import java.io.PrintWriter;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import slackwater.field.UnfitGrid;
import slackwater.report.NotWrittenException;
import slackwater.scenario.ScenarioFaults;
import slackwater.search.LogNotWritten;

/** The program: its sub-commands, and what the shell is told when something goes wrong. */
@Command(name = "slackwater", mixinStandardHelpOptions = true, versionProvider = Version.class,
        description = "Tells a reef keeper what the water will do in the tank.",
        subcommands = {Run.class, Place.class, Compare.class, WhatIf.class, Feed.class, Check.class, Bench.class,
            Schema.class, GenerateCompletion.class},
        footer = {"", "Examples:",
            "  slackwater check scenarios/terrace-120.toml",
            "  slackwater run scenarios/terrace-120.toml",
            "  source <(slackwater generate-completion)    completion of commands in this shell"})
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec;

    private Main() {
    }

    public static void main(String[] arguments) {
        start(Extras.NONE, arguments);
    }

    /** The whole program with what comes to it from elsewhere: runs the command line and exits. */
    public static void start(Extras extras, String... arguments) {
        PrintWriter out = new PrintWriter(System.out, true, Terminal.charset());
        PrintWriter err = new PrintWriter(System.err, true, Terminal.charset());
        System.exit(run(out, err, extras, arguments));
    }

    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        return run(out, err, Extras.NONE, arguments);
    }

    /** Runs a command line and returns the exit code; nothing is printed but to the two writers. */
    public static int run(PrintWriter out, PrintWriter err, Extras extras, String... arguments) {
        CommandLine line = new CommandLine(new Main(), extras.factory());
        extras.commands().forEach(line::addSubcommand);
        line.setOut(out).setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setParameterExceptionHandler((fault, all) -> badUse(fault, err));
        line.setExecutionExceptionHandler((thrown, command, parsed) -> failed(thrown, err));
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError full) {
            err.println("Java ran out of memory: take larger cells (--cell-cm), or give it more with the environment"
                    + " variable SLACKWATER_MEMORY (for example 8g).");
            return ExitCode.BAD_INPUT;
        }
    }

    private static int badUse(ParameterException fault, PrintWriter err) {
        err.println(Misuse.words(fault));
        CommandLine.UnmatchedArgumentException.printSuggestions(fault, err);
        err.println("See '" + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help'.");
        return ExitCode.BAD_INPUT;
    }

    private static int failed(Exception thrown, PrintWriter err) {
        if (thrown instanceof ScenarioFaults || thrown instanceof BadInput || thrown instanceof UnfitGrid
                || thrown instanceof NotWrittenException || thrown instanceof LogNotWritten) {
            err.println(thrown.getMessage());
            return ExitCode.BAD_INPUT;
        }
        err.println("Something went wrong inside slackwater, which is our fault. Please report this:");
        thrown.printStackTrace(err);
        return ExitCode.INTERNAL;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
