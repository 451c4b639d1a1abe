package slackwater.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slackwater.geometry.Mesh;
import slackwater.scenario.format.Document;
import slackwater.scenario.format.Entry;
import slackwater.scenario.format.Faults;
import slackwater.scenario.format.Table;

/** Reads scenario files. The format is described in docs/scenario-format.md. */
public final class ScenarioReader {
    private final Path folder;
    private final List<Mesh> known;
    private final Document document;
    private final Faults faults;

    private ScenarioReader(Path folder, List<Mesh> known, Document document, Faults faults) {
        this.folder = folder;
        this.known = known;
        this.document = document;
        this.faults = faults;
    }

    /**
     * Reads and checks a scenario, with the meshes it names.
     *
     * @param file a TOML file of at most 1 MB in UTF-8
     * @throws ScenarioFaults with everything that is wrong with it, in the order of its lines; where the text is not
     *     TOML, only the places where it is not
     */
    public static Scenario read(Path file) throws ScenarioFaults {
        Faults faults = new Faults(String.valueOf(file.getFileName()));
        Path folder = file.toAbsolutePath().normalize().getParent();
        return scenario(SourceText.of(file, faults), folder, List.of(), faults);
    }

    /**
     * Reads and checks a scenario that is not in a file, such as one being typed.
     *
     * @param text in TOML
     * @param name what faults are to call it
     * @param folder where its meshes lie
     * @throws ScenarioFaults with everything that is wrong with it
     */
    public static Scenario read(String text, String name, Path folder) throws ScenarioFaults {
        return scenario(Optional.of(text), folder.toAbsolutePath().normalize(), List.of(), new Faults(name));
    }

    /**
     * The same for the text of a layout that is at hand: its meshes, which may be large, are not read again.
     *
     * @param like the layout whose meshes are taken where the text names the same ones at the same places
     * @throws ScenarioFaults with everything that is wrong with it
     */
    public static Scenario read(String text, String name, Path folder, Scenario like) throws ScenarioFaults {
        List<Mesh> known = like.rocks().stream().map(Rock::solid).filter(Mesh.class::isInstance).map(Mesh.class::cast)
                .toList();
        return scenario(Optional.of(text), folder.toAbsolutePath().normalize(), known, new Faults(name));
    }

    private static Scenario scenario(Optional<String> text, Path folder, List<Mesh> known, Faults faults)
            throws ScenarioFaults {
        Optional<Scenario> scenario = text
                .flatMap(toml -> Document.parse(toml, faults))
                .flatMap(document -> new ScenarioReader(folder, known, document, faults).scenario());
        if (!faults.isEmpty()) {
            throw new ScenarioFaults(faults.inOrder());
        }
        return scenario.orElseThrow();
    }

    private Optional<Scenario> scenario() {
        Entry whole = document.whole(ScenarioFormat.WHOLE);
        Optional<Placed<Tank>> tank = entries(TankTable.FORMAT, entry -> { }).stream().findFirst().map(TankTable::read);
        Layout layout = new Layout(rocks(), pumps(), returnLine(), overflow(), corals(), materials());
        tank.filter(placed -> placed.entry().sound())
                .ifPresent(placed -> new LayoutCheck(placed.thing(), layout).tell());
        layout.tellDoubledNames();
        return faults.isEmpty() ? tank.map(placed -> layout.scenario(whole.word(ScenarioFormat.NAME), placed.thing()))
                : Optional.empty();
    }

    /** The entries of a table that are sound, each key for itself and all of them together. */
    private List<Entry> entries(Table format, Consumer<Entry> check) {
        List<Entry> all = document.entries(format);
        all.forEach(check);
        return all.stream().filter(Entry::sound).toList();
    }

    private List<Placed<Rock>> rocks() {
        List<Placed<Rock>> rocks = new ArrayList<>();
        for (Entry entry : entries(RockTable.FORMAT, RockTable::check)) {
            RockTable.read(entry, standardName("rock", entry), folder, known)
                    .ifPresent(rock -> rocks.add(new Placed<>(rock, entry)));
        }
        return rocks;
    }

    private List<Placed<Pump>> pumps() {
        if (!document.has(PumpTable.FORMAT) && !document.has(ReturnTable.FORMAT)) {
            faults.add(1, "pump", "missing, give at least one [[pump]], or a [return] with its [overflow]");
        }
        return entries(PumpTable.FORMAT, PumpTable::check).stream()
                .map(entry -> new Placed<>(PumpTable.read(entry, standardName("pump", entry)), entry)).toList();
    }

    private Optional<Placed<Return>> returnLine() {
        return entries(ReturnTable.FORMAT, entry -> goesWith(entry, OverflowTable.FORMAT)).stream().findFirst()
                .map(entry -> new Placed<>(ReturnTable.read(entry), entry));
    }

    private Optional<Placed<Overflow>> overflow() {
        return entries(OverflowTable.FORMAT, entry -> goesWith(entry, ReturnTable.FORMAT)).stream().findFirst()
                .map(entry -> new Placed<>(OverflowTable.read(entry), entry));
    }

    private void goesWith(Entry entry, Table other) {
        if (!document.has(other)) {
            entry.fault("found no " + other.header() + ", must go with one: what comes in has to leave; add "
                    + other.header() + " or leave this out");
        }
    }

    private List<Placed<Coral>> corals() {
        return entries(CoralTable.FORMAT, CoralTable::check).stream()
                .map(entry -> new Placed<>(CoralTable.read(entry, standardName("coral", entry)), entry)).toList();
    }

    private List<Placed<Material>> materials() {
        return entries(MaterialTable.FORMAT, entry -> { }).stream()
                .map(entry -> new Placed<>(MaterialTable.read(entry), entry)).toList();
    }

    /** "pump 2" for pump[2]. */
    private static String standardName(String kind, Entry entry) {
        return kind + " " + entry.path().replaceAll("\\D", "");
    }
}
