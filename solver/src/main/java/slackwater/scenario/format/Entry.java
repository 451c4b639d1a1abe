package slackwater.scenario.format;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slackwater.units.Unit;

/** One table of a file as read: values in SI units, each with its line, and a place to tell what is wrong with it. */
public final class Entry {
    private final String path;
    private final int line;
    private final Faults faults;
    private final Map<Key, Written> written = new LinkedHashMap<>();
    private final Map<Key, Value> values = new LinkedHashMap<>();
    private boolean sound = true;

    /** A key as the person wrote it, with its unit, and where. */
    record Written(String name, int line) {
    }

    Entry(String path, int line, Faults faults) {
        this.path = path;
        this.line = line;
        this.faults = faults;
    }

    /** True as long as no fault was told of it. */
    public boolean sound() {
        return sound;
    }

    /** True where the key was written, rightly or not. */
    public boolean wrote(Key key) {
        return written.containsKey(key);
    }

    /** True where the key was written and its value can be used. */
    public boolean has(Key key) {
        return values.containsKey(key);
    }

    /** A number in SI units, the standard one where it was left out. */
    public double number(Key key) {
        return numbers(key).get(0);
    }

    /** Numbers in SI units; empty for a key with a word in their stead. */
    public List<Double> numbers(Key key) {
        return value(key).numbers();
    }

    /** A word or text; empty for a key with numbers in its stead. */
    public String word(Key key) {
        return value(key).word();
    }

    /** The numbers of a key as the person wrote them, with their unit: {@code [4, 25, 38] cm}. */
    public String shown(Key key) {
        Unit unit = unit(key);
        List<Double> numbers = numbers(key).stream().map(unit::fromSi).toList();
        String text = numbers.size() == 1 ? Shown.number(numbers.get(0)) : Shown.numbers(numbers);
        return text + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    /** Another number, to three figures, in the unit that the person used for a key: {@code 12.5 cm}. */
    public String inUnitOf(Key key, double si) {
        return Shown.about(unit(key).fromSi(si)) + " " + unit(key).symbol();
    }

    /** Where the entry stands in the file: {@code pump[1]}. */
    public String path() {
        return path;
    }

    /** Tells a fault of the table as a whole. */
    public void fault(String says) {
        sound = false;
        faults.add(line, path, says);
    }

    /** Tells a fault of one key, at its line. */
    public void fault(Key key, String says) {
        Written place = written(key).orElse(new Written(key.names().get(0), line));
        faultAt(place.line(), place.name(), says);
    }

    /** Tells that a key is missing: {@code missing, give outlet_mm or outlet_in: ...}. */
    public void missing(Key key) {
        faultAt(line, key.names().get(0), "missing, give " + String.join(" or ", key.names()) + choice(key.kind())
                + ": " + key.about());
    }

    void faultAt(int at, String name, String says) {
        sound = false;
        faults.add(at, path.isEmpty() ? name : path + "." + name, says);
    }

    void wrote(Key key, Written place) {
        written.put(key, place);
    }

    void put(Key key, Value value) {
        values.put(key, value);
    }

    Optional<Written> written(Key key) {
        return Optional.ofNullable(written.get(key));
    }

    private static String choice(Kind kind) {
        return kind instanceof Kind.Word word ? " = \"" + String.join("\", \"", word.words()) + "\"" : "";
    }

    private Unit unit(Key key) {
        return key.units().get(Math.max(0, written(key).map(Written::name).map(key.names()::indexOf).orElse(0)));
    }

    private Value value(Key key) {
        return Optional.ofNullable(values.get(key)).or(key::standardValue)
                .orElseThrow(() -> new IllegalStateException(path + " has no " + key.base()));
    }
}
