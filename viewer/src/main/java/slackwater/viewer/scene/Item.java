package slackwater.viewer.scene;

import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.Surface;

/**
 * Something to draw. A renderer keeps what it has made of an item for as long as the very same item is shown, so what
 * has not changed should be handed over again, not made anew.
 */
public sealed interface Item {
    Paint paint();

    /**
     * A surface.
     *
     * @param shades one value a vertex, 0..1, for a paint with a map; else none
     */
    record Body(Surface surface, float[] shades, Paint paint) implements Item {
        public Body {
            requireShades(shades, surface.vertexCount(), paint);
        }

        public static Body of(Surface surface, Paint paint) {
            return new Body(surface, NONE, paint);
        }
    }

    /**
     * Lines of a width that does not change with distance; a line of one point is a dot.
     *
     * @param shades one value a point, 0..1, for a paint with a map; else none
     * @param widthUnits width in units of type
     * @param rimmed whether a darker rim sets it off from what lies behind
     */
    record Strokes(Polylines lines, float[] shades, Paint paint, double widthUnits, boolean rimmed) implements Item {
        public Strokes {
            requireShades(shades, lines.pointCount(), paint);
        }

        public static Strokes of(Polylines lines, Paint paint, double widthUnits) {
            return new Strokes(lines, NONE, paint, widthUnits, false);
        }
    }

    /** No shades, for a paint without a map. */
    float[] NONE = new float[0];

    private static void requireShades(float[] shades, int count, Paint paint) {
        if (shades.length != (paint.map().isPresent() ? count : 0)) {
            throw new IllegalArgumentException("there must be a shade a vertex with a map and none without: found "
                    + shades.length + " for " + count);
        }
    }
}
