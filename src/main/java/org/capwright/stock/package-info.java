/**
 * What a cap needs: the list of blanks to cut, the hardware, the joins. Lengths are millimetres, masses kilograms. Imports
 * {@code units}, {@code metal}, {@code job}, {@code part} and {@code blank}.
 */
package org.capwright.stock;
