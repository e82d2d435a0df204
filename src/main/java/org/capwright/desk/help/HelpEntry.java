package org.capwright.desk.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.capwright.check.Check;
import org.capwright.desk.session.Solved;
import org.capwright.desk.sketch.Pointer;
import org.capwright.export.Cautions;
import org.capwright.job.Group;
import org.capwright.job.Input;
import org.capwright.job.Inputs;

/**
 * One entry of the help sheet.
 *
 * @param heading the heading that it stands under
 * @param title what it is about
 * @param text what it says
 * @param pointer what its drawing points at, where it has one
 */
record HelpEntry(String heading, String title, String text, Optional<Pointer> pointer) {
    private static final String[][] KEYS = {
        {"Ctrl+N, Ctrl+O, Ctrl+S, Ctrl+Shift+S", "new, open, save, save as"}, {"Ctrl+Z, Ctrl+Y", "undo, redo"},
        {"Ctrl+E or Ctrl+P", "write or print templates, cut list and the rest"}, {"Ctrl+1 to Ctrl+6", "the views"},
        {"F2", "the view in the whole window, and back"}, {"Alt and the letter that Alt underlines", "a group of the form"},
        {"Space", "play the swing"}, {"Left, Right", "opening by 1 deg"}, {"Up, Down in a field", "step by a shop's size"},
        {"Enter, Up, Down in a reading", "next reading, back, on"}, {"Page Up, Page Down", "template pages"},
        {"Escape", "back to the form"}, {"F1", "this sheet"}};

    /** Every entry, in order; drawings are of the cap that is open. */
    static List<HelpEntry> all(Optional<Solved> solved) {
        List<HelpEntry> all = new ArrayList<>();
        for (String[] key : KEYS) {
            all.add(new HelpEntry("Keys", key[0], key[1], Optional.empty()));
        }
        for (String caution : Cautions.ALL) {
            all.add(new HelpEntry("Cautions", "", caution, Optional.empty()));
        }
        solved.ifPresent(now -> now.checks().forEach(check -> all.add(of(check, now))));
        for (Group group : Inputs.GROUPS) {
            for (Input<?> input : group.inputs()) {
                all.add(new HelpEntry(group.label(), input.label(), input.help() + " (" + input.allowed() + ")",
                        solved.flatMap(now -> Pointers.of(input, now.cap()))));
            }
        }
        return all;
    }

    private static HelpEntry of(Check check, Solved solved) {
        return new HelpEntry("Checks of this cap", check.words(), check.explanation() + "\nNow: " + check.line(solved.format())
                + ". Limit: " + check.limit().source() + ".",
                Pointers.of(check, solved.cap()));
    }

    /** Whether it has all words of a search. */
    boolean matches(String search) {
        String mine = (heading + " " + title + " " + text).toLowerCase(Locale.ROOT);
        return List.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+")).stream().allMatch(mine::contains);
    }
}
