/**
 * Nesting: which blank lies where on which stock sheet. Millimetres; a sheet's origin is its lower left corner, x along its
 * length, which is also the direction of its grain, y up its width. Imports {@code units}, {@code geom}, {@code drawing},
 * {@code metal}, {@code part}, {@code blank}, {@code stock} and JTS.
 *
 * <p>How it works: a blank is covered by a polygon (arcs by their tangents, so never too small), grown by half the spacing and
 * cut into convex pieces. Where one blank may not lie beside another is then a union of convex no-fit polygons (Minkowski
 * sums), and the lowest leftmost free place is a corner of that union: it is computed, not sampled. Holes that have room for
 * another blank are free places like any other. Blanks go on one by one, to the left or down, and a seeded search tries other
 * orders, sheets and turns. Rectangles are also laid out in guillotine cuts.
 *
 * <p>Compromises: blanks turn by quarter turns only and are never turned over; corners are
 * grown square where a true offset is round, so corner to corner there may be up to 1.41 times the spacing.
 */
package org.capwright.stock.nest;
