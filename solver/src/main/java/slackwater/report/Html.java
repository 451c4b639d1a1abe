package slackwater.report;

/** Text for HTML and SVG. */
final class Html {
    private Html() {
    }

    /** The text with every character that means something to HTML or SVG made harmless, also in attributes. */
    static String escape(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(character -> {
            switch (character) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isText(character) ? character : '\ufffd');
            }
        });
        return safe.toString();
    }

    static String shortened(String text, int most) {
        return text.codePointCount(0, text.length()) <= most ? text
                : text.substring(0, text.offsetByCodePoints(0, most - 1)) + "\u2026";
    }

    private static boolean isText(int character) {
        boolean space = character == '\n' || character == '\t';
        boolean surrogate = character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE;
        return space || !Character.isISOControl(character) && !surrogate;
    }
}
