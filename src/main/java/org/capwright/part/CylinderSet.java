package org.capwright.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.capwright.job.CapJob;
import org.capwright.job.EdgeInputs;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.LeafInputs;
import org.capwright.job.LimitInputs;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.job.SeamInputs;
import org.capwright.job.SleeveInputs;
import org.capwright.job.StackInputs;
import org.capwright.job.StandoffInputs;
import org.capwright.job.StockInputs;
import org.capwright.metal.Bead;
import org.capwright.metal.BlindRivet;
import org.capwright.metal.Edge;
import org.capwright.metal.Seam;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/** Makes sleeve, hood and standoffs: what is placed round the two cylinders. */
final class CylinderSet {
    /**
     * Where a rule puts a hood's beads, if holes and plates leave it free: an inch in from each edge; common practice, no
     * source.
     */
    private static final double BEAD_FROM_EDGE_MM = Length.MM_PER_INCH;
    /** What a rule leaves between lip and standoff tops beyond the lip; common practice, no source. */
    private static final double BELOW_LIP_MM = Length.MM_PER_INCH * 3 / 8;

    private final CapJob job;
    private final double sleeveInsideMm;
    private final double hoodInsideMm;
    private final double hoodTopMm;
    private final double rodAxisZMm;
    private final List<Gutter> gutters;
    private final List<Doubler> doublers;
    private final Sheet sleeveSheet;
    private final Sheet hoodSheet;
    private final List<Spread.Feature> mouths;
    private final List<Spread.Feature> plates;
    private final Standoff standoff;

    CylinderSet(CapJob job, double sleeveInsideMm, double hoodInsideMm, double hoodTopMm, double rodAxisZMm, List<Gutter> gutters,
                List<Doubler> doublers) {
        this.job = job;
        this.sleeveInsideMm = sleeveInsideMm;
        this.hoodInsideMm = hoodInsideMm;
        this.hoodTopMm = hoodTopMm;
        this.rodAxisZMm = rodAxisZMm;
        this.gutters = gutters;
        this.doublers = doublers;
        this.sleeveSheet = Sheet.of(job, SleeveInputs.SHEET);
        this.hoodSheet = Sheet.of(job, HoodInputs.SHEET);
        this.mouths = mouths();
        this.plates = plates();
        this.standoff = makeStandoff();
    }

    Sleeve sleeve() {
        int count = job.get(SleeveInputs.HOLE_COUNT);
        Sleeve.FastenerHoles holes = new Sleeve.FastenerHoles(count, mm(SleeveInputs.HOLE_DIAMETER),
                mm(SleeveInputs.HOLE_FROM_FOOT), standoff.firstRad());
        List<Spread.Feature> features = new ArrayList<>(mouths);
        features.addAll(ring(standoff.count(), standoff.firstRad(), standoff.innerHalfRad()));
        features.addAll(ring(count, standoff.firstRad(), holes.diameterMm() / 2 / sleeveInsideMm));
        double height = mm(SleeveInputs.HEIGHT);
        CylinderFlat flat = flat(sleeveInsideMm + sleeveSheet.thicknessMm() / 2, height, SleeveInputs.SEAM,
                SleeveInputs.PIECES, features, edge(SleeveInputs.FOOT_EDGE), edge(null), sleeveBeads(height));
        return new Sleeve(sleeveSheet, sleeveInsideMm, height, flat, notches(), holes);
    }

    Hood hood() {
        double below = mm(HoodInputs.BELOW_RIM);
        double height = below + hoodTopMm;
        List<Spread.Feature> features = new ArrayList<>(plates);
        features.addAll(ring(standoff.count(), standoff.firstRad(), standoff.outerHalfRad()));
        CylinderFlat flat = flat(hoodInsideMm + hoodSheet.thicknessMm() / 2, height, HoodInputs.SEAM, HoodInputs.PIECES,
                features, edge(HoodInputs.FOOT_EDGE), edge(HoodInputs.TOP_EDGE), hoodBeads(height));
        return new Hood(hoodSheet, hoodInsideMm, below, hoodTopMm, flat);
    }

