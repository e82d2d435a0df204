package org.capwright.part;

import java.util.List;
import org.capwright.job.CapJob;

/**
 * A cap, every part solved. Parts on the +x side only; those off the middle have a mirror image on the other side.
 *
 * @param job what it was solved from
 * @param stopRad opening at which the leaves stop
 * @param joints middles of the gaps between hinge edges, x, from the middle (0) outwards
 * @param sleeve the sleeve
 * @param hood the hood
 * @param leaves leaves of the +x half, from the middle outwards; each has a mirror image
 * @param rods their rods, likewise
 * @param bushings bushings by joint; two to a rod
 * @param washer each washer; two to a rod
 * @param doublers doubler plates by joint; two to a joint in the middle, four (with the mirror images) elsewhere
 * @param gutters gutters by joint; one in the middle, two (with the mirror image) elsewhere
 * @param stops stop bars by joint, likewise
 * @param standoff each standoff
 */
public record Cap(CapJob job, double stopRad, List<Double> joints, Sleeve sleeve, Hood hood, List<Leaf> leaves,
                  List<PivotRod> rods, List<Bushing> bushings, Washer washer, List<Doubler> doublers, List<Gutter> gutters,
                  List<StopBar> stops, Standoff standoff) {
    /** Keeps its own copies. */
    public Cap {
        joints = List.copyOf(joints);
        leaves = List.copyOf(leaves);
        rods = List.copyOf(rods);
        bushings = List.copyOf(bushings);
        doublers = List.copyOf(doublers);
        gutters = List.copyOf(gutters);
        stops = List.copyOf(stops);
    }

    /**
     * Solves a cap: every part, every input left to auto decided by its rule. Pure: the same job gives the same cap.
     *
     * @param job inputs that have been found good
     * @return the cap
     * @throws org.capwright.job.RefusedJobException where no such cap can exist, with the field to change
     */
    public static Cap solve(CapJob job) {
        return new CapSolver(job).solve();
    }

    /**
     * The bushing of the middle joint; those of other joints have the same bore, outside and flange, and may differ in length.
     *
     * @return the first of {@link #bushings}
     */
    public Bushing bushing() {
        return bushings.get(0);
    }

    /**
     * Which rods the bushings of a joint are of, where not all are alike.
     *
     * @param number number of the joint
     * @return nothing where one length serves all, else such as {@code " of rod 2"} or {@code " of rods 2 and 3"}
     */
    public String bushingsOf(int number) {
        Bushing wanted = bushings.get(number - 1);
        List<String> alike = rods.stream().map(PivotRod::number).filter(one -> bushings.get(one - 1).equals(wanted))
                .map(String::valueOf).toList();
        return alike.size() == rods.size() ? "" : (alike.size() == 1 ? " of rod " : " of rods ") + String.join(" and ", alike);
    }

    /**
     * How many of a thing there are that stands once in the middle and twice elsewhere.
     *
     * @param number its number, 1 in the middle
     * @return 1 or 2
     */
    public static int mirrored(int number) {
        return number == 1 ? 1 : 2;
    }

    /**
     * Height over all, from the sleeve's foot to the hood's top.
     *
     * @return mm
     */
    public double heightMm() {
        return Math.max(sleeve.heightMm(), hood.belowRimMm()) + hood.aboveRimMm();
    }

    /**
     * Largest width in plan: the hood with its outward beads, or the longest rod.
     *
     * @return mm
     */
    public double widthMm() {
        double rod = rods.stream().mapToDouble(PivotRod::lengthMm).max().orElse(0);
        return Math.max(2 * hood.largestRadiusMm(), rod);
    }

    /**
     * Mass of everything but rivets, welds and sealant.
     *
     * @return kg
     */
    public double massKg() {
        double mass = sleeve.massKg() + hood.massKg() + standoff.count() * standoff.massKg();
        mass += 2 * leaves.stream().mapToDouble(leaf -> leaf.balance().massKg()).sum();
        mass += 2 * rods.stream().mapToDouble(PivotRod::massKg).sum();
        mass += 4 * bushings.stream().mapToDouble(bushing -> bushing.massKg() + washer.massKg()).sum();
        mass += doublers.stream().mapToDouble(plate -> 2 * mirrored(plate.number()) * plate.massKg()).sum();
        mass += gutters.stream().mapToDouble(gutter -> mirrored(gutter.number()) * gutter.massKg()).sum();
        return mass + stops.stream().mapToDouble(bar -> mirrored(bar.number()) * bar.massKg()).sum();
    }
}
