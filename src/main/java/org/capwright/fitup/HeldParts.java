package org.capwright.fitup;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.capwright.check.Check;
import org.capwright.check.Limit;
import org.capwright.check.Quantity;
import org.capwright.job.CapJob;
import org.capwright.job.FitInputs;
import org.capwright.job.HeldInputs;
import org.capwright.job.Input;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.capwright.swing.LeafSize;

/**
 * Derives a job anew from the parts that are cut: they are turned into inputs, and the job is solved again. Where no cap can have
 * all of them, the fewest parts that contradict each other are named, and as many as can be are kept, in the order of the work.
 */
final class HeldParts {
    private final Cap drawn;
    private final CapJob job;
    private final OvalFit stack;
    private final OvalFit sleeve;
    private final OvalFit hood;
    private final List<LeafSize> leaves;

    /** What comes of holding some parts: the cap, or why there is none. */
    private record Attempt(HeldSizes sizes, Optional<Cap> cap, List<Problem> problems) {
        boolean solved() {
            return cap.isPresent();
        }
    }

    private HeldParts(Cap drawn, OvalFit stack, OvalFit sleeve, OvalFit hood, List<LeafSize> leaves) {
        this.drawn = drawn;
        this.job = drawn.job();
        this.stack = stack;
        this.sleeve = sleeve;
        this.hood = hood;
        this.leaves = leaves;
    }

    static Rederived of(Cap drawn, OvalFit stack, OvalFit sleeve, OvalFit hood, List<LeafSize> leaves) {
        return new HeldParts(drawn, stack, sleeve, hood, leaves).derive();
    }

    private Rederived derive() {
        Set<String> cut = cut();
        Attempt all = attempt(cut);
        if (all.solved()) {
            return new Rederived(all.cap().orElseThrow(), cut, all.sizes().typed(), all.sizes().conflicts());
        }
        Set<String> kept = kept(cut);
        Attempt rest = attempt(kept);
        List<Contradiction> conflicts = new ArrayList<>(List.of(conflict(cut, kept)));
        conflicts.addAll(rest.sizes().conflicts());
        return new Rederived(rest.cap().orElse(drawn), kept, rest.solved() ? rest.sizes().typed() : Map.of(), conflicts);
    }

    private Set<String> cut() {
        Set<String> cut = new LinkedHashSet<>();
        hold(cut, HeldInputs.SLEEVE, sleeve.terms().radius());
        hold(cut, HeldInputs.HOOD, hood.terms().radius());
        hold(cut, HeldInputs.LEAVES, !leaves.isEmpty());
        hold(cut, HeldInputs.GUTTER, job.text().listSize(FitInputs.GUTTERS) > 0);
        hold(cut, HeldInputs.RODS, job.text().listSize(FitInputs.RODS) > 0 || job.find(FitInputs.END_PLAY).isPresent());
        hold(cut, HeldInputs.STANDOFFS, false);
        hold(cut, HeldInputs.STOP, false);
        return cut;
    }

    private void hold(Set<String> cut, Input<HeldInputs.Held> input, boolean measured) {
        if (job.find(input).map(HeldInputs.Held.CUT::equals).orElse(measured)) {
            cut.add(input.name());
        }
    }

    private Attempt attempt(Set<String> held) {
        HeldSizes sizes = new HeldSizes(drawn, stack, sleeve, hood, leaves, held).type();
        try {
            Cap cap = solve(sizes);
            if (held.contains("rods")) {
                sizes.rods(cap);
                cap = solve(sizes);
            }
            return new Attempt(sizes, Optional.of(cap), List.of());
        } catch (RefusedJobException e) {
            return new Attempt(sizes, Optional.empty(), e.problems());
        }
    }

    private Cap solve(HeldSizes sizes) {
        JobText text = job.text();
        for (Map.Entry<String, String> one : sizes.typed().entrySet()) {
            text = text.with(one.getKey(), one.getValue());
        }
        return sizes.typed().isEmpty() ? drawn : Cap.solve(JobReader.read(text).orThrow());
    }

    /** As many as make a cap together, those that are made first before the others. */
    private Set<String> kept(Set<String> cut) {
        Set<String> kept = new LinkedHashSet<>();
        for (String part : cut) {
            kept.add(part);
            if (!attempt(kept).solved()) {
                kept.remove(part);
            }
        }
        return kept;
    }

    /** Takes out part after part that the contradiction does not need. */
    private Set<String> fewest(Set<String> cut) {
        Set<String> fewest = new LinkedHashSet<>(cut);
        for (String part : cut) {
            fewest.remove(part);
            if (attempt(fewest).solved()) {
                fewest.add(part);
            }
        }
        return fewest;
    }

    private Contradiction conflict(Set<String> cut, Set<String> kept) {
        Set<String> fewest = fewest(cut);
        Problem why = attempt(fewest).problems().get(0);
        String who = switch (fewest.size()) {
            case 0 -> "stack as measured contradicts the job";
            case 1 -> String.join("", fewest) + " as made contradicts the rest of the job";
            default -> String.join(" and ", fewest) + " as made contradict each other";
        };
        Limit limit = new Limit(0, false, 0, "no cap has them all: " + why.path() + ", " + why.reason());
        int lost = Math.max(1, cut.size() - kept.size());
        Check check = new Check("held.together", who + ": parts that can't be kept", Quantity.COUNT, lost, limit,
                Optional.empty(), false);
        List<String> parts = fewest.isEmpty() ? List.of("stack") : List.copyOf(fewest);
        return new Contradiction(check, parts, remedy(cut, kept, fewest, why));
    }

    /** Any one part that does it alone, else all that could not be kept. */
    private String remedy(Set<String> cut, Set<String> kept, Set<String> fewest, Problem why) {
        if (fewest.isEmpty()) {
            return "measure the stack again, or change the job. " + why.remedy();
        }
        List<String> alone = fewest.stream().filter(part -> attempt(without(cut, Set.of(part))).solved()).toList();
        if (alone.isEmpty()) {
            return "make " + String.join(" and ", without(cut, kept)) + " anew, and measure the rest again";
        }
        return "make anew (type it open under held): " + String.join(", or ", alone)
                + (fewest.size() == 1 ? "; or change the job. " + why.remedy() : "");
    }

    private static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> rest = new LinkedHashSet<>(all);
        rest.removeAll(some);
        return rest;
    }
}
