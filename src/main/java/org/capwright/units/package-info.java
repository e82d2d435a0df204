/**
 * Quantities and how people write them: lengths, angles, flows, pressures and temperatures as values that carry their
 * unit in the type, parsing of what is typed on a shop floor, and printing in a shop's units. Held in SI: millimetres,
 * radians, m3/s, Pa, K. Imports nothing of the program. Nothing here looks at the machine's locale.
 */
package org.capwright.units;
