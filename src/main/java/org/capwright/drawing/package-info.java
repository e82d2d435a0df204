/**
 * Drawings at true size, in millimetres, y up: paths on named layers, labels and dimensions as data. Arcs stay arcs. What
 * writes or shows a drawing only transforms it; how dimensions look is decided once, here. Imports {@code units} and
 * {@code geom}.
 */
package org.capwright.drawing;
