package org.capwright.refold;

import java.util.List;
import org.capwright.blank.Blank;
import org.capwright.blank.Blanks;
import org.capwright.drawing.Layer;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.part.Cap;

/** What is drawn on a blank. */
final class Flat {
    private Flat() {
    }

    static Blank blank(Cap cap, String id) {
        return Blanks.of(cap).stream().filter(blank -> blank.id().equals(id)).findFirst().orElseThrow();
    }

    /** Heights of the level bend lines, ascending. */
    static List<Double> levelBends(Blank blank) {
        return blank.drawing().paths(Layer.BEND).stream().filter(path -> path.bounds().height() < 1e-9)
                .map(path -> path.bounds().minY()).sorted().toList();
    }

    /** Stations of the upright bend lines, ascending. */
    static List<Double> uprightBends(Blank blank) {
        return blank.drawing().paths(Layer.BEND).stream().filter(path -> path.bounds().width() < 1e-9)
                .map(path -> path.bounds().minX()).sorted().toList();
    }

    /** Arcs of a layer about the origin. */
    static List<Segment.Arc> arcsAboutOrigin(Blank blank, Layer layer) {
        return blank.drawing().paths(layer).stream().map(Path::segments).flatMap(List::stream)
                .filter(segment -> segment instanceof Segment.Arc arc && arc.center().norm() < 1e-9)
                .map(segment -> (Segment.Arc) segment).toList();
    }
}
