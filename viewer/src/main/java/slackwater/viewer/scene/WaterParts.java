package slackwater.viewer.scene;

import java.util.ArrayList;
import java.util.List;
import slackwater.analysis.StillWater;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.geometry.Bounds;
import slackwater.geometry.Vec3;
import slackwater.scenario.Scenario;
import slackwater.viewer.colour.Colour;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.Item.Body;
import slackwater.viewer.scene.Item.Strokes;
import slackwater.viewer.shape.Current;
import slackwater.viewer.shape.Isosurface;
import slackwater.viewer.shape.Polylines;
import slackwater.viewer.shape.SliceSheet;
import slackwater.viewer.shape.SliceSheet.Cut;
import slackwater.viewer.shape.Soaked;
import slackwater.viewer.shape.Surface;
import slackwater.viewer.shape.Tracers;
import slackwater.viewer.shape.WallValues;

/** What the water does, as shapes. */
public final class WaterParts {
    static final Colour SURELY = Palette.STILL.withOpacity(0.45);
    static final Colour LIKELY = Palette.STILL.withOpacity(0.15);
    /** How the two look through their front and back, the sure one within the likely one: for legends. */
    static final Colour SURELY_SEEN = Palette.STILL.withOpacity(0.78);
    static final Colour LIKELY_SEEN = Palette.STILL.withOpacity(0.28);
    static final Colour FAST = Palette.FAST.withOpacity(0.22);
    static final Colour FAST_SEEN = Palette.FAST.withOpacity(0.5);
    private static final double GAP_M = 0.001;
    private static final int TRACERS = 1400;
    private static final double TRAIL_S = 0.6;

    private WaterParts() {
    }

    /** Still water as two bodies, one in the other: where it likely and where it surely stands still. */
    public static List<Item> still(Water water, double levelM) {
        FlowStatistics flow = water.flow();
        float[] soaked = Soaked.of(flow.grid(), flow.fluid(), water.stillProbability());
        List<Item> items = new ArrayList<>();
        add(items, Isosurface.upToGlass(flow.grid(), soaked, StillWater.LIKELY).within(inside(flow.grid(), levelM, 1)),
                LIKELY);
        add(items, Isosurface.upToGlass(flow.grid(), soaked, StillWater.SURELY).within(inside(flow.grid(), levelM, 2)),
                SURELY);
        return items;
    }

    /** The surface within which the mean speed is above a limit. */
    public static List<Item> fast(Water water, double aboveMPerS, double levelM) {
        FlowStatistics flow = water.flow();
        List<Item> items = new ArrayList<>();
        float[] soaked = Soaked.of(flow.grid(), flow.fluid(), flow.meanSpeed());
        add(items, Isosurface.upToGlass(flow.grid(), soaked, aboveMPerS).within(inside(flow.grid(), levelM, 3)),
                FAST);
        return items;
    }

    /** The water's box, a little within the glass, so that bodies that touch it do not fall together with it. */
    private static Bounds inside(Grid grid, double levelM, int layer) {
        double gap = layer * GAP_M;
        double h = grid.cellSizeM();
        return new Bounds(new Vec3(gap, gap, gap),
                new Vec3(grid.nx() * h - gap, grid.ny() * h - gap, levelM - gap));
    }

    private static void add(List<Item> items, Surface surface, Colour colour) {
        if (surface.triangleCount() > 0) {
            items.add(Body.of(surface, Paint.flat(colour, 0.5)));
        }
    }

    /**
     * One slice of the mean speed, up to the glass and the water line: cells end a little before or behind them.
     *
     * @param highM the right, back, upper corner of the water, metres
     */
    public static Item slice(Water water, Cut cut, ColourScale scale, Vec3 highM) {
        FlowStatistics flow = water.flow();
        return slice(flow, flow.meanSpeed(), cut, scale, highM);
    }

    /** One slice of any field of one value a cell. */
    public static Item slice(FlowStatistics flow, float[] values, Cut cut, ColourScale scale, Vec3 highM) {
        Grid grid = flow.grid();
        SliceSheet sheet = SliceSheet.of(grid, flow.fluid(), values, cut);
        Vec3 lastM = new Vec3(grid.nx(), grid.ny(), grid.nz()).times(grid.cellSizeM());
        return new Body(sheet.surface().stretched(lastM, highM), scale.fractions(sheet.values()),
                Paint.mapped(scale.map()));
    }

    /** Specks with the way that each has come in the last moment. */
    public static Item specks(Polylines trails, ColourScale scale) {
        return new Strokes(trails, scale.fractions(trails.values()), Paint.mapped(scale.map()), 2, true);
    }

    /** Specks in a flow as they stand after a while, for a picture that does not move. */
    public static Item specks(Water water, ColourScale scale) {
        return specks(new Tracers(Current.of(water.flow()), TRACERS, 1).trails(TRAIL_S, 6), scale);
    }

    /** Wall shear as a map on sand and rock, pascals. */
    public static List<Item> shear(Scenario scenario, Water water, ColourScale scale) {
        float[] shear = water.flow().wallShear();
        boolean[] carrying = new boolean[shear.length];
        for (int cell = 0; cell < shear.length; cell++) {
            carrying[cell] = shear[cell] > 0;
        }
        return onSolids(scenario, water.flow().grid(), carrying, shear, scale);
    }

    /** Where what was let go came to lie, as a map on sand and rock: share of it a square metre. */
    public static List<Item> deposit(Scenario scenario, Water water, ColourScale scale) {
        Grid grid = water.flow().grid();
        boolean[] fluid = water.flow().fluid();
        boolean[] ground = new boolean[fluid.length];
        int layer = grid.nx() * grid.ny();
        for (int cell = 0; cell < ground.length; cell++) {
            ground[cell] = fluid[cell] && (cell < layer || !fluid[cell - layer]);
        }
        return onSolids(scenario, grid, ground, water.meanDeposit(), scale);
    }

    /**
     * Any field that lives in the cells along walls, as a map on sand and rock.
     *
     * @param carrying which cells have a value that counts
     */
    public static List<Item> onSolids(Scenario scenario, Grid grid, boolean[] carrying, float[] values,
                                      ColourScale scale) {
        List<Surface> surfaces = new ArrayList<>();
        if (scenario.tank().sandDepthM() > 0) {
            surfaces.add(TankParts.sandTop(scenario.tank()));
        }
        scenario.rocks().forEach(rock -> surfaces.add(TankParts.surface(rock)));
        List<Item> items = new ArrayList<>();
        for (Surface surface : surfaces) {
            float[] found = WallValues.on(surface, grid, carrying, values);
            items.add(new Body(surface, scale.fractions(found), Paint.mapped(scale.map()).lit(0.3)));
        }
        return items;
    }
}
