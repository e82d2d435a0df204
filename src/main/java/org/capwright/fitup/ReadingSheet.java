package org.capwright.fitup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.capwright.job.CapJob;
import org.capwright.job.FitInputs;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobInputs;
import org.capwright.job.RodInputs;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.part.Gutter;
import org.capwright.part.Leaf;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.UnitSystem;

/**
 * The readings to take of a cap, in the order in which a lead hand walks round it, with what each would be if everything were as
 * drawn. Readings that are typed keep their places; what is missing is proposed: six diameters of the bore, a gap at every
 * standoff, both ends of every rod, three places of every leaf.
 */
public final class ReadingSheet {
    private static final int DIAMETERS = 6;

    private final Cap cap;
    private final CapJob job;
    private final List<SheetLine> lines = new ArrayList<>();
    /** Elements that the sheet has given out beyond those typed, by list. */
    private final Map<String, Integer> given = new LinkedHashMap<>();

    private ReadingSheet(Cap cap) {
        this.cap = cap;
        this.job = cap.job();
    }

    /**
     * The sheet of a cap.
     *
     * @param cap the cap as drawn, with the readings of its job so far
     * @return its lines
     */
    public static List<SheetLine> of(Cap cap) {
        ReadingSheet sheet = new ReadingSheet(cap);
        sheet.cylinders();
        sheet.gaps();
        for (Leaf leaf : cap.leaves()) {
            sheet.rods(leaf);
            sheet.leaves(leaf);
        }
        sheet.covers();
        sheet.gutters();
        sheet.add("rods", FitInputs.END_PLAY, "end play along the rod, both sides together, the least of all rods", Double.NaN,
                2 * cap.job().get(RodInputs.END_PLAY).mm(), Map.of());
        return List.copyOf(sheet.lines);
    }

    private void cylinders() {
        double stack = job.get(StackInputs.OUTSIDE_DIAMETER).mm();
        add("stack", FitInputs.STACK_GIRTH, "girth, tape round the outside", Double.NaN, Math.PI * stack, Map.of());
        round("stack", FitInputs.STACK, FitInputs.STACK_AZIMUTH, FitInputs.STACK_DIAMETER, "outside diameter", 2, stack);
        double sleeve = 2 * cap.sleeve().outsideRadiusMm();
        add("sleeve", FitInputs.SLEEVE_GIRTH, "girth, tape round the outside near the rim", Double.NaN, Math.PI * sleeve,
                Map.of());
        round("sleeve", FitInputs.SLEEVE, FitInputs.SLEEVE_AZIMUTH, FitInputs.SLEEVE_DIAMETER, "outside diameter", 2, sleeve);
        round("hood", FitInputs.HOOD_BORE, FitInputs.HOOD_AZIMUTH, FitInputs.HOOD_DIAMETER, "inside diameter", DIAMETERS,
                2 * cap.hood().insideRadiusMm());
    }

    private void round(String section, String list, Input<Angle> azimuth, Input<Length> value, String words, int proposed,
            double drawnMm) {
        for (int i = 0; i < count(list, proposed); i++) {
            boolean radius = section.equals("hood") && job.find(FitInputs.HOOD_RADIUS.at(i)).isPresent();
            double degrees = job.text().at(azimuth.at(i).path()).isPresent() ? job.get(azimuth.at(i)).degrees()
                    : 180.0 * i / proposed;
            Input<Length> input = radius ? FitInputs.HOOD_RADIUS : value;
            add(section, input.at(i), (radius ? "inside radius from the axis" : words) + " at " + degrees(degrees), degrees,
                    radius ? drawnMm / 2 : drawnMm, Map.of(azimuth.at(i).path(), degrees(degrees)));
        }
    }

    private void gaps() {
        int standoffs = cap.standoff().count();
        for (int i = 0; i < count(FitInputs.GAPS, standoffs); i++) {
            int index = i;
            double degrees = job.find(FitInputs.GAP_AZIMUTH.at(i)).map(Angle::degrees).orElseGet(() -> Math.toDegrees(cap.standoff().azimuthRad(index)));
            add("gaps", FitInputs.GAP.at(i), "gap from sleeve to hood at " + degrees(degrees), degrees,
                    cap.hood().insideRadiusMm() - cap.sleeve().outsideRadiusMm(), Map.of());
        }
    }

    /** Both ends of both rods of a number; after the readings that are there already. */
    private void rods(Leaf leaf) {
        for (String side : List.of("plus", "minus")) {
            for (String end : List.of("plus", "minus")) {
                int i = place(FitInputs.RODS, Map.of("number", String.valueOf(leaf.number()), "side", side, "end", end));
                Map<String, String> along = along(FitInputs.RODS, i, Map.of("number", String.valueOf(leaf.number()), "side", side,
                        "end", end));
                String where = "rod " + leaf.number() + ", " + sign(side) + "x side, " + sign(end) + "y end: ";
                add("rods", FitInputs.ROD_HEIGHT.at(i), where + "axis above the rim, leaf closed", Double.NaN, leaf.rodAxisZMm(),
                        along);
                add("rods", FitInputs.ROD_OFFSET.at(i), where + "axis from the hinge flange's outside", Double.NaN,
                        leaf.rodAxisMm() - leaf.slab().hingeEdgeMm(), along);
            }
        }
    }

