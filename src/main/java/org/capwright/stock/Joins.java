package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import org.capwright.metal.SpotWeld;
import org.capwright.part.Cap;
import org.capwright.part.CylinderFlat;
import org.capwright.part.Doubler;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.Sheet;
import org.capwright.part.StopBar;
import org.capwright.units.Length;

/** Lists what is welded or closed, with its length. */
final class Joins {
    private Joins() {
    }

    static List<JoinItem> of(Cap cap) {
        List<JoinItem> joins = new ArrayList<>();
        joins.add(seam("sleeve seam", cap.sleeve().flat(), cap.sleeve().sheet()));
        joins.add(seam("hood seam", cap.hood().flat(), cap.hood().sheet()));
        joins.add(new JoinItem("standoff to sleeve", 2 * cap.standoff().count(), cap.standoff().heightMm(), "weld both edges of the inner flange"));
        for (Leaf leaf : cap.leaves()) {
            joins.add(new JoinItem("pivot rod to leaf " + leaf.number(), 2, 2 * leaf.hingeCorner().yMm(), "stitch weld along both sides"));
            int corners = 2 * (leaf.freeCorner().isPresent() ? 4 : 2);
            joins.add(new JoinItem("flange corners of leaf " + leaf.number(), corners, leaf.hingeFlangeMm(), "weld"));
        }
        for (Gutter gutter : cap.gutters()) {
            joins.add(new JoinItem("gutter " + gutter.number() + " to sleeve", 2 * Cap.mirrored(gutter.number()),
                    gutter.outsideWidthMm() + 2 * gutter.outsideDepthMm(), "weld and seal round the notch"));
        }
        for (StopBar bar : cap.stops()) {
            joins.add(new JoinItem("stop bar " + bar.number() + " to hood", 2 * Cap.mirrored(bar.number()),
                    2 * bar.halfWidthMm() + 2 * bar.depthMm(), "weld"));
        }
        for (Doubler plate : cap.doublers()) {
            joins.add(new JoinItem("doubler " + plate.number() + " to hood", 2 * Cap.mirrored(plate.number()),
                    2 * (plate.widthMm() + plate.heightMm()), "weld; fill the gaps at its ends"));
        }
        return joins;
    }

    private static JoinItem seam(String name, CylinderFlat flat, Sheet sheet) {
        return new JoinItem(name, flat.pieces(), flat.heightMm(), switch (flat.seam().kind()) {
            case BUTT -> "butt weld";
            case LOCK -> "grooved lock";
            case LAP -> "lap: " + spots(flat, sheet);
        });
    }

    private static String spots(CylinderFlat flat, Sheet sheet) {
        return SpotWeld.forThickness(Length.ofMm(sheet.thicknessMm()))
                .map(row -> (int) Math.floor(flat.heightMm() / row.leastSpacing().mm()) + " spot welds at most"
                        + " (table of uncoated steel: prove with a test coupon)").orElse("rivet or weld");
    }
}
