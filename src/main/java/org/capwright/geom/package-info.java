/**
 * Plane and space geometry: points, paths of straight lines and circular arcs, their bounds, lengths, areas and
 * centroids. Axes are right-handed, y up in the plane, angles count from +x towards +y, lengths are millimetres. Arcs
 * stay arcs: nothing is turned into chords until a writer asks for it. Imports {@code units} only.
 */
package org.capwright.geom;
