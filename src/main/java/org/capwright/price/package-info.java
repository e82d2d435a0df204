/**
 * What a cap costs: material and hardware from the stock plan, labour from a rate card and the work counted from the cap, then
 * overhead, margin and tax. Money is in the stock's currency, every line rounded to hundredths so that what is printed adds up.
 * A price that is not known is missing, never zero, and then so is every sum that it belongs to. Imports everything before it
 * in the list of rooms; no toolkit.
 *
 * <p>Compromises: a remnant is credited by its area, where the rate card credits remnants at all; minutes are the shop's own rates times counted quantities.
 */
package org.capwright.price;
