/**
 * Fit-up in the window: where to measure, the readings, a verdict to be read from three steps away, what to do; and what
 * tolerances will do before anything is cut. Shows what {@code session.FitDesk} has; computes nothing.
 */
package org.capwright.desk.fit;
