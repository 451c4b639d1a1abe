package slackwater.scenario;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slackwater.scenario.format.Key;
import slackwater.scenario.format.Shown;

/** What stands in the tank, each thing with its place in the file. */
record Layout(List<Placed<Rock>> rocks, List<Placed<Pump>> pumps, Optional<Placed<Return>> returnLine,
              Optional<Placed<Overflow>> overflow, List<Placed<Coral>> corals,
              List<Placed<Material>> materials) {
    Scenario scenario(String name, Tank tank) {
        return new Scenario(name, tank, Placed.things(rocks), Placed.things(pumps),
                returnLine.map(Placed::thing), overflow.map(Placed::thing), Placed.things(corals),
                Placed.things(materials));
    }

    /** Tells of two rocks, pumps, corals or materials with one name, since a report could not hold them apart. */
    void tellDoubledNames() {
        tellDoubled(rocks, RockTable.NAME, Rock::name);
        tellDoubled(pumps, PumpTable.NAME, Pump::name);
        tellDoubled(corals, CoralTable.NAME, Coral::name);
        tellDoubled(materials, MaterialTable.NAME, Material::name);
    }

    private static <T> void tellDoubled(List<Placed<T>> things, Key key, Function<T, String> name) {
        Map<String, String> seen = new HashMap<>();
        for (Placed<T> placed : things) {
            Optional.ofNullable(seen.putIfAbsent(name.apply(placed.thing()), placed.entry().path()))
                    .ifPresent(earlier -> placed.entry().fault(key, "found "
                            + Shown.text(name.apply(placed.thing())) + " again, " + earlier
                            + " has it; give each its own"));
        }
    }
}
