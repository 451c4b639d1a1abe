package slackwater.viewer.session;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import slackwater.analysis.CoralReading;
import slackwater.field.FlowStatistics;
import slackwater.field.Grid;
import slackwater.field.Interpolation;
import slackwater.geometry.Mesh;
import slackwater.scenario.Scenario;
import slackwater.viewer.colour.ColourMap;
import slackwater.viewer.colour.ColourScale;
import slackwater.viewer.scene.CoralParts;
import slackwater.viewer.scene.Drawing;
import slackwater.viewer.scene.Item;
import slackwater.viewer.scene.Label;
import slackwater.viewer.scene.Layer;
import slackwater.viewer.scene.Legend;
import slackwater.viewer.scene.Paint;
import slackwater.viewer.scene.PumpParts;
import slackwater.viewer.scene.Palette;
import slackwater.viewer.scene.Scene;
import slackwater.viewer.scene.TankParts;
import slackwater.viewer.scene.Units;
import slackwater.viewer.shape.Axis;
import slackwater.viewer.shape.SliceSheet;
import slackwater.viewer.shape.SliceSheet.Cut;

/** How much faster or slower the water of the second tank is than that of the first, on slices and at the corals. */
public final class Difference {
    private static final double[] ENDS_M_PER_S = {0.02, 0.05, 0.1, 0.2, 0.3, 0.5, 1};
    private static final double END_SHARE = 0.98;

    /** A difference on the first tank's cells, with what it was made from. */
    public record Field(FlowStatistics first, FlowStatistics second, boolean[] both, float[] fasterMPerS) {
        /**
         * Subtracts; where one tank has no water there is nothing to compare. A second grid is read between its cells.
         */
        public static Field of(FlowStatistics first, FlowStatistics second) {
            Grid grid = first.grid();
            Interpolation other = new Interpolation(second.grid(), second.fluid(), second.meanSpeed());
            boolean same = grid.equals(second.grid());
            boolean[] both = new boolean[grid.cells()];
            float[] faster = new float[grid.cells()];
            for (int cell = 0; cell < faster.length; cell++) {
                OptionalDouble speed = !first.fluid()[cell] ? OptionalDouble.empty() : !same
                        ? other.at(grid.centreM(cell)) : second.fluid()[cell]
                        ? OptionalDouble.of(second.meanSpeed()[cell]) : OptionalDouble.empty();
                if (speed.isPresent()) {
                    both[cell] = true;
                    faster[cell] = (float) (speed.getAsDouble() - first.meanSpeed()[cell]);
                }
            }
            return new Field(first, second, both, faster);
        }

        /** A round change that nearly all of the water keeps below, metres per second. */
        public double endMPerS() {
            float[] sizes = new float[fasterMPerS.length];
            int water = 0;
            for (int cell = 0; cell < fasterMPerS.length; cell++) {
                if (both[cell]) {
                    sizes[water++] = Math.abs(fasterMPerS[cell]);
                }
            }
            Arrays.sort(sizes, 0, water);
            double most = water == 0 ? 0 : sizes[(int) (END_SHARE * (water - 1))];
            double end = ENDS_M_PER_S[ENDS_M_PER_S.length - 1];
            for (int n = ENDS_M_PER_S.length - 1; n >= 0 && ENDS_M_PER_S[n] >= most; n--) {
                end = ENDS_M_PER_S[n];
            }
            return end;
        }
    }

    /** A difference with its colours, cut. */
    private record Sliced(ColourScale scale, Map<Axis, Item> slices) {
    }

    private final Lasting<Field> field;
    private final Lasting<Sliced> sliced;
    private final Lasting<List<Item>> layout;
    private final Handles handles = new Handles();

    /** Makes everything where it is asked for. */
    public Difference() {
        this(Runnable::run);
    }

    /** @param elsewhere where differences are made; until they are, the ones before are shown */
    public Difference(Executor elsewhere) {
        field = new Lasting<>(elsewhere);
        sliced = new Lasting<>(elsewhere);
        layout = new Lasting<>(elsewhere);
    }

