package org.capwright.stock;

/**
 * Something to weld or seal.
 *
 * @param name what is joined
 * @param quantity how many times
 * @param lengthMm length of one
 * @param note how
 */
public record JoinItem(String name, int quantity, double lengthMm, String note) {
}
