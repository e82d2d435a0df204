package org.capwright.air;

import java.util.List;
import org.capwright.job.AirInputs;
import org.capwright.part.Cap;

/**
 * A cap in the air. All estimates: see the package.
 *
 * @param flow what comes up the sleeve
 * @param leaves each leaf of the +x half, from the middle outwards
 * @param blockage what the gutters take from the bore
 * @param rods bending of each leaf's rod
 * @param bushingMarginK how far the air is below the limit of oil-bronze bushings, kelvins; negative where it is too hot
 */
public record Air(StackFlow flow, List<LeafAir> leaves, Blockage blockage, List<RodBending> rods, double bushingMarginK) {
    /** Keeps its own copies. */
    public Air {
        leaves = List.copyOf(leaves);
        rods = List.copyOf(rods);
    }

    /**
     * The air side of a cap. Pure: the same cap gives the same figures.
     *
     * @param cap the cap
     * @return all figures
     * @throws org.capwright.job.RefusedJobException where the gutters leave no bore that could lift a leaf
     */
    public static Air of(Cap cap) {
        StackFlow flow = StackFlow.of(cap);
        return new Air(flow, cap.leaves().stream().map(leaf -> LeafAir.of(cap, leaf, flow)).toList(), Blockage.of(cap),
                cap.rods().stream().map(rod -> RodBending.of(cap, rod)).toList(),
                BushingHeat.marginK(cap.job().get(AirInputs.TEMPERATURE)));
    }

    /**
     * Density of the air in the stack, rho.
     *
     * @return kg/m3
     */
    public double densityKgPerM3() {
        return flow.densityKgPerM3();
    }

    /**
     * Stack velocity, V.
     *
     * @return m/s
     */
    public double velocityMPerS() {
        return flow.velocityMPerS();
    }

    /**
     * Velocity pressure in the sleeve, {@code rho V^2 / 2}.
     *
     * @return Pa
     */
    public double velocityPressurePa() {
        return flow.velocityPressurePa();
    }

    /**
     * Area of the sleeve's inside.
     *
     * @return mm2
     */
    public double boreAreaMm2() {
        return blockage.boreAreaMm2();
    }

    /**
     * Area that the gutters leave free.
     *
     * @return mm2
     */
    public double freeAreaMm2() {
        return blockage.freeAreaMm2();
    }

    /**
     * Pressure lost past the gutters at the design flow.
     *
     * @return Pa
     */
    public double blockageLossPa() {
        return blockage.lossPa(velocityPressurePa());
    }
}
