/**
 * The air side: what comes up the stack, whether it opens the leaves, whether they fall shut again, what the gutters cost,
 * and how far the rods bend. {@link org.capwright.air.Air#of} answers all of it for a solved cap.
 *
 * <p>Every figure here is an estimate: steady, incompressible flow with one velocity over the whole bore, no wind, no
 * swirl, leaves that move slowly and one at a time. The two forms of {@link org.capwright.air.AirForce} bracket what a leaf
 * really feels; nothing here replaces a measurement on the running fan.
 *
 * <p>Frame as in {@code part}: z up, origin on the stack's axis at the rim, x across the rods, y along them; leaves of the
 * -x side are mirror images and are not computed twice. Openings are radians from closed. Areas and first moments of area
 * keep the millimetres of {@code part} (mm2, mm3); all else is SI (N, N m, Pa, m/s, m3/s, kg/m3). Imports {@code units},
 * {@code geom}, {@code metal}, {@code job} and {@code part}.
 *
 * <p>Compromises: the stop bead, rod ends and standing leaves are left out of the free area; bushing friction is left out
 * of the float angles (it is at most the closing moment over the closing ratio, either way); the rod bends as if the leaf
 * welded to it lent it no stiffness.
 */
package org.capwright.air;
