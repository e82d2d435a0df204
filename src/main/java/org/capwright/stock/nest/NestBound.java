package org.capwright.stock.nest;

/**
 * What no layout can do better than.
 *
 * @param sheets fewest sheets
 * @param cost least cost
 * @param reason why, such as {@code area with spacing} or {@code 3 pieces of which no two share a sheet, in quarter turns}
 */
public record NestBound(int sheets, double cost, String reason) {
}
