package org.capwright.stock;

/**
 * A line of the hardware list.
 *
 * @param name what it is
 * @param quantity how many
 * @param size its size, in the shop's units
 * @param note what else the shop must know, may be empty
 * @param kind what it is, for its price
 * @param sizeMm the size that decides its price
 * @param lengthMm length of one, where it is cut to length; else 0
 */
public record HardwareItem(String name, int quantity, String size, String note, HardwareKind kind, double sizeMm,
        double lengthMm) {
}
