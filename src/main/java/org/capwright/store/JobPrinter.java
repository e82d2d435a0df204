package org.capwright.store;

import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobText;
import tools.jackson.core.JsonGenerator;

/** Prints a job's texts as the JSON of a job file. */
final class JobPrinter {
    /** A number as JSON writes it (RFC 8259, section 6). */
    private static final String JSON_NUMBER = "-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d+)?";

    private final JsonGenerator json;

    private JobPrinter(JsonGenerator json) {
        this.json = json;
    }

    /** The text of the job file, with a line end after the last line. */
    static String print(JobText text) {
        JobTree tree = JobTree.of(text);
        return PrettyJson.print(json -> new JobPrinter(json).object(tree));
    }

    private void object(JobTree node) {
        json.writeStartObject();
        node.fields().forEach((name, inner) -> {
            json.writeName(name);
            value(inner);
        });
        json.writeEndObject();
    }

    private void list(JobTree node) {
        json.writeStartArray();
        node.fields().values().forEach(this::value);
        json.writeEndArray();
    }

    private void value(JobTree node) {
        if (node.text() != null) {
            text(node);
        } else if (node.list()) {
            list(node);
        } else {
            object(node);
        }
    }

    private void text(JobTree node) {
        String typed = node.text();
        if (typed.equals(JobText.EMPTY_LIST) && Inputs.LISTS.contains(node.path())) {
            json.writeStartArray();
            json.writeEndArray();
        } else if (typed.matches(JSON_NUMBER) && Inputs.at(node.path()).filter(JobPrinter::holdsNumber).isPresent()) {
            json.writeNumber(typed);
        } else {
            json.writeString(typed);
        }
    }

    /** Whether an input is held as a number: a count, a plain number, or a choice among numbers. */
    static boolean holdsNumber(Input<?> input) {
        return input.kind().numeric()
                || !input.kind().words().isEmpty() && input.kind().words().stream().allMatch(word -> word.matches("\\d+"));
    }
}
