/**
 * What a cap needs and what it is cut from: the list of blanks, hardware and joins, the work that they are, a shop's stock, and the plan
 * of sheets and bars for one or several jobs. Lengths are millimetres, masses kilograms, money in the stock's currency. Imports
 * {@code units}, {@code metal}, {@code job}, {@code part}, {@code blank}, {@code check}, and its own {@code nest} and {@code bar}.
 *
 * <p>Compromises: blanks of one thickness are cut from sheets of the nearest thickness within 6 %; a cap's weight leaves out rivets,
 * welds and sealant.
 */
package org.capwright.stock;
