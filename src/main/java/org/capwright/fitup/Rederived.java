package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.check.Check;
import org.capwright.geom.Bounds;
import org.capwright.part.Cap;
import org.capwright.part.PivotRod;

/**
 * A job derived anew from the parts that are held.
 *
 * @param cap the cap with held parts at their sizes and the rest derived from them
 * @param held the parts that are held: sleeve, hood, leaves, gutter, rods, standoffs, stop; without those that can't be kept
 * @param typed what was typed anew for it, by path
 * @param conflicts where cut parts do not go together, or only just do
 */
public record Rederived(Cap cap, Set<String> held, Map<String, String> typed, List<Contradiction> conflicts) {
    /** Less than a scribed line is wide; common practice, no source. */
    private static final double SAME_MM = 0.2;

    /** Keeps its own copies. */
    public Rederived {
        held = Set.copyOf(held);
        typed = Map.copyOf(typed);
        conflicts = List.copyOf(conflicts);
    }

    /**
     * The checks of held parts against each other.
     *
     * @return those of {@link #conflicts}, in the same order
     */
    public List<Check> contradictions() {
        return conflicts.stream().map(Contradiction::check).toList();
    }

    /**
     * The blanks still to be cut that are not what was drawn, and the rods (length and diameter).
     *
     * @param drawn the cap as drawn
     * @return old and new sizes
     */
    public List<BlankChange> changes(Cap drawn) {
        Map<String, Bounds> old = Blanks.of(drawn).stream().collect(Collectors.toMap(Blank::id, blank -> blank.outline().bounds(),
                (a, b) -> a));
        List<BlankChange> changes = new ArrayList<>();
        for (Blank blank : Blanks.of(cap)) {
            Bounds before = old.get(blank.id());
            Bounds after = blank.outline().bounds();
            boolean moved = before != null && (Math.abs(before.width() - after.width()) > SAME_MM
                    || Math.abs(before.height() - after.height()) > SAME_MM);
            if (moved && held.stream().noneMatch(part -> belongs(blank.id(), part))) {
                changes.add(new BlankChange(blank.id(), blank.name(), before.width(), before.height(), after.width(),
                        after.height()));
            }
        }
        if (!held.contains("rods")) {
            cap.rods().forEach(rod -> rod(drawn.rods().get(rod.number() - 1), rod, changes));
        }
        return changes;
    }

    private static void rod(PivotRod before, PivotRod after, List<BlankChange> changes) {
        if (Math.abs(before.lengthMm() - after.lengthMm()) > SAME_MM) {
            changes.add(new BlankChange("rod-" + after.number(), "rod " + after.number(), before.lengthMm(), before.diameterMm(),
                    after.lengthMm(), after.diameterMm()));
        }
    }

    private static boolean belongs(String id, String part) {
        return switch (part) {
            case "leaves" -> id.startsWith("leaf");
            case "standoffs" -> id.startsWith("standoff");
            default -> id.startsWith(part);
        };
    }
}
