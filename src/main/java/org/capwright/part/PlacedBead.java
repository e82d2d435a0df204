package org.capwright.part;

import org.capwright.metal.Bead;

/**
 * A bead round a cylinder.
 *
 * @param bead its width, depth and take-up
 * @param aboveFootMm its middle above the cylinder's foot, formed
 * @param inward whether it stands in (and narrows the bore) or out
 */
public record PlacedBead(Bead bead, double aboveFootMm, boolean inward) {
}
