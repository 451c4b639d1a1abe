package slackwater.scenario;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slackwater.geometry.Box;
import slackwater.geometry.Cylinder;
import slackwater.geometry.Ellipsoid;
import slackwater.geometry.Mesh;
import slackwater.geometry.MeshFault;
import slackwater.geometry.MeshPlacement;
import slackwater.geometry.Solid;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Limits;
import slackwater.scenario.format.Shown;
import slackwater.scenario.format.Table;
import slackwater.scenario.format.TableWriter;
import slackwater.units.Dimension;

/** The tables [[rock]]. */
final class RockTable {
    private static final Limits SIZE = Limits.above(0, 1000).typically(3, 60);
    private static final Map<String, Double> MESH_UNITS = meshUnits();

    static final Key NAME = Key.text("name", 80, "what to call it; \"rock 1\" and so on where left out");
    static final Key SHAPE = Key.word("shape", List.of("box", "ellipsoid", "cylinder", "mesh"),
            "its shape; may be left out beside mesh");
    static final Key MIN = Places.point("min", "box: its left, front, lower corner");
    static final Key MAX = Places.point("max", "box: its right, back, upper corner");
    static final Key CENTRE = Places.point("centre", "ellipsoid: its middle");
    static final Key RADII = Key.numbers("radii", Dimension.LENGTH, 3, SIZE, "ellipsoid: half its size each way");
    static final Key BASE = Places.point("base", "cylinder: middle of its lower end");
    static final Key HEIGHT = Key.number("height", Dimension.LENGTH, SIZE, "cylinder: from end to end");
    static final Key RADIUS = Key.number("radius", Dimension.LENGTH, SIZE, "cylinder: half its width");
    static final Key AXIS = Places.direction("axis", "cylinder: from the base to the other end").standing("up");
    static final Key MESH = Key.text("mesh", 200,
            "mesh: a .stl, .obj, .ply or .glb file in the scenario's folder or below");
    static final Key MESH_UNIT = Key.word("mesh_unit", List.copyOf(MESH_UNITS.keySet()),
            "mesh: the file's unit; mm where left out, m for .glb");
    static final Key MESH_UP = Key.word("mesh_up", List.of("z", "y"),
            "mesh: the file's axis that points up; z where left out, y for .glb");
    static final Key AT = Places.point("at", "mesh: where the middle of its base goes");
    static final Key TURN = Key.number("turn", Dimension.ANGLE, Limits.between(-360, 360),
            "mesh: turn about the vertical, anticlockwise from above").standing("0");
    static final Table FORMAT = Table.many("rock", 500, "A rock. May reach into the sand, another rock or the glass.",
            List.of(NAME, SHAPE, MIN, MAX, CENTRE, RADII, BASE, HEIGHT, RADIUS, AXIS, MESH,
                    MESH_UNIT, MESH_UP, AT, TURN));

    private static final Map<String, List<Key>> NEEDED = Map.of("box", List.of(MIN, MAX),
            "ellipsoid", List.of(CENTRE, RADII), "cylinder", List.of(BASE, HEIGHT, RADIUS), "mesh", List.of(MESH, AT));
    private static final Map<String, List<Key>> ALLOWED = Map.of("box", List.of(), "ellipsoid", List.of(),
            "cylinder", List.of(AXIS), "mesh", List.of(MESH_UNIT, MESH_UP, TURN));

    private RockTable() {
    }

    /** Tells what is wrong between keys that are each right. */
    static void check(Entry entry) {
        if (!entry.wrote(SHAPE) && !entry.wrote(MESH)) {
            entry.missing(SHAPE);
        }
        if (!entry.has(SHAPE) && (entry.wrote(SHAPE) || !entry.wrote(MESH))) {
            return;
        }
        String shape = shape(entry);
        NEEDED.get(shape).stream().filter(key -> !entry.wrote(key)).forEach(entry::missing);
        FORMAT.keys().stream()
                .filter(key -> entry.wrote(key) && key != NAME && key != SHAPE)
                .filter(key -> !NEEDED.get(shape).contains(key) && !ALLOWED.get(shape).contains(key))
                .forEach(key -> entry.fault(key, "does not go with shape \"" + shape + "\"; leave it out"));
        if (entry.sound() && shape.equals("box")) {
            checkBox(entry);
        }
    }

