package org.capwright.store;

import org.capwright.job.Group;
import org.capwright.job.Input;
import org.capwright.job.Inputs;

/** The page of the documentation that lists all inputs. */
final class InputsPage {
    private InputsPage() {
    }

    /** The page, made from the declarations. */
    static String text() {
        StringBuilder page = new StringBuilder("""
                # Inputs

                Everything that a job file may hold, in the order of the work. This page is made from the declarations in the
                code; DEVELOPERS.md says how. Lengths are typed with their unit (`24 1/2 in`, `622 mm`); a bare number takes the
                unit of `job.units`. `auto` leaves a value to a rule. Where no default is given, the value must be typed.
                """);
        Inputs.GROUPS.forEach(group -> table(page, group));
        return page.toString();
    }

    private static void table(StringBuilder page, Group group) {
        page.append("\n## ").append(group.label()).append("\n\n| field | what | allowed | default | |\n|---|---|---|---|---|\n");
        group.inputs().forEach(input -> page.append(row(input)));
    }

    private static String row(Input<?> input) {
        String fallback = input.fallback().map(text -> text.isEmpty() ? "empty" : text).orElse("");
        return "| " + String.join(" | ", '`' + input.path() + '`', input.label(), input.allowed(), fallback, input.help()) + " |\n";
    }
}
