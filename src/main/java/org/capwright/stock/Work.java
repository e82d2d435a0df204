package org.capwright.stock;

import java.util.List;
import java.util.function.Predicate;
import org.capwright.blank.Blank;
import org.capwright.drawing.Layer;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Leaf;

/**
 * How much work one cap is, counted from its blanks and lists.
 *
 * @param cutM outlines and holes to cut, m
 * @param blanks blanks to handle
 * @param bends straight bends on the brake
 * @param rolls pieces to roll
 * @param beadM beads to roll, m
 * @param crimpPasses passes over a curved flange, all leaves together
 * @param rivets rivets to set
 * @param buttM butt welds, m
 * @param filletM fillet welds, m
 * @param stitchM stitch welds, m
 * @param spots spot welds
 * @param lockM grooved locks, m
 * @param sealM sealant to lay, m
 * @param barCuts bars to cut off
 */
public record Work(double cutM, int blanks, int bends, int rolls, double beadM, int crimpPasses, int rivets, double buttM,
                   double filletM, double stitchM, int spots, double lockM, double sealM, int barCuts) {
    /**
     * The work of a cap.
     *
     * @param cap the cap
     * @param blanks its blanks
     * @return what there is to do
     */
    public static Work of(Cap cap, List<Blank> blanks) {
        CutList list = CutList.of(cap, blanks);
        return new Work(blanks.stream().mapToDouble(blank -> blank.quantity() * cutMm(blank)).sum() / 1000,
                blanks.stream().mapToInt(Blank::quantity).sum(),
                blanks.stream().mapToInt(blank -> blank.quantity() * bends(blank)).sum(),
                cap.sleeve().flat().pieces() + cap.hood().flat().pieces(),
                (beadMm(cap.sleeve().flat()) + beadMm(cap.hood().flat())) / 1000,
                cap.leaves().stream().mapToInt(Work::passes).sum(),
                cap.standoff().count() * cap.standoff().rivets().each(),
                metres(list, join -> join.kind() == JoinKind.BUTT), metres(list, join -> join.kind() == JoinKind.FILLET),
                metres(list, join -> join.kind() == JoinKind.STITCH),
                list.joins().stream().mapToInt(join -> join.quantity() * join.spots()).sum(),
                metres(list, join -> join.kind() == JoinKind.LOCK), metres(list, JoinItem::sealed), 2 * cap.rods().size());
    }

    private static double cutMm(Blank blank) {
        return blank.drawing().paths(Layer.CUT).stream().mapToDouble(Path::length).sum();
    }

    /** Bend lines that are straight; the curved ones are shrunk. */
    private static int bends(Blank blank) {
        return (int) blank.drawing().paths(Layer.BEND).stream()
                .filter(path -> path.segments().stream().allMatch(Segment.Line.class::isInstance)).count();
    }

    private static double beadMm(CylinderFlat flat) {
        return flat.beads().size() * 2 * Math.PI * flat.neutralRadiusMm();
    }

    /** Both mirror images. */
    private static int passes(Leaf leaf) {
        return 2 * leaf.shrink().passes().size();
    }

    private static double metres(CutList list, Predicate<JoinItem> which) {
        return list.joins().stream().filter(which).mapToDouble(JoinItem::totalMm).sum() / 1000;
    }
}
