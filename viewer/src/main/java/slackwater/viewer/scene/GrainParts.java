package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import slackwater.geometry.Vec3;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.scene.Legend.Patch;
import slackwater.viewer.scene.Legend.Patches;
import slackwater.viewer.scene.Legend.Sign;
import slackwater.viewer.shape.Polylines;

/** Grains as shapes: a pale dot with a rim for one in the water, a dark cross laid flat for one that lies. */
public final class GrainParts {
    private static final Colour DRIFTING = Colour.of(0xF7DFA6);
    private static final Colour LYING = Colour.of(0x1B1512);
    private static final double DOT_UNITS = 4.2;
    private static final double FULL_UNITS = 800;
    private static final double CROSS_UNITS = 1.2;
    /** An arm of a cross, as a share of the tank's length. */
    private static final double ARM = 0.0034;
    /** More would hide what they lie on. */
    private static final int MOST = 2500;

    private GrainParts() {
    }

    /** Grains for a picture that is not narrow. */
    static List<Item> of(Crumbs crumbs, Vec3 insideM) {
        return of(crumbs, insideM, FULL_UNITS);
    }

    /** Of how many grains one is drawn. */
    static int each(Crumbs crumbs) {
        return (crumbs.all() + MOST - 1) / MOST;
    }

    /**
     * @param insideM of the glass: crosses are a small part of its length, so that they stay as large on the picture
     * @param widthUnits of the picture: in a narrow one dots are smaller
     */
    public static List<Item> of(Crumbs crumbs, Vec3 insideM, double widthUnits) {
        List<Item> items = new ArrayList<>();
        int step = 3 * Math.max(1, each(crumbs));
        if (crumbs.lying() > 0) {
            items.add(Strokes.of(crosses(crumbs.lyingM(), step, insideM), Paint.flat(LYING, 0), CROSS_UNITS));
        }
        if (crumbs.drifting() > 0) {
            items.add(new Strokes(dots(crumbs.driftingM(), step), Item.NONE, Paint.flat(DRIFTING, 0),
                    DOT_UNITS * Math.max(0.5, Math.min(1, widthUnits / FULL_UNITS)), true));
        }
        return items;
    }

    private static Polylines dots(float[] atM, int step) {
        Polylines.Collector lines = new Polylines.Collector();
        for (int n = 0; n < atM.length; n += step) {
            lines.add(atM[n], atM[n + 1], atM[n + 2], 0);
            lines.endLine();
        }
        return lines.lines();
    }

    private static Polylines crosses(float[] atM, int step, Vec3 insideM) {
        double arm = ARM * insideM.x();
        Polylines.Collector lines = new Polylines.Collector();
        for (int n = 0; n < atM.length; n += step) {
            float x = (float) Math.max(arm, Math.min(insideM.x() - arm, atM[n]));
            float y = (float) Math.max(arm, Math.min(insideM.y() - arm, atM[n + 1]));
            for (int way = -1; way <= 1; way += 2) {
                lines.add((float) (x - arm), (float) (y - way * arm), atM[n + 2], 0);
                lines.add((float) (x + arm), (float) (y + way * arm), atM[n + 2], 0);
                lines.endLine();
            }
        }
        return lines.lines();
    }

    /** What the signs mean, with the share of each. */
    public static Legend legend(Crumbs crumbs) {
        List<Patch> patches = new ArrayList<>();
        patches.add(new Patch(DRIFTING, crumbs.what() + " in the water after " + Math.round(crumbs.timeS())
                + " s: " + crumbs.share(crumbs.drifting()), Sign.DOT));
        patches.add(new Patch(LYING, crumbs.what() + " that lies: " + crumbs.share(crumbs.lying())
                + ", on corals " + crumbs.share(crumbs.onCorals()), Sign.CROSS));
        patches.add(new Patch(LYING, "gone with the overflow: " + crumbs.share(crumbs.filtered())
                + (crumbs.caught() > 0 ? ", in pumps " + crumbs.share(crumbs.caught()) : ""), Sign.NONE));
        if (each(crumbs) > 1) {
            patches.add(new Patch(LYING, "one of " + each(crumbs) + " is drawn", Sign.NONE));
        }
        return new Patches("", patches);
    }
}
