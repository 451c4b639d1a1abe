package slackwater.backend.cpu;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.IntVector;
import jdk.incubator.vector.VectorSpecies;

/** The vectors that cells are treated with: the machine's longest, but of no more than {@link #MOST} floats. */
final class Lanes {
    /** Sweeps may run over the end of their cells by a vector of this many, less one. */
    static final int MOST = Spans.GAP;
    private static final boolean LONGER = FloatVector.SPECIES_PREFERRED.length() > MOST;

    static final VectorSpecies<Float> FLOATS = LONGER ? FloatVector.SPECIES_512 : FloatVector.SPECIES_PREFERRED;
    static final VectorSpecies<Integer> INTS = LONGER ? IntVector.SPECIES_512 : IntVector.SPECIES_PREFERRED;
    static final int COUNT = FLOATS.length();

    /**
     * Whether the machine fills a vector from single places, and whether it puts one back to them: with 8 floats
     * (AVX2) it does the former, with 16 (AVX-512) both. What Java does instead is far slower than a loop.
     */
    private static final boolean GATHER = COUNT >= 8;
    private static final boolean SCATTER = COUNT >= 16;

    private Lanes() {
    }

    /** Up to where whole vectors are to be filled from single places. */
    static int gathered(int length) {
        return GATHER ? FLOATS.loopBound(length) : 0;
    }

    /** Up to where whole vectors are to be put back to single places. */
    static int scattered(int length) {
        return SCATTER ? FLOATS.loopBound(length) : 0;
    }
}
