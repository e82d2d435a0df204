package org.capwright.store;

import java.util.LinkedHashMap;
import java.util.Map;
import org.capwright.job.JobText;

/**
 * A job's texts nested again by the steps of their paths, in the declared order. A node holds a text, or named nodes, or
 * numbered ones.
 */
final class JobTree {
    private final Map<String, JobTree> fields = new LinkedHashMap<>();
    private final String path;
    private String text;

    private JobTree(String path) {
        this.path = path;
    }

    /** The nested form of a job's texts. */
    static JobTree of(JobText job) {
        JobTree root = new JobTree("");
        JobOrder.ordered(job).forEach((path, text) -> {
            if (job.listSize(path) == 0) { // a list's own text no longer counts once it has elements
                root.put(path, text);
            }
        });
        return root;
    }

    private void put(String whole, String typed) {
        JobTree node = this;
        for (String step : whole.replace("[", ".[").split("\\.")) {
            node.refuseText(whole);
            node = node.child(step);
        }
        if (!node.fields.isEmpty()) {
            throw conflict(whole);
        }
        node.text = typed;
    }

    private JobTree child(String step) {
        String inner = step.startsWith("[") || path.isEmpty() ? path + step : path + "." + step;
        return fields.computeIfAbsent(step, name -> new JobTree(inner));
    }

    private void refuseText(String whole) {
        if (text != null) {
            throw conflict(whole);
        }
    }

    private static StoreException conflict(String whole) {
        return new StoreException("The job can't be written: " + whole + " is both a value and a group of values.");
    }

    /** Its path in the job. */
    String path() {
        return path;
    }

    /** Its text; null where it holds other nodes. */
    String text() {
        return text;
    }

    /** Its nodes by name, or by {@code [number]}. */
    Map<String, JobTree> fields() {
        return fields;
    }

    /** Whether its nodes are the elements of a list. */
    boolean list() {
        return fields.keySet().stream().anyMatch(step -> step.startsWith("["));
    }
}
