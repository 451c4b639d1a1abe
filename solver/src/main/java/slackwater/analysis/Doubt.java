package slackwater.analysis;

import java.util.OptionalDouble;

/**
 * What a reading's doubt is made of, each part half the width of a 95 % range, metres per second. The parts have
 * nothing to do with each other, so they add up as the root of their squares.
 *
 * @param chanceMPerS what is left to chance after averaging over so much turbulent water
 * @param gridMPerS what the size of the cells may do; empty where only one grid was computed
 * @param pumpMPerS what pumps that are off by as much as the user thinks possible would do
 */
public record Doubt(double chanceMPerS, OptionalDouble gridMPerS, double pumpMPerS) {
    /** All parts together. */
    public double totalMPerS() {
        return Math.hypot(Math.hypot(chanceMPerS, gridMPerS.orElse(0)), pumpMPerS);
    }

    /** The same with pumps known to another share of the reading. */
    Doubt withPumps(double fraction, double readingMPerS) {
        return new Doubt(chanceMPerS, gridMPerS, fraction * readingMPerS);
    }
}
