package org.capwright.export.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.capwright.price.Names;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.nest.SheetLayout;
import org.capwright.units.ShopFormat;

/** What is said of nested sheets. */
final class SheetWords {
    private SheetWords() {
    }

    /** Pieces, use, remnant, shear. */
    static String of(SheetLayout layout, ShopFormat format) {
        List<String> words = new ArrayList<>(List.of("pieces " + layout.placements().size(),
                String.format(Locale.ROOT, "use %.1f %%", 100 * layout.usedMm2() / layout.size().areaMm2())));
        words.add(layout.remnant().map(rest -> "remnant " + new Names(format).of(rest)).orElse("no usable remnant"));
        if (!layout.cuts().isEmpty()) {
            words.add("a shear can cut it in " + layout.cuts().size() + (layout.cuts().size() == 1 ? " cut" : " cuts"));
        }
        return String.join(", ", words);
    }

    /** Nothing where the search came to its own end. */
    static String settled(SheetGroup group, long seed) {
        return group.nest().settled() ? "" : "; the search (seed " + seed
                + ") was cut short, another run may give another layout";
    }
}
