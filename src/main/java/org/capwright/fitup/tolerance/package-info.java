/**
 * The tolerance run: many builds drawn before anything is cut. Each build has a seed of its own, made from the run's seed and the
 * build's number, so the same seed gives the same answer on any number of cores.
 *
 * <p>What a build draws: the hood's diameter, ovality (in a random direction) and shift, and for every leaf of both sides its rod's
 * offset and height, its radius and its flange depth. Leaves lie on the sleeve as in {@code fitup}. Margins are clearances less
 * their limits. Imports what {@code fitup} may.
 *
 * <p>Compromises: rods are drawn straight; the clearances of curved flange to spout and of lip to standoff are moved one to one by
 * leaf radius, and by rod height and flange depth, from what the swing of the drawn cap finds.
 */
package org.capwright.fitup.tolerance;
