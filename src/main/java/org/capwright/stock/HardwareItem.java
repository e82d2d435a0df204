package org.capwright.stock;

/**
 * A line of the hardware list.
 *
 * @param name what it is
 * @param quantity how many
 * @param size its size, in the shop's units
 * @param note what else the shop must know, may be empty
 */
public record HardwareItem(String name, int quantity, String size, String note) {
}