    private void leaves(Leaf leaf) {
        boolean inch = job.get(JobInputs.UNITS) == UnitSystem.INCH;
        double unit = inch ? Length.MM_PER_INCH : 1;
        long half = (long) Math.floor(leaf.slab().radiusMm() / 2 / unit);
        for (String side : List.of("plus", "minus")) {
            for (long at : new long[] {-half, 0, half}) {
                String text = at == 0 ? FitInputs.LEAF_AT.fallback().orElseThrow() : at + (inch ? " in" : " mm");
                double y = at * unit;
                Map<String, String> key = Map.of("number", String.valueOf(leaf.number()), "side", side, "at", text);
                int i = place(FitInputs.LEAVES, key);
                double end = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm()
                        : Math.sqrt(leaf.slab().radiusMm() * leaf.slab().radiusMm() - y * y);
                add("leaves", FitInputs.LEAF_LENGTH.at(i), "leaf " + leaf.number() + ", " + sign(side)
                        + "x side: length square across, "
                        + (at == 0 ? "in the middle" : text + " from the middle"), Double.NaN, end - leaf.slab().hingeEdgeMm(),
                        along(FitInputs.LEAVES, i, key));
            }
        }
    }

    private void covers() {
        double drawn = cap.leaves().get(0).slab().radiusMm() - cap.leaves().get(0).sheet().thicknessMm() - cap.sleeve().outsideRadiusMm();
        double[] proposed = {0, 45, 180};
        for (int i = 0; i < count(FitInputs.COVERS, proposed.length); i++) {
            boolean placed = i >= proposed.length || job.text().at(FitInputs.COVER_AZIMUTH.at(i).path()).isPresent();
            double degrees = placed ? job.get(FitInputs.COVER_AZIMUTH.at(i)).degrees() : proposed[i];
            add("leaves", FitInputs.COVER.at(i), "cover at " + degrees(degrees) + ": flange inside beyond the sleeve", degrees,
                    drawn,
                    Map.of(FitInputs.COVER_AZIMUTH.at(i).path(), degrees(degrees)));
        }
    }

    private void gutters() {
        for (Gutter gutter : cap.gutters()) {
            Map<String, String> key = Map.of("number", String.valueOf(gutter.number()));
            int i = place(FitInputs.GUTTERS, key);
            Map<String, String> along = along(FitInputs.GUTTERS, i, key);
            add("gutter", FitInputs.GUTTER_WIDTH.at(i), "gutter " + gutter.number() + ": inside width at its narrowest",
                    Double.NaN, gutter.insideWidthMm(), along);
            add("gutter", FitInputs.GUTTER_DEPTH.at(i), "gutter " + gutter.number() + ": inside depth below the rim", Double.NaN,
                    gutter.depthMm(), along);
        }
    }

    private void add(String section, Input<Length> input, String words, double degrees, double drawnMm, Map<String,
            String> along) {
        String typed = job.text().at(input.path()).filter(text -> !text.equals(Input.AUTO)).orElse("");
        lines.add(new SheetLine(section, input.path(), words, degrees, drawnMm, typed, along));
    }

    /** The element of a list that has these words (typed, or by default), or the next one that is free. */
    private int place(String list, Map<String, String> key) {
        for (int i = 0; i < job.text().listSize(list); i++) {
            if (has(list, i, key)) {
                return i;
            }
        }
        return job.text().listSize(list) + given.merge(list, 1, Integer::sum) - 1;
    }

    private boolean has(String list, int i, Map<String, String> key) {
        return key.entrySet().stream().allMatch(one -> {
            String path = list + "[" + i + "]." + one.getKey();
            String text = job.text().at(path).orElseGet(() -> Inputs.at(path).flatMap(Input::fallback).orElse(""));
            return text.equals(one.getValue());
        });
    }

    private static Map<String, String> along(String list, int i, Map<String, String> key) {
        Map<String, String> along = new LinkedHashMap<>();
        key.forEach((name, text) -> along.put(list + "[" + i + "]." + name, text));
        return along;
    }

    private int count(String list, int proposed) {
        return Math.max(job.text().listSize(list), proposed);
    }

    private static String sign(String side) {
        return side.equals("plus") ? "+" : "-";
    }

    private static String degrees(double degrees) {
        return String.format(Locale.ROOT, "%.1f deg", degrees);
    }
}
