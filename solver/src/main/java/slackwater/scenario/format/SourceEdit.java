package slackwater.scenario.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slackwater.units.Unit;

/**
 * Changes to a text that leave all they do not touch as it was typed: comments, order, blank lines, the way numbers are
 * written. All changes are said first, against the text as it is, and made together by {@link #text}.
 */
public final class SourceEdit {
    /** Numbers that no unit holds exactly are written to this many digits: a nanometre in a metre. */
    private static final MathContext DIGITS = new MathContext(9);
    private static final Pattern NUMBER_OR_COMMENT = Pattern.compile("#[^\\n]*|[-+]?[0-9][0-9A-Za-z_.+-]*");

    private static final Pattern WORD_OR_COMMENT = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"|'[^']*'|#[^\\n]*");

    /** A stretch that is replaced; an empty one is an insertion. */
    private record Change(int from, int to, String by) {
    }

    private final Outline outline;
    private final String text;
    private final String lineEnd;
    private final List<Change> changes = new ArrayList<>();

    /** @param text TOML that a parser has accepted */
    public SourceEdit(String text) {
        this.text = text;
        this.outline = Outline.of(text);
        this.lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** How many tables of a format have a header of their own; those written in braces have none. */
    public int count(Table format) {
        return blocks(format).size();
    }

    /** Whether a table of a format, counted from 0, has a key in any unit. */
    public boolean has(Table format, int index, Key key) {
        return statement(blocks(format).get(index), key).isPresent();
    }

    /** Changes the keys of a table, counted from 0, in which what is wanted differs from what was read. */
    public void change(int index, TableWriter read, TableWriter wanted) {
        Outline.Block block = blocks(wanted.format()).get(index);
        read.values().keySet().stream().filter(key -> !wanted.values().containsKey(key))
                .forEach(key -> statement(block, key).ifPresent(this::takeOut));
        StringBuilder added = new StringBuilder();
        wanted.values().forEach((key, value) -> {
            if (value.equals(read.values().get(key))) {
                return;
            }
            Optional<Outline.Statement> found = statement(block, key);
            if (found.isPresent()) {
                rewrite(found.get(), key, value);
            } else if (!wanted.standard(key)) {
                added.append(indent(block)).append(wanted.line(key)).append(lineEnd);
            }
        });
        insert(block.end(), added.toString());
    }

    /** Writes a text key of a table, counted from 0, that has no such key yet, as its first. */
    public void name(Table format, int index, Key key, String name) {
        insert(blocks(format).get(index).header().to(), key.base() + " = " + TableWriter.quoted(name) + lineEnd);
    }

    /** Takes a table, counted from 0, out with its comments and one gap. */
    public void remove(Table format, int index) {
        Outline.Block block = blocks(format).get(index);
        boolean headsMore = index == 0 && count(format) > 1;
        int from = headsMore ? block.header().from() : aboveComments(block.header().from());
        int to = belowComments(block.end());
        while (to < text.length() && isBlank(to)) {
            to = lineAfter(to);
        }
        while (to >= text.length() && from > 0 && isBlank(lineBefore(from))) {
            from = lineBefore(from);
        }
        replace(new Outline.Span(from, to), "");
    }

    /**
     * Adds a table behind another one of its format, counted from 0; with -1, before the first one, and where there is
     * none, behind the last table that the whole puts before it.
     */
    public void add(Table whole, int behind, TableWriter table) {
        List<Outline.Block> same = blocks(table.format());
        String written = table.text().replace("\n", lineEnd);
        if (behind < 0 && !same.isEmpty()) {
            insert(aboveComments(same.get(0).header().from()), written.strip() + lineEnd + lineEnd);
            return;
        }
        List<String> before = whole.tables().stream().map(Table::name).toList();
        List<String> earlier = before.subList(0, before.indexOf(table.format().name()));
        Outline.Block after = behind >= 0 ? same.get(behind) : outline.blocks().stream()
                .filter(block -> earlier.contains(block.name())).reduce((first, second) -> second)
                .orElse(outline.blocks().get(outline.blocks().size() - 1));
        insert(belowComments(after.end()), written);
    }

    /** Says above all tables that there is none of a kind, or takes such a line out. */
    public void none(Table format, boolean none) {
        Outline.Block top = outline.blocks().get(0);
        Optional<Outline.Statement> said = top.statements().stream()
                .filter(statement -> statement.key().equals(format.name())).findFirst();
        if (none && said.isEmpty()) {
            insert(top.end(), format.name() + " = []" + lineEnd);
        } else if (!none) {
            said.ifPresent(this::takeOut);
        }
    }

    /** The text with every change made. */
    public String text() {
        StringBuilder changed = new StringBuilder();
        int at = 0;
        List<Change> sorted = changes.stream().sorted(Comparator.comparingInt(Change::from)).toList();
        for (Change change : sorted) {
            changed.append(text, at, Math.max(at, change.from()));
            boolean openLine = changed.length() > 0 && changed.charAt(changed.length() - 1) != '\n';
            boolean ownLine = change.by().endsWith("\n");
            changed.append(openLine && ownLine ? lineEnd : "").append(change.by());
            at = Math.max(at, change.to());
        }
        return changed.append(text, at, text.length()).toString();
    }

    /** The blanks before the last key of a table. */
    private String indent(Outline.Block block) {
        int from = block.statements().isEmpty() ? block.header().from()
                : block.statements().get(block.statements().size() - 1).line().from();
        int to = from;
        while (text.charAt(to) == ' ' || text.charAt(to) == '\t') {
            to++;
        }
        return text.substring(from, to);
    }

    /** Takes a key out; what was said beside it or within its list stays, a line of its own each. */
    private void takeOut(Outline.Statement found) {
        replace(found.line(), comments(found, found.line()));
    }

    /** All comments of a stretch, each on a line of its own, as far in as the key. */
    private String comments(Outline.Statement of, Outline.Span within) {
        String line = text.substring(of.line().from(), of.line().to());
        String indent = line.substring(0, line.length() - line.stripLeading().length());
        StringBuilder kept = new StringBuilder();
        Matcher matcher = WORD_OR_COMMENT.matcher(text).region(within.from(), within.to());
        while (matcher.find()) {
            if (text.charAt(matcher.start()) == '#') {
                kept.append(indent).append(matcher.group().strip()).append(lineEnd);
            }
        }
        return kept.toString();
    }

    /** Another value in place of one of another kind; what was said within a list stays above it. */
    private void exchange(Outline.Statement found, String by) {
        insert(found.line().from(), comments(found, found.value()));
        replace(found.value(), by);
    }

    private void rewrite(Outline.Statement found, Key key, Value value) {
        if (value.numbers().isEmpty()) {
            exchange(found, TableWriter.quoted(value.word()));
            return;
        }
        int unit = Math.max(0, key.names().indexOf(found.key()));
        List<Double> wanted = value.numbers().stream().map(key.units().get(unit)::fromSi).toList();
        List<Outline.Span> written = numbers(found.value());
        if (written.size() != wanted.size()) {
            exchange(found, wanted.size() == 1 ? number(wanted.get(0))
                    : "[" + String.join(", ", wanted.stream().map(SourceEdit::number).toList()) + "]");
            return;
        }
        for (int n = 0; n < written.size(); n++) {
            double stands = parsed(text.substring(written.get(n).from(), written.get(n).to()));
            Unit used = key.units().get(unit);
            if (used.toSi(stands) != value.numbers().get(n)) {
                replace(written.get(n), number(wanted.get(n)));
            }
        }
    }

    /** The numbers within a value, comments in a list of several lines left out. */
    private List<Outline.Span> numbers(Outline.Span value) {
        if (text.charAt(value.from()) == '"' || text.charAt(value.from()) == '\'') {
            return List.of();
        }
        List<Outline.Span> found = new ArrayList<>();
        Matcher matcher = NUMBER_OR_COMMENT.matcher(text).region(value.from(), value.to());
        while (matcher.find()) {
            if (text.charAt(matcher.start()) != '#') {
                found.add(new Outline.Span(matcher.start(), matcher.end()));
            }
        }
        return found;
    }

    /** A number as TOML has it, not a number where it has forms that Java lacks: then it is written anew. */
    private static double parsed(String number) {
        try {
            return Double.parseDouble(number.replace("_", ""));
        } catch (NumberFormatException otherForm) {
            return Double.NaN;
        }
    }

    private static String number(double value) {
        String full = Shown.number(value);
        String digits = full.replaceAll("[-.]", "").replaceFirst("^0+", "");
        return digits.length() <= DIGITS.getPrecision() ? full
                : Shown.number(new BigDecimal(value).round(DIGITS).doubleValue());
    }

    private Optional<Outline.Statement> statement(Outline.Block block, Key key) {
        return block.statements().stream().filter(statement -> key.names().contains(statement.key())).findFirst();
    }

    private List<Outline.Block> blocks(Table format) {
        return outline.blocks().stream().filter(block -> block.name().equals(format.name())
                && block.repeated() == format.repeated() && !block.name().isEmpty()).toList();
    }


    private void replace(Outline.Span span, String by) {
        changes.add(new Change(span.from(), span.to(), by));
    }

    private void insert(int at, String added) {
        if (!added.isEmpty()) {
            changes.add(new Change(at, at, added));
        }
    }

    /** Where the comments begin that stand right above a line. */
    private int aboveComments(int line) {
        int from = line;
        while (from > 0 && isComment(lineBefore(from))) {
            from = lineBefore(from);
        }
        return from;
    }

    /** Where the comments end that stand right below a table; those that touch the next header are that one's. */
    private int belowComments(int end) {
        int to = end;
        while (to < text.length() && isComment(to)) {
            to = lineAfter(to);
        }
        return to < text.length() && !isBlank(to) ? end : to;
    }

    private int lineBefore(int line) {
        return text.lastIndexOf('\n', line - 2) + 1;
    }

    private int lineAfter(int line) {
        int end = text.indexOf('\n', line);
        return end < 0 ? text.length() : end + 1;
    }

    private boolean isComment(int line) {
        return text.substring(line, lineAfter(line)).strip().startsWith("#");
    }

    private boolean isBlank(int line) {
        return text.substring(line, lineAfter(line)).isBlank();
    }
}
