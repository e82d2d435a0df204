package org.capwright.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.capwright.units.UnitSystem;
import org.capwright.units.UnreadableQuantityException;

/** Reads what was typed into a job. Reports every problem at once; never clamps, never guesses. */
public final class JobReader {
    private final JobText text;
    private final UnitSystem bare;
    private final Map<String, Object> values = new HashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private JobReader(JobText text) {
        this.text = text;
        this.bare = text.at(JobInputs.UNITS.path()).filter("mm"::equals).map(mm -> UnitSystem.METRIC).orElse(UnitSystem.INCH);
    }

    /**
     * Reads a job.
     *
     * @param text what was typed
     * @return the job, or every problem in it
     */
    public static JobReading read(JobText text) {
        return new JobReader(text).reading();
    }

    /**
     * Reads a job again of which one input was typed anew: the same as reading all of it, at a fraction of the time.
     *
     * @param job a good job
     * @param input the input
     * @param typed what is typed there now
     * @return the changed job, or what is wrong with it
     */
    public static JobReading reread(CapJob job, Input<?> input, String typed) {
        JobText text = job.text().with(input.path(), typed);
        if (input.path().equals(JobInputs.UNITS.path()) || input.path().equals(JobInputs.VERSION.path())) {
            return read(text);
        }
        JobReader reader = new JobReader(text);
        reader.values.putAll(job.values());
        reader.values.remove(input.path());
        reader.readOne(input);
        return reader.byTheRules();
    }

    private JobReading byTheRules() {
        if (problems.isEmpty()) {
            CapJob job = new CapJob(text, values);
            problems.addAll(JobRules.problems(job));
            return new JobReading(problems.isEmpty() ? Optional.of(job) : Optional.empty(), problems);
        }
        return new JobReading(Optional.empty(), problems);
    }

    private JobReading reading() {
        if (newerVersion()) {
            return new JobReading(Optional.empty(), problems);
        }
        text.texts().forEach(this::refuseUnknown);
        for (Input<?> input : Inputs.all()) {
            int size = input.path().contains("[]") ? text.listSize(listOf(input)) : -1;
            if (size < 0) {
                readOne(input);
            }
            for (int i = 0; i < size; i++) {
                readOne(input.at(i));
            }
        }
        return byTheRules();
    }

    private static String listOf(Input<?> input) {
        return input.path().substring(0, input.path().indexOf("[]"));
    }

    private boolean newerVersion() {
        String version = text.at(JobInputs.VERSION.path()).orElse("1");
        boolean newer = version.matches("\\d{1,9}") && Integer.parseInt(version) > JobInputs.NEWEST_VERSION;
        if (newer) {
            problems.add(new Problem(JobInputs.VERSION.path(), version, "this job file is of a newer version than this program"
                    + " reads (up to " + JobInputs.NEWEST_VERSION + ")", "Open it with a newer Capwright"));
        }
        return newer;
    }

    private void refuseUnknown(String path, String typed) {
        if (Inputs.at(path).isPresent()) {
            return;
        }
        if (Inputs.LISTS.contains(path)) {
            refuseListText(path, typed);
            return;
        }
        String remedy = Inputs.nearest(path).map(name -> "Write \"" + name + "\" if you meant that").orElse("Take it out");
        problems.add(new Problem(path, typed, "there is no such field", remedy));
    }

    private void refuseListText(String path, String typed) {
        if (!typed.equals(Input.AUTO) && !typed.equals(JobText.EMPTY_LIST)) {
            problems.add(new Problem(path, typed, "must be a list, \"" + JobText.EMPTY_LIST + "\", or " + Input.AUTO,
                    "Type its elements, or one of these words"));
        }
    }

    private <T> void readOne(Input<T> input) {
        Optional<String> typed = text.at(input.path());
        if (typed.isEmpty() && input.fallback().isPresent()) {
            readDefault(input, input.fallback().get());
            return;
        }
        String chosen = typed.orElse("");
        if (input.required() && chosen.isBlank()) {
            problems.add(new Problem(input.path(), "", "must be given, " + input.allowed(),
                    "Type it, such as \"" + input.kind().example() + "\""));
        } else if (!(input.mayBeAuto() && chosen.strip().equals(Input.AUTO))) {
            readValue(input, chosen);
        }
    }

    private <T> void readDefault(Input<T> input, String text) {
        if (!text.equals(Input.AUTO)) {
            values.put(input.path(), Ranges.declared(input, text));
        }
    }

    private <T> void readValue(Input<T> input, String chosen) {
        try {
            T value = input.read(chosen, bare);
            if (Ranges.contains(input, value)) {
                values.put(input.path(), value);
            } else {
                problems.add(new Problem(input.path(), chosen, "must be " + input.allowed(), "Type a value in that range"));
            }
        } catch (UnreadableQuantityException e) {
            problems.add(new Problem(input.path(), chosen, reason(chosen, e),
                    input.kind().words().isEmpty() ? "Type " + input.allowed() : "Type one of these"));
        }
    }

    /** The message without the text that it starts with, which a problem quotes by itself. */
    private static String reason(String chosen, UnreadableQuantityException e) {
        String quoted = '"' + chosen + "\" ";
        return e.getMessage().startsWith(quoted) ? e.getMessage().substring(quoted.length()) : e.getMessage();
    }
}
