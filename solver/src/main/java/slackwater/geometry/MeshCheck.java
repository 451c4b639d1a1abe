package slackwater.geometry;

/** What a surface must be before it can hold back water. */
final class MeshCheck {
    /** More than a scan needs at a grid of half a centimetre, and still quick to search. */
    static final int MOST_TRIANGLES = 500_000;

    private MeshCheck() {
    }

    static void check(Triangles surface) throws MeshFault {
        for (double coordinate : surface.points()) {
            if (!Double.isFinite(coordinate)) {
                throw new MeshFault("has a corner whose place is not a number; repair it or export it again");
            }
        }
        if (surface.count() == 0) {
            throw new MeshFault("holds no triangles; export the rock as a surface mesh");
        }
        if (surface.count() > MOST_TRIANGLES) {
            throw new MeshFault("has " + surface.count() + " triangles, must have at most " + MOST_TRIANGLES
                    + "; simplify it");
        }
        int open = surface.openEdges();
        if (open > 0) {
            throw new MeshFault("is open: " + open + " edges do not join exactly two faces; close its holes");
        }
        if (surface.volumeM3() == 0) {
            throw new MeshFault("encloses no volume; give it some thickness");
        }
    }
}
