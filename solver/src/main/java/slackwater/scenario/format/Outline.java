package slackwater.scenario.format;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the tables and keys of a TOML text stand, character by character, so that one value can be changed while all
 * else stays as it was typed. It expects text that a parser has accepted.
 *
 * @param text the text
 * @param blocks first what stands above all tables, then every table in the order of the text
 */
record Outline(String text, List<Outline.Block> blocks) {
    /** A stretch of the text, the end left out. */
    record Span(int from, int to) {
    }

    /**
     * A key and its value.
     *
     * @param line all of it, from the start of its first line to the end of its last, line end included
     */
    record Statement(String key, Span line, Span value) {
    }

    /**
     * A table, or what stands above all tables.
     *
     * @param name empty for what stands above all tables
     * @param header the line of its header; empty and at the start of the text for what stands above all tables
     */
    record Block(String name, boolean repeated, Span header, List<Statement> statements) {
        /** Where its last key or its header ends. */
        int end() {
            return statements.isEmpty() ? header.to() : statements.get(statements.size() - 1).line().to();
        }
    }

    static Outline of(String text) {
        return new Outline(text, new Scan(text).blocks());
    }

    private static final class Scan {
        private final String text;
        private final List<Block> blocks = new ArrayList<>();
        private int at;

        Scan(String text) {
            this.text = text;
        }

        List<Block> blocks() {
            blocks.add(new Block("", false, new Span(0, 0), new ArrayList<>()));
            while (at < text.length()) {
                int line = at;
                skipBlanks();
                if (now() == '[') {
                    header(line);
                } else if (now() == '#' || now() == '\n' || now() == '\r' || now() == 0) {
                    endLine();
                } else {
                    statement(line);
                }
            }
            return List.copyOf(blocks);
        }

        private void header(int line) {
            boolean repeated = text.startsWith("[[", at);
            at += repeated ? 2 : 1;
            int from = at;
            while (now() != ']' && now() != 0) {
                skipValuePart();
            }
            String name = bare(text.substring(from, at));
            endLine();
            blocks.add(new Block(name, repeated, new Span(line, at), new ArrayList<>()));
        }

        private void statement(int line) {
            int from = at;
            while (now() != '=' && now() != 0) {
                skipValuePart();
            }
            String key = bare(text.substring(from, at));
            at = Math.min(text.length(), at + 1);
            skipBlanks();
            int value = at;
            value();
            Span span = new Span(value, at);
            endLine();
            blocks.get(blocks.size() - 1).statements().add(new Statement(key, new Span(line, at), span));
        }

        /** Goes past a value: text, a list, a table in braces, or a bare word or number. */
        private void value() {
            if (now() == '"' || now() == '\'') {
                skipValuePart();
                return;
            }
            int depth = 0;
            int end = at;
            while (now() != 0) {
                char found = now();
                if (depth == 0 && (found == '#' || found == '\n' || found == '\r')) {
                    break;
                }
                depth += found == '[' || found == '{' ? 1 : found == ']' || found == '}' ? -1 : 0;
                if (found == '#') {
                    endLine();
                } else {
                    skipValuePart();
                }
                end = found == ' ' || found == '\t' ? end : at;
                if (depth == 0 && (found == ']' || found == '}')) {
                    break;
                }
            }
            at = end;
        }

        /** Goes past text in quotes as a whole, or past one character. */
        private void skipValuePart() {
            char quote = now();
            if (quote != '"' && quote != '\'') {
                at++;
                return;
            }
            String ending = text.startsWith(String.valueOf(quote).repeat(3), at) ? String.valueOf(quote).repeat(3)
                    : String.valueOf(quote);
            at += ending.length();
            while (at < text.length() && !text.startsWith(ending, at)) {
                at += quote == '"' && now() == '\\' ? 2 : 1;
            }
            at = Math.min(text.length(), at + ending.length());
            while (ending.length() == 3 && now() == quote) {
                at++; // up to two quotes more may belong to the text
            }
        }

        private void skipBlanks() {
            while (now() == ' ' || now() == '\t') {
                at++;
            }
        }

        private void endLine() {
            int end = text.indexOf('\n', at);
            at = end < 0 ? text.length() : end + 1;
        }

        private char now() {
            return at < text.length() ? text.charAt(at) : 0;
        }

        private static String bare(String name) {
            String plain = name.strip();
            boolean quoted = plain.length() > 1 && (plain.startsWith("\"") && plain.endsWith("\"")
                    || plain.startsWith("'") && plain.endsWith("'"));
            return quoted ? plain.substring(1, plain.length() - 1) : plain;
        }
    }
}
