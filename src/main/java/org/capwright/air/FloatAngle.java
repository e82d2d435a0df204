package org.capwright.air;

/**
 * Where a leaf comes to rest in a steady flow that has risen from nothing. An estimate.
 *
 * @param openRad opening; 0 where it stays shut, the stop's where it gets there
 * @param rest how it rests
 */
public record FloatAngle(double openRad, Rest rest) {
    /** How a leaf rests in the flow. */
    public enum Rest {
        /** The flow's force does not lift it. */
        SHUT,
        /** It hangs in the flow, held by nothing. */
        FLOATING,
        /** The flow holds it against its stop. */
        AT_STOP
    }

    /**
     * Whether the flow opens it fully.
     *
     * @return true at the stop
     */
    public boolean reachesStop() {
        return rest == Rest.AT_STOP;
    }

    /**
     * Whether the flow does not lift it at all.
     *
     * @return true where it stays shut
     */
    public boolean staysShut() {
        return rest == Rest.SHUT;
    }
}
