/**
 * The parts of a cap, one file a part, and {@link org.capwright.part.Cap}, which resolves what they share.
 *
 * <p>Frame: z up with z = 0 at the rim (the sleeve's top edge), y along the rods, x across them, origin on the stack's
 * axis. Azimuth counts from +x towards +y, seen from above. Leaves, rods, gutters and stop bars are described on the +x
 * side; those on the other side are mirror images and share a number, counted from the middle outwards.
 *
 * <p>Solved geometry is held as plain {@code double} with the unit in the name: millimetres, radians, kilograms. No part
 * asks another part for anything; {@link org.capwright.part.Cap#solve} hands each what it needs. Imports {@code units},
 * {@code geom}, {@code metal} and {@code job}.
 */
package org.capwright.part;
