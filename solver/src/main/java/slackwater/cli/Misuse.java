package slackwater.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a command line, in a plain sentence: where, what was found, what is allowed. */
final class Misuse {
    private Misuse() {
    }

    static String words(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
            return stranger(unmatched.getUnmatched().get(0), fault.getCommandLine());
        }
        if (fault instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
            ArgSpec absent = missing.getMissing().get(0);
            return name(absent) + ": found nothing, must be " + allowed(absent);
        }
        if (fault instanceof OverwrittenOptionException twice && twice.getOverwritten() != null) {
            return name(twice.getOverwritten()) + ": found twice, must be given once";
        }
        ArgSpec option = fault.getArgSpec();
        return option != null && fault.getValue() != null && isOfTheWrongKind(fault)
                ? name(option) + ": found '" + fault.getValue() + "', must be " + allowed(option) : fault.getMessage();
    }

    /** What nobody asked for: an option, a command or one name too many. */
    private static String stranger(String found, CommandLine line) {
        if (found.startsWith("-")) {
            return "found '" + found + "', must be an option of " + line.getCommandSpec().qualifiedName();
        }
        List<String> commands = line.getSubcommands().keySet().stream().sorted().toList();
        return "found '" + found + "', " + (commands.isEmpty() ? "which is one name too many: leave it out, or put a"
                + " name with spaces into quotes" : "must be a command: " + String.join(", ", commands));
    }

    private static boolean isOfTheWrongKind(ParameterException fault) {
        return fault.getCause() instanceof TypeConversionException || fault.getMessage().startsWith("Invalid value");
    }

    private static String name(ArgSpec option) {
        return option instanceof OptionSpec named ? named.longestName() : option.paramLabel();
    }

    /** The kind of value, and what its own description says of it. */
    private static String allowed(ArgSpec option) {
        Class<?> kind = option.auxiliaryTypes()[option.auxiliaryTypes().length - 1];
        if (kind.isEnum()) {
            return "one of " + Arrays.stream(kind.getEnumConstants())
                    .map(value -> value.toString().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
        }
        String about = String.join(" ", option.renderedDescription()).strip();
        return (List.of(double.class, Double.class, float.class, Float.class).contains(kind) ? "a number, such as 2.5"
                : List.of(int.class, Integer.class, long.class, Long.class).contains(kind) ? "a whole number, such as 4"
                : "given") + (about.isEmpty() ? "" : ". " + about);
    }
}
