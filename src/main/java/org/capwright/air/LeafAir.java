package org.capwright.air;

import java.util.List;
import org.capwright.job.AirInputs;
import org.capwright.job.GutterInputs;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.capwright.part.Leaf;
import org.capwright.part.PivotRod;

/**
 * One leaf in the air. Estimates.
 *
 * @param number number of the leaf
 * @param bore part of the bore that blows on it
 * @param closingMoment moment of its weight
 * @param liftPressurePa pressure under the closed leaf that lifts it, at no flow
 * @param closing whether it falls shut
 * @param band where the design flow holds it
 */
public record LeafAir(int number, LeafBore bore, ClosingMoment closingMoment, double liftPressurePa, Closing closing,
                      FloatBand band) {
    /** A leaf of a cap in a flow. */
    static LeafAir of(Cap cap, Leaf leaf, StackFlow flow) {
        LeafBore bore = LeafBore.of(cap, leaf);
        refuseWithoutBore(cap, leaf, bore);
        ClosingMoment moment = ClosingMoment.of(leaf);
        PivotRod rod = cap.rods().get(leaf.number() - 1);
        double carriedN = moment.weightN() + Weight.newtons(rod.massKg());
        Closing closing = new Closing(moment.leastNm(cap.stopRad()),
                Closing.frictionNm(cap.job().get(AirInputs.FRICTION), carriedN, leaf.rodRadiusMm()));
        return new LeafAir(leaf.number(), bore, moment, liftPressurePa(moment, bore), closing,
                FloatBand.of(moment, bore, cap.stopRad(), flow));
    }

    /**
     * Lift pressure {@code W u_c / S}: the even pressure over the leaf's part of the bore whose moment about the rod equals that
     * of the closed leaf's weight. To be compared with the fan's pressure at no flow.
     *
     * @param moment closing moment of the leaf
     * @param bore its part of the bore, S greater than 0
     * @return Pa
     */
    public static double liftPressurePa(ClosingMoment moment, LeafBore bore) {
        return moment.atNm(0) / (bore.wholeMm3() * 1e-9);
    }

    private static void refuseWithoutBore(Cap cap, Leaf leaf, LeafBore bore) {
        if (bore.fromMm() < bore.toMm() && bore.wholeMm3() > 0) {
            return;
        }
        String path = GutterInputs.INSIDE_WIDTH.path();
        throw new RefusedJobException(List.of(new Problem(path, cap.job().text().at(path).orElse("auto"),
                "the gutters leave no bore that could lift leaf " + leaf.number(),
                "Take a narrower gutter, a smaller rod offset or fewer leaves")));
    }
}
