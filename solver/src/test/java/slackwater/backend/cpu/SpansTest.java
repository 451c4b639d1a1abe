package slackwater.backend.cpu;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slackwater.ForAll;
import slackwater.lattice.CollisionOperator.Bgk;
import slackwater.lattice.Faces;
import slackwater.lattice.LatticeProblem;

/**
 * What a sweep relies on, by definition: vectors of any length that there is touch every cell of water once and no
 * other thread's; nothing is touched beyond what a block says.
 */
class SpansTest {
    private static final int[] WIDTHS = {1, 4, 8, Lanes.MOST};

    @Test
    void everyCellOfWaterIsSweptOnce() {
        ForAll.seeds(150, random -> {
            LatticeProblem problem = tank(random);
            Layout layout = new Layout(problem);
            Spans spans = new Spans(problem, layout);
            for (int width : WIDTHS) {
                int[] touched = new int[layout.stride];
                for (int block = 0; block < spans.count(); block++) {
                    for (int[] stretch : stretches(spans, block)) {
                        for (int x = stretch[0]; x < stretch[1]; x += width) {
                            for (int lane = 0; lane < width; lane++) {
                                touched[x + lane]++;
                                assertTrue(x + lane < spans.end(block), "past the end of block " + block);
                            }
                        }
                    }
                }
                for (int cell = 0; cell < problem.cells(); cell++) {
                    if (!problem.solid()[cell]) {
                        assertEquals(1, touched[layout.home(problem, cell)], "cell " + cell + ", vectors of " + width);
                    }
                }
            }
        });
    }

    @Test
    void aBlockKnowsItsCells() {
        ForAll.seeds(50, random -> {
            LatticeProblem problem = tank(random);
            Layout layout = new Layout(problem);
            Spans spans = new Spans(problem, layout);
            for (int cell = 0; cell < problem.cells(); cell++) {
                if (!problem.solid()[cell]) {
                    int place = layout.home(problem, cell);
                    int block = spans.blockOf(place);
                    assertTrue(spans.from(block) <= place && place < spans.to(block), "cell " + cell);
                    assertTrue(stretches(spans, block).stream().anyMatch(one -> one[0] <= place && place < one[1]));
                }
            }
        });
    }

    @Test
    void longRockIsLeftOut() {
        boolean[] solid = new boolean[100 * 4 * 4];
        for (int n = 0; n < solid.length; n++) {
            solid[n] = n % 100 >= 40 && n % 100 < 40 + Spans.GAP;
        }
        LatticeProblem problem = problem(100, 4, 4, solid);
        Spans spans = new Spans(problem, new Layout(problem));
        int swept = 0;
        for (int block = 0; block < spans.count(); block++) {
            swept += spans.cells(block);
        }
        int ghostsBetweenRows = 4 * 3;
        assertEquals(16 * (100 - Spans.GAP) + ghostsBetweenRows, swept);
    }

    @Test
    void nothingIsSweptInRock() {
        boolean[] solid = new boolean[20 * 5 * 5];
        Arrays.fill(solid, true);
        LatticeProblem problem = problem(20, 5, 5, solid);
        assertEquals(0, new Spans(problem, new Layout(problem)).count());
    }

    private static List<int[]> stretches(Spans spans, int block) {
        List<int[]> stretches = new ArrayList<>();
        spans.collide((f, base, from, to) -> stretches.add(new int[] {from, to}), new float[0], new int[0], block);
        return stretches;
    }

    /** Rows with rock in pieces of some cells more or less than what is left out. */
    private static LatticeProblem tank(Random random) {
        int nx = 1 + random.nextInt(200);
        int ny = 1 + random.nextInt(12);
        int nz = 1 + random.nextInt(12);
        boolean[] solid = new boolean[nx * ny * nz];
        boolean rock = random.nextBoolean();
        for (int n = 0; n < solid.length; rock = !rock) {
            int length = rock ? Spans.GAP - 3 + random.nextInt(7) : 1 + random.nextInt(90);
            for (int end = Math.min(solid.length, n + length); n < end; n++) {
                solid[n] = rock;
            }
        }
        return problem(nx, ny, nz, solid);
    }

    private static LatticeProblem problem(int nx, int ny, int nz, boolean[] solid) {
        return new LatticeProblem(nx, ny, nz, solid, Faces.tank(), new Bgk(0.6, 0), List.of(), List.of(), 1);
    }
}
