package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slackwater.analysis.Figures;
import slackwater.geometry.Vec3;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Legend.Bar;
import slackwater.viewer.scene.Legend.Patch;
import slackwater.viewer.scene.Legend.Patches;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.SliceSheet.Cut;

/** Puts a picture together from a scene and what is to be shown of it. */
public final class Composer {
    private static final double NEARLY_ALL = 0.98;

    private final Scene scene;
    private final Look look;
    private final ColourScale speeds;
    private final List<Item> items = new ArrayList<>();
    private final List<Legend> legends = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Composer(Scene scene, Look look) {
        this.scene = scene;
        this.look = look;
        this.speeds = look.units().speedScale(look.topMPerS());
    }

    /** The whole picture; layers that show water are left out where it has not been computed, and a note says so. */
    public static Drawing draw(Scene scene, Look look) {
        return new Composer(scene, look).draw();
    }

    /** What the water does alone, for a window that keeps the rest from one picture to the next; no labels. */
    public static Drawing water(Scene scene, Look look) {
        Composer composer = new Composer(scene, look);
        scene.water().ifPresent(composer::water);
        composer.patches().ifPresent(composer.legends::add);
        return new Drawing("", composer.notes, composer.items, List.of(), composer.legends, scene.glassM());
    }

    private Drawing draw() {
        boolean mapped = scene.water().isPresent() && (look.shows(Layer.SHEAR) || showsDeposit(scene.water().get()));
        List<Item> tank = TankParts.of(scene.scenario());
        items.addAll(mapped ? tank.stream().filter(item -> !isRock(item)).toList() : tank);
        items.addAll(PumpParts.of(scene.scenario(), look.shows(Layer.JETS)));
        items.addAll(CoralParts.of(scene.scenario()));
        scene.water().ifPresentOrElse(this::water, () ->
                notes.add("The layout alone: 'slackwater run' computes what the water does in it."));
        patches().ifPresent(legends::add);
        List<Label> labels = look.shows(Layer.NAMES) ? Labels.of(scene, look.units()) : List.of();
        return new Drawing(scene.scenario().name(), notes, items, labels, legends, scene.glassM(),
                look.units().rulers());
    }

    /** Rock gives way to its map; the map of the sand lies on top of it. */
    private static boolean isRock(Item item) {
        return item.paint().colour().equals(Palette.ROCK);
    }

    private void water(Water water) {
        notes.add("Means over time, on cells of " + Figures.cell(water.flow().grid().cellSizeM()) + ". "
                + (water.settled() ? "Estimates, with a range of their own in the report."
                : "The water had NOT settled: no number here is to be relied on."));
        double level = scene.scenario().tank().waterLevelM();
        boolean coloured = false;
        if (look.shows(Layer.SPEED)) {
            List<Cut> cuts = look.cuts().stream().map(cut -> cut.centred(water.flow().grid())).toList();
            Vec3 inside = scene.scenario().tank().insideM();
            Vec3 high = new Vec3(inside.x(), inside.y(), level);
            cuts.forEach(cut -> items.add(WaterParts.slice(water, cut, speeds, high)));
            notes.add("Speed on " + String.join(", and on ", cuts.stream().map(Composer::words).toList()) + ".");
            coloured = true;
        }
        if (look.shows(Layer.STREAMLINES)) {
            items.addAll(StreamParts.of(scene.scenario(), water, speeds));
            coloured = true;
        }
        if (look.shows(Layer.TRACERS)) {
            items.add(WaterParts.specks(water, speeds));
            coloured = true;
        }
        if (coloured) {
            legends.add(new Bar("mean speed, " + speeds.unit(), speeds));
        }
        ground(water);
        grains(water);
        if (look.shows(Layer.STILL_WATER)) {
            items.addAll(WaterParts.still(water, level));
        }
        if (look.shows(Layer.FAST_WATER)) {
            items.addAll(WaterParts.fast(water, look.fastMPerS(), level));
        }
    }

    /** Where the grains of the first kind ended. */
    private void grains(Water water) {
        if (look.shows(Layer.GRAINS)) {
            water.crumbs().stream().findFirst().ifPresentOrElse(crumbs -> {
                items.addAll(GrainParts.of(crumbs, scene.scenario().tank().insideM()));
                legends.add(GrainParts.legend(crumbs));
                notes.add("Single grains of " + crumbs.what() + ", let go all over the surface and followed for "
                        + Math.round(crumbs.timeS()) + " s of this water.");
            }, () -> notes.add("No grains were let go in this water, so there are none to show."));
        }
    }

    /** What lies on sand and rock, or else how hard the water rubs there: one map at a time. */
    private void ground(Water water) {
        if (showsDeposit(water)) {
            ColourScale scale = ColourScale.ofDeposit(top(water.meanDeposit()));
            items.addAll(WaterParts.deposit(scene.scenario(), water, scale));
            legends.add(new Bar("deposit: where waste lies, " + scale.unit(), scale));
            notes.add("Let go in the water and followed: " + String.join(", ", water.deposits().keySet()) + ".");
        } else if (look.shows(Layer.SHEAR)) {
            ColourScale scale = ColourScale.ofShear(top(water.flow().wallShear()));
            items.addAll(WaterParts.shear(scene.scenario(), water, scale));
            legends.add(new Bar("shear on sand and rock, " + scale.unit(), scale));
        }
        if (look.shows(Layer.DEPOSIT) && water.deposits().isEmpty()) {
            notes.add("Nothing was let go in this water and followed, so there is no deposit to show.");
        }
    }

    private boolean showsDeposit(Water water) {
        return look.shows(Layer.DEPOSIT) && !water.deposits().isEmpty();
    }

    private Optional<Legend> patches() {
        List<Patch> patches = new ArrayList<>();
        boolean wet = scene.water().isPresent();
        if (wet && look.shows(Layer.STILL_WATER)) {
            patches.add(new Patch(WaterParts.SURELY_SEEN, "surely still water (chance over 95 %)"));
            patches.add(new Patch(WaterParts.LIKELY_SEEN, "likely still water (over 50 %)"));
        }
        if (wet && look.shows(Layer.FAST_WATER)) {
            patches.add(new Patch(WaterParts.FAST_SEEN, "fast water: above " + look.units().speed(look.fastMPerS())
                    + " " + look.units().speedUnit()));
        }
        boolean pumped = scene.scenario().returnLine().isPresent()
                || scene.scenario().pumps().stream().anyMatch(pump -> pump.outputFraction() > 0);
        if (pumped && look.shows(Layer.JETS)) {
            patches.add(new Patch(Palette.JET.withOpacity(0.35), "jet in open water, out to half its speed"));
        }
        return patches.isEmpty() ? Optional.empty() : Optional.of(new Patches("", patches));
    }

    /** A round value that nearly all cells that have one keep below. */
    private static double top(float[] values) {
        float[] sorted = values.clone();
        Arrays.sort(sorted);
        int zeros = 0;
        while (zeros < sorted.length && sorted[zeros] == 0) {
            zeros++;
        }
        if (zeros == sorted.length) {
            return 1;
        }
        double top = sorted[zeros + (int) (NEARLY_ALL * (sorted.length - 1 - zeros))];
        double power = Math.pow(10, Math.floor(Math.log10(top)));
        return Math.ceil(top / power * 2) / 2 * power;
    }

    private static String words(Cut cut) {
        String place = Figures.plain(cut.placeM() * 100) + " cm ";
        return "a slice " + place + (cut.axis() == Axis.X ? "from the left pane"
                : cut.axis() == Axis.Y ? "behind the front pane" : "above the bottom");
    }
}
