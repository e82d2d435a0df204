/**
 * The swing: where the leaves are at each opening, and how near they come to everything else. Frame as in {@code part}. A
 * point of a leaf is given from its rod axis: {@code u} outboard, {@code w} up, {@code y} along the rod, with the leaf
 * closed. Leaves of the -x side are mirror images and are not computed twice.
 *
 * <p>A leaf is taken at its mould lines (sharp corners outside its bends) and its lips as cut square across the sheet, with an outer
 * and an inner edge, so a clearance is never larger than the real one,
 * and smaller by less than a bend radius. Each leaf moves by itself: clearances between two leaves hold whatever the other
 * does. Imports {@code units}, {@code geom}, {@code metal}, {@code job} and {@code part}.
 */
package org.capwright.swing;
