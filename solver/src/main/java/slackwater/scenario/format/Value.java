package slackwater.scenario.format;

import java.util.List;

/**
 * A value as read.
 *
 * @param word text or a word; empty for numbers
 * @param numbers in SI units; empty for a word
 */
record Value(String word, List<Double> numbers) {
}
