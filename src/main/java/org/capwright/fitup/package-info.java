/**
 * Fit-up: the cap that was really made against the one that was drawn. Readings, the outlines fitted to them by least squares,
 * the swing of what was made, advice, parts that are held at their cut sizes, and the tolerance run before anything is cut.
 *
 * <p>Frame as in {@code part}: z up from the rim, y along the rods, origin on the stack's axis, which is the sleeve's centre.
 * The leaves lie on the sleeve and are placed by it; the hood is moved round them and its doublers are tacked where the rods
 * come through, so a shift of the hood moves no leaf. An accuracy of a reading is two standard deviations.
 *
 * <p>Imports everything above it, and EJML for least squares; no toolkit. Compromises: sleeve and hood are described by one
 * ovality each (lobes of higher order stay in the residuals).
 */
package org.capwright.fitup;
