package org.capwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.Kind;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;

/**
 * Finds remedies by trying: each lever is moved by growing steps until the check is clear, then back to the smallest step
 * that does. So a remedy is true by construction.
 */
public final class Remedies {
    private static final int MOST_STEPS = 512;
    private static final int MOST_DEGREES = 180;

    private final Cap cap;
    private final List<Check> before;
    private final Check check;

    private Remedies(Cap cap, List<Check> before, Check check) {
        this.cap = cap;
        this.before = before;
        this.check = check;
    }

    /**
     * The remedies of a check that is not clear.
     *
     * @param cap the cap
     * @param checks all its checks
     * @param check one of them
     * @return remedies, those that spoil nothing else first; none for a check that is clear or that no single input mends
     */
    public static List<Remedy> of(Cap cap, List<Check> checks, Check check) {
        if (check.verdict() == Verdict.CLEAR) {
            return List.of();
        }
        Remedies remedies = new Remedies(cap, checks, check);
        List<Remedy> found = new ArrayList<>();
        for (Lever lever : Levers.of(check)) {
            remedies.by(lever).ifPresent(found::add);
        }
        found.sort(Comparator.comparing(remedy -> !remedy.spoilsNothing()));
        return found;
    }

    /**
     * Remedies in one sentence.
     *
     * @param remedies what was found
     * @return joined by "or"; what to do where there is none
     */
    public static String sentence(List<Remedy> remedies) {
        return remedies.isEmpty() ? "no single input mends this: change the proportions"
                : remedies.stream().limit(2).map(Remedy::words).collect(Collectors.joining(", or "));
    }

    /**
     * The inputs that a lead hand would reach for to mend a check.
     *
     * @param check the check
     * @return inputs, the likeliest first
     */
    public static List<Input<?>> inputs(Check check) {
        List<Input<?>> inputs = new ArrayList<>();
        Levers.of(check).forEach(lever -> inputs.add(lever.input()));
        return inputs;
    }

    private Optional<Remedy> by(Lever lever) {
        if (lever.input().kind() == Kind.ANGLE) {
            return everyStep(lever);
        }
        int clear = 0;
        int allowed = 0;
        int refused = MOST_STEPS + 1;
        for (int steps = 1; steps <= MOST_STEPS && clear == 0 && refused > MOST_STEPS; steps *= 2) {
            Optional<List<Check>> after = typed(lever, steps).flatMap(this::tried);
            refused = after.isEmpty() ? steps : refused;
            clear = after.filter(this::clear).isPresent() ? steps : 0;
            allowed = after.isEmpty() || clear > 0 ? allowed : steps;
        }
        return clear > 0 ? smallest(lever, allowed, clear) : lastAllowed(lever, allowed, refused);
    }

    /** The fewest steps that do, between some that do not and some that do. */
    private Optional<Remedy> smallest(Lever lever, int tooFew, int enough) {
        int low = tooFew;
        int high = enough;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (typed(lever, middle).flatMap(this::tried).filter(this::clear).isPresent()) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return remedy(lever, high);
    }

    /** Doubling may leap over the last steps that the input's range allows: the very last is tried. */
    private Optional<Remedy> lastAllowed(Lever lever, int allowed, int refused) {
        int low = allowed;
        int high = refused;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (typed(lever, middle).flatMap(this::tried).isPresent()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        boolean does = low > allowed && typed(lever, low).flatMap(this::tried).filter(this::clear).isPresent();
        return does ? smallest(lever, allowed, low) : Optional.empty();
    }

    /** Turning something has no direction in which it gets better: every step is tried. */
    private Optional<Remedy> everyStep(Lever lever) {
        for (int steps = 1; steps < MOST_DEGREES; steps++) {
            Optional<Remedy> remedy = typed(lever, steps).isPresent() ? remedy(lever, steps) : Optional.empty();
            if (remedy.isPresent()) {
                return remedy;
            }
        }
        return Optional.empty();
    }

    private Optional<Remedy> remedy(Lever lever, int steps) {
        Map<String, String> typed = typed(lever, steps).orElseThrow();
        return tried(typed).filter(this::clear).map(after ->
                new Remedy(lever.words() + " to " + typed.get(lever.input().path()), typed, spoilsNothing(after)));
    }

    private Optional<Map<String, String>> typed(Lever lever, int steps) {
        return ShopSize.stepped(cap, lever.input(), lever.up() ? steps : -steps).map(text -> {
            Map<String, String> typed = new HashMap<>();
            for (Input<?> other : lever.toAuto()) {
                if (cap.job().find(other).isPresent()) {
                    typed.put(other.path(), Input.AUTO);
                }
            }
            typed.put(lever.input().path(), text);
            return typed;
        });
    }

    private Optional<List<Check>> tried(Map<String, String> typed) {
        JobText text = cap.job().text();
        for (Map.Entry<String, String> one : typed.entrySet()) {
            text = text.with(one.getKey(), one.getValue());
        }
        Optional<CapJob> job = JobReader.read(text).job();
        try {
            return job.map(Cap::solve).map(Checks::of);
        } catch (RefusedJobException e) {
            return Optional.empty();
        }
    }

    private boolean clear(List<Check> after) {
        return after.stream().filter(one -> one.id().equals(check.id())).allMatch(one -> one.verdict() == Verdict.CLEAR);
    }

    private boolean spoilsNothing(List<Check> after) {
        Map<String, Verdict> was = before.stream().collect(Collectors.toMap(Check::id, Check::verdict));
        return after.stream().allMatch(one -> one.verdict().compareTo(was.getOrDefault(one.id(), Verdict.CLEAR)) >= 0);
    }
}
