package slackwater.scenario.format;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import slackwater.units.Unit;

/** The format as a JSON Schema (draft-07, which editors know best), for completion and checks while typing. */
public final class EditorSchema {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private EditorSchema() {
    }

    /** The schema's text. */
    public static String of(String title, Table whole) {
        ObjectNode root = JSON.objectNode();
        root.put("$schema", "http://json-schema.org/draft-07/schema#");
        root.put("title", title);
        root.setAll(table(whole));
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static ObjectNode table(Table table) {
        ObjectNode node = described("object", table.about());
        node.put("additionalProperties", false);
        ObjectNode properties = node.putObject("properties");
        ArrayNode required = JSON.arrayNode();
        ArrayNode rules = JSON.arrayNode();
        for (Key key : table.keys()) {
            key.units().forEach(unit -> properties.set(key.name(unit), value(key, unit)));
            if (key.required() && key.names().size() == 1) {
                required.add(key.names().get(0));
            }
            if (key.names().size() > 1) {
                rules.add(oneUnit(key));
            }
        }
        for (Table inner : table.tables()) {
            properties.set(inner.name(), inner.repeated() ? list(inner) : table(inner));
            if (inner.required()) {
                required.add(inner.name());
            }
        }
        if (!required.isEmpty()) {
            node.set("required", required);
        }
        if (!rules.isEmpty()) {
            node.set("allOf", rules);
        }
        return node;
    }

    private static ObjectNode list(Table inner) {
        ObjectNode node = described("array", inner.about());
        node.put("maxItems", inner.most());
        node.set("items", table(inner));
        return node;
    }

    /** A key in one unit at a time: exactly one where it is needed, at most one otherwise. */
    private static ObjectNode oneUnit(Key key) {
        ObjectNode rule = JSON.objectNode();
        if (key.required()) {
            ArrayNode either = rule.putArray("oneOf");
            key.names().forEach(name -> either.addObject().putArray("required").add(name));
        } else {
            ArrayNode both = rule.putObject("not").putArray("required");
            key.names().forEach(both::add);
        }
        return rule;
    }

    private static ObjectNode value(Key key, Unit unit) {
        if (key.kind() instanceof Kind.Text text) {
            ObjectNode node = described("string", key.about());
            return node.put("minLength", 1).put("maxLength", text.longest());
        }
        if (key.kind() instanceof Kind.Word word) {
            return words(described("string", key.about()), word.words());
        }
        if (key.kind() instanceof Kind.Numbers numbers) {
            return numbers(key, numbers, unit);
        }
        ObjectNode node = JSON.objectNode().put("description", key.about());
        ArrayNode either = node.putArray("oneOf");
        either.add(words(JSON.objectNode(), ((Kind.WordOrDirection) key.kind()).words()));
        either.add(listOf(JSON.objectNode(), JSON.objectNode().put("type", "number"), 3));
        return node;
    }

    private static ObjectNode numbers(Key key, Kind.Numbers kind, Unit unit) {
        ObjectNode one = JSON.objectNode().put("type", "number");
        Limits limits = kind.limits();
        Unit metric = kind.dimension().metric();
        double low = unit.fromSi(metric.toSi(limits.low()));
        one.put(limits.lowAllowed() ? "minimum" : "exclusiveMinimum", low);
        one.put("maximum", unit.fromSi(metric.toSi(limits.high())));
        if (kind.count() > 1) {
            return listOf(JSON.objectNode().put("description", key.about()), one, kind.count());
        }
        if (!key.standard().isEmpty() && unit == metric) {
            one.put("default", Double.parseDouble(key.standard()));
        }
        return one.put("description", key.about());
    }

    private static ObjectNode listOf(ObjectNode node, ObjectNode item, int count) {
        node.put("type", "array").put("minItems", count).put("maxItems", count);
        node.set("items", item);
        return node;
    }

    private static ObjectNode words(ObjectNode node, List<String> words) {
        words.forEach(node.withArray("enum")::add);
        return node;
    }

    private static ObjectNode described(String type, String about) {
        return JSON.objectNode().put("type", type).put("description", about);
    }
}
