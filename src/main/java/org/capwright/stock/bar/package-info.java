/**
 * Cutting bars to length: which piece comes from which bar. Millimetres. Imports {@code units} and nothing else of the program.
 *
 * <p>Compromise: all cuts of a bar take the same kerf, and the last piece of a bar needs none if it ends where the bar ends.
 */
package org.capwright.stock.bar;
