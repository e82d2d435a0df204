package org.capwright.part;

import org.capwright.metal.Bend;

/**
 * The flat blank of a channel: floor and two equal walls.
 *
 * @param floorMm outside width of the floor
 * @param wallMm outside depth of a wall
 * @param bend both bends
 */
public record ChannelFlat(double floorMm, double wallMm, Bend bend) {
    /**
     * Width across the bends: sum of outside lengths less the deductions.
     *
     * @return mm
     */
    public double widthMm() {
        return floorMm + 2 * wallMm - 2 * bend.deductionMm();
    }

    /**
     * Bend lines (the middles of the bends) from the middle of the floor.
     *
     * @return distance of both from the middle, mm
     */
    public double bendLineMm() {
        return floorMm / 2 - bend.outsideSetbackMm() + bend.allowanceMm() / 2;
    }
}
