package org.capwright.layout;

import java.util.List;
import org.capwright.blank.Writing;
import org.capwright.part.Cap;
import org.capwright.swing.Swing;
import org.capwright.units.ShopFormat;

/**
 * The layout of a cap: its views and its parts.
 *
 * @param parts its parts with their numbers
 * @param views section, plan, elevation, details
 */
public record Layout(PartList parts, List<View> views) {
    /** Keeps its own copy. */
    public Layout {
        views = List.copyOf(views);
    }

    /**
     * The layout of a cap.
     *
     * @param cap the cap
     * @return its views, in the order of the pages
     */
    public static Layout of(Cap cap) {
        ShopFormat format = Writing.of(cap).format();
        PartList parts = PartList.of(cap, format);
        return new Layout(parts, List.of(SectionView.of(cap, parts, format), PlanView.of(cap, parts, format),
                ElevationView.of(cap, parts, format),
                StandoffDetail.of(cap, parts, format), GutterDetail.of(cap, Swing.of(cap), parts, format)));
    }
}
