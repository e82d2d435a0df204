package org.capwright.store;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.capwright.job.Input;
import org.capwright.job.Kind;

/** One input's part of the schema. */
final class InputSchema {
    private InputSchema() {
    }

    /** Title, description and what may stand there. */
    static Map<String, Object> of(Input<?> input) {
        Map<String, Object> node = new LinkedHashMap<>();
        node.put("title", input.label());
        node.put("description", description(input));
        node.putAll(values(input));
        input.fallback().ifPresent(text -> node.put("default", fallback(input, text)));
        return node;
    }

    private static String description(Input<?> input) {
        boolean quantityWithRange = input.least().isPresent() && !input.kind().numeric();
        return input.help() + (quantityWithRange ? " Allowed: " + input.allowed() + "." : "");
    }

    private static Map<String, Object> values(Input<?> input) {
        if (!input.kind().words().isEmpty()) {
            return Map.of("enum", words(input));
        }
        if (input.kind().numeric()) {
            return number(input);
        }
        return Map.of("type", input.kind() == Kind.TEXT ? "string" : List.of("string", "number"));
    }

    private static List<Object> words(Input<?> input) {
        List<Object> words = new ArrayList<>();
        if (JobPrinter.holdsNumber(input)) {
            input.kind().words().forEach(word -> words.add(new BigDecimal(word)));
        }
        words.addAll(input.kind().words());
        if (input.mayBeAuto()) {
            words.add(Input.AUTO);
        }
        return words;
    }

    private static Map<String, Object> number(Input<?> input) {
        Map<String, Object> number = new LinkedHashMap<>();
        number.put("type", input.kind() == Kind.COUNT ? "integer" : "number");
        bound(input.least()).ifPresent(least -> number.put("minimum", least));
        bound(input.most()).ifPresent(most -> number.put("maximum", most));
        return input.mayBeAuto() ? Map.of("anyOf", List.of(number, Map.of("const", Input.AUTO))) : number;
    }

    private static Optional<BigDecimal> bound(Optional<String> text) {
        return text.map(BigDecimal::new);
    }

    private static Object fallback(Input<?> input, String text) {
        return JobPrinter.holdsNumber(input) && !text.equals(Input.AUTO) ? new BigDecimal(text) : text;
    }
}
