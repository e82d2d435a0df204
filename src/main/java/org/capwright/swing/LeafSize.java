package org.capwright.swing;

import org.capwright.part.Leaf;

/**
 * The size that a leaf really has.
 *
 * @param number its number
 * @param side +1 or -1
 * @param slab where it lies closed, as of the +x side
 */
public record LeafSize(int number, int side, Leaf.Slab slab) {
}
