package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.capwright.blank.Writing;
import org.capwright.job.Input;
import org.capwright.job.LimitInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;
import org.capwright.part.PlacedBead;
import org.capwright.part.Standoff;
import org.capwright.swing.Pair;
import org.capwright.swing.Swing;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** The dimensions to verify on the finished cap. Lengths: ISO 2768-1 c; bores: EN 1506; clearances: the job's own limits. */
public final class SignOff {
    /** Turn of a bend; common practice, no source. */
    private static final double BEND_DEG = 1;

    private final Cap cap;
    private final ShopFormat format;
    private final List<Row> rows = new ArrayList<>();

    private SignOff(Cap cap) {
        this.cap = cap;
        this.format = Writing.of(cap).format();
    }

    /**
     * A dimension to verify.
     *
     * @param what what to measure
     * @param nominal what it should be
     * @param tolerance what it may be out by, or the limit it must keep
     */
    public record Row(String what, String nominal, String tolerance) {
    }

    /**
     * The dimensions of a cap.
     *
     * @param cap the cap
     * @return rows in the order of the work
     */
    public static List<Row> of(Cap cap) {
        SignOff sheet = new SignOff(cap);
        sheet.cylinders();
        sheet.standoffs();
        cap.leaves().forEach(sheet::leaf);
        cap.rods().forEach(sheet::rod);
        cap.gutters().forEach(sheet::gutter);
        sheet.swing(Swing.of(cap));
        return List.copyOf(sheet.rows);
    }

    private void cylinders() {
        bore("sleeve, inside diameter",
                2 * cap.sleeve().insideRadiusMm());
        plain("sleeve, height", cap.sleeve().heightMm());
        for (PlacedBead bead : cap.sleeve().flat().beads()) {
            plain("stop bead, middle above the foot", bead.aboveFootMm());
        }
        rows.add(new Row("slip of the sleeve, on the diameter", length(cap.job().get(StackInputs.SLIP).mm()),
                least(LimitInputs.SLIP)));
        bore("hood, inside diameter", 2 * cap.hood().insideRadiusMm());
        plain("hood, height", cap.hood().belowRimMm() + cap.hood().aboveRimMm());
        plain("hood, foot below the rim", cap.hood().belowRimMm());
    }

    private void standoffs() {
        Standoff standoff = cap.standoff();
        rows.add(new Row("standoff, inner bend, turn from flat", format.angle(Angle.ofRad(standoff.innerBend().turnRad())),
                bend()));
        rows.add(new Row("standoff, outer bend, turn from flat", format.angle(Angle.ofRad(standoff.outerBend().turnRad())),
                bend()));
        double gap = standoff.hoodInsideMm() - standoff.sleeveOutsideMm();
        for (int i = 0; i < standoff.count(); i++) {
            plain("gap sleeve to hood, standoff " + (i + 1) + " at " + format.angle(Angle.ofRad(standoff.azimuthRad(i))), gap);
        }
    }

    private static String bend() {
        return String.format(Locale.ROOT, "\u00b1 %.1f deg", BEND_DEG);
    }

    private void leaf(Leaf leaf) {
        String name = "leaf " + leaf.number() + ", ";
        plain(name + "hinge edge to free edge, outside", leaf.slab().freeEdgeMm() - leaf.slab().hingeEdgeMm());
        plain(name + "curved flange, outside depth", leaf.curveFlangeMm());
        plain(name + "hinge flange, outside depth", leaf.hingeFlangeMm());
        plain(name + "rod axis from the hinge edge's outside", leaf.rodAxisMm() - leaf.slab().hingeEdgeMm());
    }

    private void rod(PivotRod rod) {
        plain("pivot rod " + rod.number() + ", axis above the rim, both ends", rod.axisZMm());
        double play = cap.job().get(RodInputs.END_PLAY).mm();
        rows.add(new Row("pivot rod " + rod.number() + ", end play, each side", length(play), least(LimitInputs.END_PLAY)));
    }

    private void gutter(Gutter gutter) {
        plain("gutter " + gutter.number() + ", inside width", gutter.insideWidthMm());
        plain("gutter " + gutter.number() + ", depth inside, rim to floor", gutter.depthMm());
    }

    private void swing(Swing swing) {
        for (Leaf leaf : cap.leaves()) {
            String name = "leaf " + leaf.number();
            rows.add(new Row(name + ", opening at the stop, both leaves", format.angle(Angle.ofRad(cap.stopRad())),
                    format.angle(cap.job().get(LimitInputs.STOP_LEAST)) + " to "
                            + format.angle(cap.job().get(LimitInputs.STOP_MOST))));
            clearance(name + " to hood, least over the swing", swing.least(Pair.LEAF_HOOD, leaf.number()).leastMm(),
                    LimitInputs.LEAF_HOOD);
            clearance(name + ", heel to gutter wall, least", swing.least(Pair.HEEL_WALL, leaf.number()).leastMm(),
                    LimitInputs.HEEL);
        }
        clearance("hood's top over the open leaves' tips", cap.hood().aboveRimMm() - swing.tipHeightMm(), LimitInputs.TIP_COVER);
        rows.add(new Row("every leaf falls shut from the stop, five times", "", "yes or no"));
        rows.add(new Row("water leaves by the spouts only", "", "yes or no"));
    }

    private void clearance(String what, double nominalMm, Input<Length> limit) {
        rows.add(new Row(what, length(nominalMm), least(limit)));
    }

    private String least(Input<Length> limit) {
        return "at least " + length(cap.job().get(limit).mm());
    }

    private void plain(String what, double nominalMm) {
        rows.add(new Row(what, length(nominalMm), words("\u00b1 ", Tolerances.linearMm(nominalMm), "")));
    }

    private void bore(String what, double nominalMm) {
        rows.add(new Row(what, length(nominalMm), words("+ ", Tolerances.boreMm(nominalMm), ", - 0")));
    }

    /**
     * Inches rounded down to thousandths, so that nothing passes that the table would not let pass; its millimetres are
     * tenths.
     */
    private String words(String sign, OptionalDouble tolerance, String end) {
        if (tolerance.isEmpty()) {
            return "as agreed";
        }
        boolean inch = format.system() == UnitSystem.INCH;
        double value = inch ? Length.ofMm(tolerance.getAsDouble()).inches() : tolerance.getAsDouble();
        return inch ? String.format(Locale.ROOT, "%s%.3f in%s", sign, Math.floor(value * 1000) / 1000, end)
                : String.format(Locale.ROOT, "%s%.1f mm%s", sign, value, end);
    }

    private String length(double mm) {
        return format.length(Length.ofMm(mm));
    }
}
