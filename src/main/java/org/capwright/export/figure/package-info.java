/**
 * A cap's figures as a list of named numbers, unrounded: lengths in mm, angles in degrees, masses in kg. The list of ids is
 * in {@code docs/figures.md}.
 */
package org.capwright.export.figure;
