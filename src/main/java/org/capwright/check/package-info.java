/**
 * The checks: every one with its value, its limit and where the limit comes from, a verdict, the place and opening it is
 * about, and a remedy that has been tried. And what buys what: which inputs move a figure, and by how much. Values are in the
 * core's units (mm, rad, Pa, K, MPa, plain ratios). Imports everything above it.
 */
package org.capwright.check;
