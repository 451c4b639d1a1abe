package slackwater.lattice;

import java.util.List;

/**
 * All that a back end needs to know, in lattice units (cells, steps, density 1).
 *
 * @param nx cells along x; cell (i, j, k) has index (k ny + j) nx + i
 * @param solid true for cells of wall, rock or sand
 * @param surfaces what kind of wall their surface is
 * @param faces what happens at the six faces
 * @param operator how populations relax
 * @param forces jets and other forces
 * @param massSources inlets and outlets
 * @param seed of the jets' random part
 */
public record LatticeProblem(int nx, int ny, int nz, boolean[] solid, Surfaces surfaces, Faces faces,
                             CollisionOperator operator, List<BodyForce> forces, List<MassSource> massSources,
                             long seed) {
    public LatticeProblem {
        if (nx < 1 || ny < 1 || nz < 1 || solid.length != (long) nx * ny * nz) {
            throw new IllegalArgumentException(solid.length + " cells given for " + nx + " x " + ny + " x " + nz);
        }
        if (surfaces.kinds().length != 0 && surfaces.kinds().length != solid.length) {
            throw new IllegalArgumentException(surfaces.kinds().length + " surfaces given for " + solid.length
                    + " cells");
        }
        forces = List.copyOf(forces);
        massSources = List.copyOf(massSources);
        forces.forEach(force -> requireFluid(force.cells(), solid));
        massSources.forEach(source -> requireFluid(source.cells(), solid));
    }

    /** Solid cells are plain walls without slip. */
    public LatticeProblem(int nx, int ny, int nz, boolean[] solid, Faces faces, CollisionOperator operator,
                          List<BodyForce> forces, List<MassSource> massSources, long seed) {
        this(nx, ny, nz, solid, Surfaces.noSlip(), faces, operator, forces, massSources, seed);
    }

    public int cells() {
        return solid.length;
    }

    public int index(int i, int j, int k) {
        return (k * ny + j) * nx + i;
    }

    private static void requireFluid(int[] cells, boolean[] solid) {
        for (int cell : cells) {
            if (solid[cell]) {
                throw new IllegalArgumentException("a source acts on cell " + cell + ", which is solid");
            }
        }
    }
}