    Standoff standoff() {
        return standoff;
    }

    private Standoff makeStandoff() {
        int count = job.find(StandoffInputs.COUNT).orElseGet(this::standoffCount);
        List<Spread.Feature> features = new ArrayList<>(mouths);
        features.addAll(plates);
        double first = job.find(StandoffInputs.FIRST).map(Angle::rad).orElseGet(() -> Spread.farthest(count, features));
        double top = -job.find(StandoffInputs.BELOW_RIM).map(Length::mm)
                .orElse(mm(LeafInputs.DRIP_FLANGE) + BELOW_LIP_MM);
        Sheet sheet = Sheet.of(job, StandoffInputs.SHEET);
        Length rivet = job.get(StandoffInputs.RIVET);
        double hole = BlindRivet.holeFor(rivet).mm();
        return new Standoff(sheet, count, first, mm(StandoffInputs.HEIGHT), top,
                sleeveInsideMm + sleeveSheet.thicknessMm(), hoodInsideMm, mm(StandoffInputs.INNER_FLANGE),
                mm(StandoffInputs.OUTER_FLANGE), BendRule.of(job, StandoffInputs.BEND, sheet.thicknessMm()),
                new Standoff.Rivets(rivet.mm(), hole, job.get(StandoffInputs.RIVETS_EACH)));
    }

    private int standoffCount() {
        double diameter = job.get(StackInputs.OUTSIDE_DIAMETER).inches();
        return diameter <= 12 ? 4 : diameter <= 30 ? 6 : 8;
    }

    private CylinderFlat flat(double neutralMm, double heightMm, SeamInputs inputs, Input<Integer> pieceInput,
                              List<Spread.Feature> features, Edge foot, Edge top, List<PlacedBead> beads) {
        Seam seam = new Seam(job.get(inputs.kind()), job.get(inputs.width()).mm());
        int pieces = job.find(pieceInput)
                .orElseGet(() -> CylinderFlat.piecesFor(neutralMm, seam, mm(StockInputs.SHEET_LENGTH)));
        double azimuth = job.find(inputs.azimuth()).map(Angle::rad).orElseGet(() -> Spread.farthest(pieces, features));
        double clear = Spread.leastDistanceRad(pieces, azimuth, features) * neutralMm;
        return new CylinderFlat(neutralMm, heightMm, seam, pieces, azimuth, foot, top, beads, clear);
    }

    private Edge edge(EdgeInputs inputs) {
        return inputs == null ? Edge.PLAIN : new Edge(job.get(inputs.kind()), job.get(inputs.size()).mm());
    }

    private List<PlacedBead> sleeveBeads(double heightMm) {
        if (job.get(SleeveInputs.STOP_BEAD) == SleeveInputs.Presence.NONE) {
            return List.of();
        }
        Bead bead = new Bead(mm(SleeveInputs.STOP_BEAD_WIDTH), mm(SleeveInputs.STOP_BEAD_DEPTH));
        double foot = job.find(SleeveInputs.STOP_BEAD_FROM_FOOT).map(Length::mm).orElse(heightMm / 2);
        return List.of(new PlacedBead(bead, foot, true));
    }

    private List<PlacedBead> hoodBeads(double heightMm) {
        if (!job.listTyped(HoodInputs.BEADS)) {
            return autoBeads(heightMm);
        }
        List<PlacedBead> beads = new ArrayList<>();
        for (int i = 0; i < job.text().listSize(HoodInputs.BEADS); i++) {
            beads.add(typedBead(i, heightMm));
        }
        beads.sort(Comparator.comparingDouble(PlacedBead::aboveFootMm));
        return beads;
    }

