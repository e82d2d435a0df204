package org.capwright.check;

import org.capwright.job.Input;

/**
 * What one shop's step of an input does to a figure.
 *
 * @param input the input
 * @param from what it is now
 * @param to what to type for one step
 * @param step how long the step is, in words
 * @param change change of the figure, in the core's unit
 */
public record Influence(Input<?> input, String from, String to, String step, double change) {
}
