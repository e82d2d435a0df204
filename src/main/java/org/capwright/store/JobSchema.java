package org.capwright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.capwright.job.Group;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobText;

/**
 * The form of job files as a JSON Schema (draft 2020-12), made from the input declarations. It is narrower than the reader
 * of jobs in one point: counts and plain numbers must be JSON numbers, as this program writes them. What a quantity's text
 * may say, and what must hold between fields, only the reader checks.
 */
public final class JobSchema {
    private final Map<String, Object> root = object();

    private JobSchema() {
        for (Group group : Inputs.GROUPS) {
            group.inputs().forEach(this::add);
            describe(group);
        }
    }

    /**
     * The schema.
     *
     * @return its text, with a line end after the last line
     */
    public static String text() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Capwright job");
        schema.put("description", "What a shop decides about a round rooftop exhaust cap. Quantities are texts with their"
                + " unit, such as \"24 1/2 in\"; a bare number takes the unit of job.units.");
        schema.putAll(new JobSchema().root);
        return PrettyJson.print(schema);
    }

    private void add(Input<?> input) {
        List<Map<String, Object>> parents = new ArrayList<>(List.of(root));
        String[] steps = input.path().split("\\.");
        for (int i = 0; i + 1 < steps.length; i++) {
            parents.add(step(parents.get(i), steps[i]));
        }
        properties(parents.get(steps.length - 1)).put(input.name(), InputSchema.of(input));
        if (input.required()) {
            require(parents, steps);
        }
    }

    /** A required input makes the groups that hold it required, up to a list, which may be left out. */
    private static void require(List<Map<String, Object>> parents, String[] steps) {
        for (int i = steps.length - 1; i >= 0 && !steps[i].endsWith("[]"); i--) {
            List<String> required = required(parents.get(i));
            if (!required.contains(steps[i])) {
                required.add(steps[i]);
            }
        }
    }

    private static Map<String, Object> step(Map<String, Object> parent, String step) {
        Map<String, Object> properties = properties(parent);
        if (!step.endsWith("[]")) {
            return map(properties.computeIfAbsent(step, name -> object()));
        }
        String name = step.substring(0, step.length() - 2);
        Object list = properties.computeIfAbsent(name, key -> list());
        return map(map(((List<?>) map(list).get("anyOf")).get(0)).get("items"));
    }

    private void describe(Group group) {
        Map<String, Object> node = map(properties(root).get(group.key()));
        Map<String, Object> old = new LinkedHashMap<>(node);
        node.clear();
        node.put("title", group.label());
        node.putAll(old);
    }

    private static Map<String, Object> object() {
        Map<String, Object> node = new LinkedHashMap<>();
        node.put("type", "object");
        node.put("additionalProperties", false);
        node.put("properties", new LinkedHashMap<String, Object>());
        return node;
    }

    private static Map<String, Object> list() {
        Map<String, Object> array = new LinkedHashMap<>();
        array.put("type", "array");
        array.put("items", object());
        Map<String, Object> node = new LinkedHashMap<>();
        node.put("anyOf", List.of(array, Map.of("enum", List.of(Input.AUTO, JobText.EMPTY_LIST))));
        return node;
    }

    private static Map<String, Object> properties(Map<String, Object> node) {
        return map(node.get("properties"));
    }

    @SuppressWarnings("unchecked") // only a list of texts is ever put there
    private static List<String> required(Map<String, Object> node) {
        return (List<String>) node.computeIfAbsent("required", name -> new ArrayList<String>());
    }

    @SuppressWarnings("unchecked") // all nodes are made by object() and list()
    private static Map<String, Object> map(Object node) {
        return (Map<String, Object>) node;
    }
}
