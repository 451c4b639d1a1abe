package slackwater.geometry;

/** Why a mesh cannot stand in a tank, in a sentence for the person who gave it: what was found and what to do. */
public final class MeshFault extends Exception {
    public MeshFault(String message) {
        super(message);
    }
}
