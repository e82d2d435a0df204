package org.capwright.air;

import java.util.OptionalDouble;

/**
 * Where the design flow holds a leaf, as a band between the two forms of {@link AirForce}, and the flows that open it fully.
 * Estimates for a flow that rises from nothing; bushing friction left out. A leaf that has been carried open by a stronger
 * flow may hang at a balance that a rising flow does not reach. A leaf called shut is not lifted by the jet alone; a closed
 * leaf also feels the fan's pressure at no flow, for which see {@link LeafAir#liftPressurePa()}.
 *
 * @param drag by a plate's drag: the lower bound
 * @param jet by jet deflection: the upper bound
 * @param dragStopM3PerS least flow that reaches the stop, by drag; empty where no flow does: at the stop the leaf's shadow
 *                       falls on the gutter
 * @param jetStopM3PerS least flow that reaches the stop, by jet deflection; likewise
 */
public record FloatBand(FloatAngle drag, FloatAngle jet, OptionalDouble dragStopM3PerS, OptionalDouble jetStopM3PerS) {
    /** The band of a leaf in a flow. */
    static FloatBand of(ClosingMoment closing, LeafBore bore, double stopRad, StackFlow flow) {
        FloatSearch search = new FloatSearch(closing, bore, stopRad);
        double velocityPressurePa = flow.velocityPressurePa();
        return new FloatBand(search.at(AirForce.DRAG.pressurePa(velocityPressurePa)),
                search.at(AirForce.JET.pressurePa(velocityPressurePa)),
                stopFlow(search, AirForce.DRAG, flow), stopFlow(search, AirForce.JET, flow));
    }

    /** In closed form: the velocity pressure that goes with the pressure which the leaf needs at its stop. */
    private static OptionalDouble stopFlow(FloatSearch search, AirForce force, StackFlow flow) {
        OptionalDouble pressure = search.stopPressurePa();
        return pressure.isEmpty() ? pressure : OptionalDouble.of(
                flow.flowAtVelocityPressureM3PerS(force.velocityPressurePa(Math.max(0, pressure.getAsDouble()))));
    }
}
