/**
 * The flat pattern of each part as a {@link org.capwright.drawing.Drawing} at true size, with what is written on it: which
 * face is up, the grain, bends, stations. Cylinders lie outside face up: x runs along the girth from the blank's left edge,
 * y up from its lower edge. Leaves lie top face up in the frame of the cap: x across the rods, y along them, origin on the
 * stack's axis. The other parts have their origin in their middle or lower left corner, as their class says. Lengths are
 * millimetres. Imports {@code units}, {@code geom}, {@code drawing}, {@code metal}, {@code job} and {@code part}.
 *
 * <p>Compromise: the outlines of bushing holes are not made of arcs and are drawn as short chords, to within {@link
 * org.capwright.blank.CurveTolerance#MM}; so is the end of an oblique channel across its bends.
 */
package org.capwright.blank;
