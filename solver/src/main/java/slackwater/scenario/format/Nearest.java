package slackwater.scenario.format;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Guesses what somebody meant to write. */
final class Nearest {
    private Nearest() {
    }

    /** The word with the fewest letters to change, where that is at most half of them. */
    static Optional<String> to(String written, Collection<String> words) {
        String found = written.length() > 60 ? written.substring(0, 60) : written;
        return words.stream()
                .min(Comparator.comparingInt(word -> distance(found, word)))
                .filter(word -> distance(found, word) <= Math.max(1, Math.max(found.length(), word.length()) / 2));
    }

    /** Letters to insert, leave out or replace: the edit distance of Levenshtein 1966. */
    private static int distance(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[b.length()];
    }
}
