package org.capwright.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All inputs of a job, in the order of the work. */
public final class Inputs {
    /** All groups, in the order of the work. */
    public static final List<Group> GROUPS = List.of(JobInputs.GROUP, StackInputs.GROUP, SleeveInputs.GROUP,
            HoodInputs.GROUP, LeafInputs.GROUP, RodInputs.RODS, RodInputs.BUSHINGS, RodInputs.DOUBLERS,
            GutterInputs.GROUP, StopInputs.GROUP, StandoffInputs.GROUP, AirInputs.GROUP, StockInputs.GROUP,
            LimitInputs.GROUP, FitInputs.GROUP, HeldInputs.GROUP, ToleranceInputs.GROUP);
    /** The lists of inputs that a job may hold any number of, by path. */
    public static final List<String> LISTS = List.of(HoodInputs.BEADS, FitInputs.STACK, FitInputs.SLEEVE,
            FitInputs.HOOD_BORE, FitInputs.GAPS, FitInputs.RODS, FitInputs.LEAVES, FitInputs.COVERS, FitInputs.GUTTERS);

    /** Groups that describe the work, not the design: changing them changes no part. */
    private static final List<Group> APART = List.of(FitInputs.GROUP, HeldInputs.GROUP, ToleranceInputs.GROUP);
    private static final Map<String, Input<?>> BY_PATH = byPath();

    private Inputs() {
    }

    /**
     * All inputs.
     *
     * @return those of all groups, in order; a list's inputs once, with {@code []} in their path
     */
    public static List<Input<?>> all() {
        return List.copyOf(BY_PATH.values());
    }

    /**
     * The input at a path.
     *
     * @param path such as {@code leaves.cover} or {@code hood.beads[1].width}
     * @return its declaration; empty where there is none
     */
    public static Optional<Input<?>> at(String path) {
        int open = path.indexOf('[');
        int close = path.indexOf(']');
        if (open < 0 || close < open) {
            return Optional.ofNullable(BY_PATH.get(path));
        }
        String general = path.substring(0, open + 1) + path.substring(close);
        String index = path.substring(open + 1, close);
        boolean known = index.matches("\\d{1,3}") && BY_PATH.containsKey(general);
        return known ? Optional.of(BY_PATH.get(general).at(Integer.parseInt(index))) : Optional.empty();
    }

    /**
     * Whether a path belongs to the design: readings, held parts and tolerances stand apart from it.
     *
     * @param path a path of a job
     * @return false where no part depends on it
     */
    public static boolean ofDesign(String path) {
        return APART.stream().noneMatch(group -> path.startsWith(group.key() + "."));
    }

    /** The known path nearest to a mistyped one. */
    static Optional<String> nearest(String path) {
        String general = path.replaceAll("\\[\\d+]", "[]");
        return NearestName.of(general, BY_PATH.keySet());
    }

    private static Map<String, Input<?>> byPath() {
        Map<String, Input<?>> inputs = new LinkedHashMap<>();
        GROUPS.forEach(group -> group.inputs().forEach(input -> inputs.put(input.path(), input)));
        return inputs;
    }
}
