/**
 * Forms flat blanks back, slowly and plainly: bends become arcs of the neutral axis, cylinders are rolled to their mid-surface.
 * Reads only what is drawn; shares no formula with the program. Millimetres and radians.
 */
package org.capwright.refold;
