package slackwater.scenario.format;

import java.util.List;
import java.util.stream.Collectors;

/** The format as a page for people, in Markdown. */
public final class FormatPage {
    private FormatPage() {
    }

    /** A table of keys for the whole file and for each table in it. */
    public static String of(Table whole) {
        return (whole.keys().isEmpty() ? "" : section("Top of the file", whole)) + whole.tables().stream()
                .map(table -> section("`" + table.header() + "`", table))
                .collect(Collectors.joining());
    }

    private static String section(String title, Table table) {
        String need = table.required() ? " Needed." : "";
        String most = table.repeated() ? " At most " + table.most() + "." : "";
        return "\n## " + title + "\n\n" + table.about() + need + most
                + "\n\n| key | value | left out | meaning |\n| --- | --- | --- | --- |\n"
                + table.keys().stream().map(FormatPage::row).collect(Collectors.joining());
    }

    private static String row(Key key) {
        String names = key.names().stream().map(name -> "`" + name + "`").collect(Collectors.joining(" or "));
        String without = key.required() ? "not allowed" : key.standard().isEmpty() ? "-" : "`" + key.standard() + "`";
        return "| " + names + " | " + value(key.kind()) + " | " + without + " | " + key.about() + " |\n";
    }

    private static String value(Kind kind) {
        if (kind instanceof Kind.Numbers numbers) {
            return (numbers.count() == 1 ? "" : numbers.count() + " numbers, each ")
                    + numbers.limits().words(numbers.dimension().metric());
        }
        if (kind instanceof Kind.Word word) {
            return words(word.words());
        }
        return kind instanceof Kind.WordOrDirection either ? words(either.words()) + " or `[x, y, z]`" : "text";
    }

    private static String words(List<String> words) {
        return words.stream().map(word -> "`\"" + word + "\"`").collect(Collectors.joining(", "));
    }
}
