package org.capwright.air;

import org.capwright.units.Temperature;

/** Whether the air is too hot for oil-bronze bushings. */
public final class BushingHeat {
    /**
     * About the most that oil-bronze takes, 75 C: a bearing handbook's figure, confirmed in one; the oil decides, so ask the
     * maker of the part in hand.
     */
    public static final Temperature LIMIT = Temperature.ofCelsius(75);

    private BushingHeat() {
    }

    /**
     * How far the air is below the limit. The bushings outside the hood run cooler than the air: on the safe side.
     *
     * @param air temperature of what comes up the stack
     * @return kelvins, negative where the air is too hot
     */
    public static double marginK(Temperature air) {
        return LIMIT.kelvin() - air.kelvin();
    }
}
