/**
 * The parts of the window. Each makes its parts, lays them out and binds them to the session. Colours are roles from {@link
 * org.capwright.desk.sketch.Palette}.
 */
package org.capwright.desk.view;
