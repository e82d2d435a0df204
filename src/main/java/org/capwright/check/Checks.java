package org.capwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.air.Air;
import org.capwright.part.Cap;
import org.capwright.swing.Swing;

/** The whole list of checks. */
public final class Checks {
    private Checks() {
    }

    /**
     * All checks of a cap.
     *
     * @param cap the cap
     * @return the checks, in the order of the work
     */
    public static List<Check> of(Cap cap) {
        return of(cap, Swing.of(cap), Air.of(cap));
    }

    /**
     * All checks of a cap whose swing and air are known.
     *
     * @param cap the cap
     * @param swing its swing
     * @param air its air
     * @return the checks, in the order of the work
     */
    public static List<Check> of(Cap cap, Swing swing, Air air) {
        List<Check> all = new ArrayList<>(SwingChecks.of(cap, swing));
        all.addAll(AirChecks.of(cap, air));
        all.addAll(FitChecks.of(cap));
        all.addAll(SheetChecks.of(cap));
        return List.copyOf(all);
    }

    /**
     * The worst verdict.
     *
     * @param checks some checks
     * @return foul if any is, else tight if any is, else clear
     */
    public static Verdict worst(List<Check> checks) {
        return checks.stream().map(Check::verdict).min(Comparator.naturalOrder()).orElse(Verdict.CLEAR);
    }

    /**
     * Fouls first, then tight ones; each kind in the order of the work.
     *
     * @param checks some checks
     * @return the same, sorted
     */
    public static List<Check> worstFirst(List<Check> checks) {
        return checks.stream().sorted(Comparator.comparing(Check::verdict)).toList();
    }
}