    private static void checkBox(Entry entry) {
        List<Double> min = entry.numbers(MIN);
        List<Double> max = entry.numbers(MAX);
        for (int way = 0; way < 3; way++) {
            if (min.get(way) >= max.get(way)) {
                entry.fault(MAX, "found " + entry.shown(MAX) + ", must be above min " + entry.shown(MIN)
                        + " in every direction");
                return;
            }
        }
    }

    /**
     * The rock; empty where its mesh cannot be used, which is told.
     *
     * @param folder the scenario file's folder
     * @param known meshes that have been read already, and are not read again while their files are there
     */
    static Optional<Rock> read(Entry entry, String standardName, Path folder, List<Mesh> known) {
        String name = entry.has(NAME) ? entry.word(NAME) : standardName;
        return solid(entry, folder, known).map(solid -> new Rock(name, solid));
    }

    private static Optional<Solid> solid(Entry entry, Path folder, List<Mesh> known) {
        return switch (shape(entry)) {
            case "box" -> Optional.of(new Box(Places.vector(entry, MIN), Places.vector(entry, MAX)));
            case "ellipsoid" -> Optional.of(new Ellipsoid(Places.vector(entry, CENTRE), Places.vector(entry, RADII)));
            case "cylinder" -> Optional.of(new Cylinder(Places.vector(entry, BASE), Places.unitVector(entry, AXIS),
                    entry.number(HEIGHT), entry.number(RADIUS)));
            default -> mesh(entry, folder, known);
        };
    }

    private static Optional<Solid> mesh(Entry entry, Path folder, List<Mesh> known) {
        String file = entry.word(MESH);
        boolean gltf = file.toLowerCase(Locale.ROOT).endsWith(".glb");
        String unit = entry.has(MESH_UNIT) ? entry.word(MESH_UNIT) : gltf ? "m" : "mm";
        boolean yUp = entry.has(MESH_UP) ? entry.word(MESH_UP).equals("y") : gltf;
        MeshPlacement placement = new MeshPlacement(file, MESH_UNITS.get(unit), yUp, entry.number(TURN),
                Places.vector(entry, AT));
        try {
            Path path = MeshPath.within(folder, file);
            Optional<Mesh> read = known.stream().filter(mesh -> mesh.placement().agrees(placement)
                    && Files.isRegularFile(path)).findFirst();
            return Optional.of(read.isPresent() ? read.get() : Mesh.read(path, placement));
        } catch (MeshFault broken) {
            entry.fault(MESH, Shown.text(file) + " " + broken.getMessage());
            return Optional.empty();
        }
    }

    static TableWriter write(Rock rock) {
        TableWriter writer = new TableWriter(FORMAT).put(NAME, rock.name());
        Solid solid = rock.solid();
        if (solid instanceof Box box) {
            writer.put(SHAPE, "box").put(MIN, Places.numbers(box.low())).put(MAX, Places.numbers(box.high()));
        } else if (solid instanceof Ellipsoid ellipsoid) {
            writer.put(SHAPE, "ellipsoid").put(CENTRE, Places.numbers(ellipsoid.centre()))
                    .put(RADII, Places.numbers(ellipsoid.radii()));
        } else if (solid instanceof Cylinder cylinder) {
            writer.put(SHAPE, "cylinder").put(BASE, Places.numbers(cylinder.base()))
                    .put(HEIGHT, cylinder.heightM()).put(RADIUS, cylinder.radiusM());
            Places.write(writer, AXIS, cylinder.direction());
        } else if (solid instanceof Mesh mesh) {
            writeMesh(writer, mesh.placement());
        } else {
            throw new IllegalArgumentException("the scenario format has no word for " + solid);
        }
        return writer;
    }

    private static void writeMesh(TableWriter writer, MeshPlacement placement) {
        String unit = MESH_UNITS.entrySet().stream().filter(entry -> entry.getValue() == placement.unitM())
                .map(Map.Entry::getKey).findFirst().orElseThrow();
        writer.put(MESH, placement.file()).put(MESH_UNIT, unit).put(MESH_UP, placement.yUp() ? "y" : "z")
                .put(AT, Places.numbers(placement.atM())).put(TURN, placement.turnRad());
    }

    private static String shape(Entry entry) {
        return entry.has(SHAPE) ? entry.word(SHAPE) : "mesh";
    }

    private static Map<String, Double> meshUnits() {
        Map<String, Double> units = new LinkedHashMap<>();
        units.put("mm", 0.001);
        units.put("cm", 0.01);
        units.put("m", 1.0);
        units.put("in", 0.0254);
        return units;
    }
}
