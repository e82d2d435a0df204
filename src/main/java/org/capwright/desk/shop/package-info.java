/**
 * Stock and price in the window: sheets and bars as they will be cut, the shop's stock and rates to be edited, prices and other
 * ways to make the job. Shows what {@code session.StockDesk}, {@code session.PriceDesk} and {@code session.Shop} have; computes
 * nothing.
 */
package org.capwright.desk.shop;
