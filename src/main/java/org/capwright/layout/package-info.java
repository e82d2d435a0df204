/**
 * What the shop builds from: views of the whole cap with dimensions and part references, the order of work with the job's
 * numbers, and the dimensions to sign off. Views are plane, at true size in millimetres: the section and the elevation show x
 * (across the rods) to the right and z up, seen along +y; the plan shows x to the right and y up, seen from above; details
 * say their own. Imports everything before it but {@code air}.
 *
 * <p>Compromises: bends are drawn sharp; standoffs are turned into the plane of the section; welds are not drawn, rivet
 * heads are plain rounds.
 */
package org.capwright.layout;