    /**
     * The picture: what stands in the tank is that of the one that keys and pointer act on. Without water in both
     * tanks, a note says so.
     */
    public Drawing draw(Session session) {
        Side first = session.sides().get(0);
        Side second = session.sides().get(1);
        Scenario shown = session.side().scenario();
        List<Object> standing = List.of(shown.tank(), shown.rocks(), shown.pumps(), shown.returnLine(), shown.corals());
        boolean scanned = shown.rocks().stream().anyMatch(rock -> rock.solid() instanceof Mesh);
        Optional<List<Item>> known = scanned ? layout.of(standing, () -> layout(shown)) : Optional.empty();
        List<Item> items = new ArrayList<>(known.orElseGet(() -> layout.now(standing, () -> layout(shown))));
        items.addAll(handles.of(session, shown, session.selected()));
        Units units = session.showing().units();
        Optional<Sliced> difference = difference(session, first, second, units);
        if (difference.isEmpty()) {
            return new Drawing("Difference", List.of("Both tanks must have water under way first."), items, List.of(),
                    List.of(), Scene.of(shown).glassM(), units.rulers());
        }
        // A slice that was switched off is gone at once.
        List<Axis> wanted = cuts(session, first).stream().map(Cut::axis).toList();
        difference.get().slices().forEach((axis, slice) -> {
            if (wanted.contains(axis)) {
                items.add(slice);
            }
        });
        boolean settled = first.settled() && second.settled();
        String note = second.name() + " less " + first.name() + (settled ? "." : ": not settled yet.");
        List<Label> labels = session.showing().shows(Layer.NAMES) ? labels(first, second, units, settled) : List.of();
        List<String> notes = Status.wrapped(note, session.frame().widthUnits());
        return new Drawing("Difference of mean speed", notes, items, labels,
                List.of(new Legend.Bar("slower (below 0) or faster, " + units.speedUnit(),
                        difference.get().scale())), Scene.of(shown).glassM(), units.rulers());
    }

    private static List<Item> layout(Scenario shown) {
        List<Item> items = new ArrayList<>(TankParts.of(shown));
        items.addAll(PumpParts.of(shown, false));
        items.addAll(CoralParts.of(shown));
        return items;
    }

    private Optional<Sliced> difference(Session session, Side first, Side second, Units units) {
        Optional<FlowStatistics> one = first.mean();
        Optional<FlowStatistics> other = second.mean();
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        List<Cut> cuts = cuts(session, first);
        return field.of(List.of(one.get(), other.get()), () -> Field.of(one.get(), other.get()))
                .flatMap(now -> sliced.of(List.of(now, cuts, units), () -> sliced(now, cuts, units)));
    }

    private static List<Cut> cuts(Session session, Side first) {
        return session.showing().cuts().isEmpty()
                ? List.of(new Cut(Axis.Y, first.scenario().tank().insideM().y() / 2)) : session.showing().cuts();
    }

    private static Sliced sliced(Field field, List<Cut> cuts, Units units) {
        double end = field.endMPerS();
        ColourScale scale = units == Units.METRIC ? ColourScale.ofDifference(end)
                : new ColourScale(ColourMap.MANAGUA, -end, end, false, units.speedUnit(), 1 / 0.0254);
        Map<Axis, Item> slices = new EnumMap<>(Axis.class);
        for (Cut cut : cuts) {
            SliceSheet sheet = SliceSheet.of(field.first().grid(), field.both(), field.fasterMPerS(), cut);
            slices.put(cut.axis(), new Item.Body(sheet.surface(), scale.fractions(sheet.values()),
                    Paint.mapped(scale.map())));
        }
        return new Sliced(scale, slices);
    }

    /** The change at every coral that both tanks have. */
    private static List<Label> labels(Side first, Side second, Units units, boolean settled) {
        List<Label> labels = new ArrayList<>();
        for (CoralReading one : first.readings()) {
            second.readings().stream().filter(other -> other.coral().name().equals(one.coral().name())).findFirst()
                    .ifPresent(other -> {
                        double change = other.reading().meanMPerS() - one.reading().meanMPerS();
                        String words = (change < 0 ? "\u2212" : "+") + units.speed(Math.abs(change)) + " "
                                + units.speedUnit();
                        labels.add(new Label(one.coral().atM(), one.coral().sizeM() / 2, one.coral().name(), words,
                                Palette.PLAIN, !settled));
                    });
        }
        return labels;
    }
}
