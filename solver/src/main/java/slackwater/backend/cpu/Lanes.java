package slackwater.backend.cpu;

import jdk.incubator.vector.FloatVector;
import jdk.incubator.vector.IntVector;
import jdk.incubator.vector.VectorSpecies;

/** The vectors that walls are treated with. */
final class Lanes {
    static final VectorSpecies<Float> FLOATS = FloatVector.SPECIES_PREFERRED;
    static final VectorSpecies<Integer> INTS = IntVector.SPECIES_PREFERRED;
    static final int COUNT = FLOATS.length();
    /**
     * Whether the machine fills a vector from single places. Those with short vectors do not, and what Java does
     * instead is far slower than a loop.
     */
    static final boolean GATHER = COUNT >= 8;

    private Lanes() {
    }

    /** Up to where whole vectors can be filled from single places. */
    static int gathered(int length) {
        return GATHER ? FLOATS.loopBound(length) : 0;
    }
}