    /** One near each edge, moved off the standoffs' rivet holes and the doublers by what the check of it asks. */
    private List<PlacedBead> autoBeads(double heightMm) {
        Bead bead = new Bead(Length.MM_PER_INCH / 2, Length.MM_PER_INCH / 8);
        double half = bead.widthMm() / 2;
        double apart = half + mm(LimitInputs.HOLE_BEAD);
        BeadPlace places = new BeadPlace(half, heightMm - half);
        double bracketFoot = mm(HoodInputs.BELOW_RIM) + standoff.topZMm() - standoff.heightMm();
        for (int i = 0; i < standoff.rivets().each(); i++) {
            places.keepOff(bracketFoot + standoff.rivetHeightMm(i), apart + standoff.rivets().holeMm() / 2);
        }
        for (Doubler plate : doublers) {
            places.keepOff(mm(HoodInputs.BELOW_RIM) + rodAxisZMm, apart + plate.heightMm() / 2);
        }
        double lower = places.nearest(BEAD_FROM_EDGE_MM);
        double upper = places.keepOff(lower, 2 * half).nearest(heightMm - BEAD_FROM_EDGE_MM);
        return List.of(new PlacedBead(bead, Math.min(lower, upper), false), new PlacedBead(bead, Math.max(lower, upper), false));
    }

    private PlacedBead typedBead(int index, double heightMm) {
        Input<Length> fromTop = HoodInputs.BEAD_FROM_TOP.at(index);
        double half = mm(HoodInputs.BEAD_WIDTH.at(index)) / 2;
        double foot = heightMm - mm(fromTop);
        if (foot < half || mm(fromTop) < half) {
            throw new RefusedJobException(List.of(new Problem(fromTop.path(), job.text().at(fromTop.path()).orElse(""),
                    "the bead must lie within the hood's height", "Move the bead or lengthen the hood")));
        }
        return new PlacedBead(new Bead(2 * half, mm(HoodInputs.BEAD_DEPTH.at(index))), foot,
                job.get(HoodInputs.BEAD_SIDE.at(index)) == HoodInputs.BeadSide.IN);
    }

    /** Notches for the gutter mouths, with the mirror images, in the order of azimuth from the y axis on each side. */
    private List<Sleeve.Notch> notches() {
        List<Sleeve.Notch> notches = new ArrayList<>();
        for (Gutter gutter : gutters) {
            WallPassage passage = mouth(gutter);
            for (double azimuth : azimuths(passage.middleRad(), gutter.number())) {
                notches.add(new Sleeve.Notch(gutter.number(), azimuth - passage.halfWidthRad(),
                        azimuth + passage.halfWidthRad(), gutter.outsideDepthMm()));
            }
        }
        return notches;
    }

    private List<Spread.Feature> mouths() {
        return gutters.stream().flatMap(gutter -> azimuths(mouth(gutter).middleRad(), gutter.number()).stream()
                .map(azimuth -> new Spread.Feature(azimuth, mouth(gutter).halfWidthRad()))).toList();
    }

    private WallPassage mouth(Gutter gutter) {
        double half = gutter.outsideWidthMm() / 2;
        return WallPassage.between(gutter.jointMm() - half, gutter.jointMm() + half, sleeveInsideMm,
                sleeveInsideMm + sleeveSheet.thicknessMm());
    }

    private List<Spread.Feature> plates() {
        double outside = hoodInsideMm + hoodSheet.thicknessMm();
        return doublers.stream().flatMap(plate -> azimuths(Math.asin(plate.middleMm() / outside), plate.number()).stream()
                .map(azimuth -> new Spread.Feature(azimuth, Math.asin(plate.widthMm() / 2 / outside)))).toList();
    }

    /** Azimuths of a thing at an angle from the y axis, at both ends, and of its mirror images. */
    private static List<Double> azimuths(double fromYRad, int number) {
        double quarter = Math.PI / 2;
        List<Double> pair = List.of(quarter - fromYRad, 3 * quarter + fromYRad);
        return number == 1 ? pair : List.of(pair.get(0), quarter + fromYRad, 3 * quarter - fromYRad, pair.get(1));
    }

    private static List<Spread.Feature> ring(int count, double firstRad, double halfWidthRad) {
        List<Spread.Feature> ring = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ring.add(new Spread.Feature(firstRad + 2 * Math.PI * i / count, halfWidthRad));
        }
        return ring;
    }

    private double mm(Input<Length> input) {
        return job.get(input).mm();
    }
}
