package org.capwright.stock;

import org.capwright.blank.Blank;

/**
 * A blank that no sheet of the stock is large enough for.
 *
 * @param blank the blank
 * @param needLengthMm length of a sheet, along the grain, that it would fit on
 * @param needWidthMm width of that sheet
 * @param anyStock whether there is any sheet of its metal and thickness
 */
public record Misfit(Blank blank, double needLengthMm, double needWidthMm, boolean anyStock) {
}
