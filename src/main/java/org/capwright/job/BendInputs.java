package org.capwright.job;

import java.util.List;
import org.capwright.units.Length;

/**
 * How a part's brake bends are allowed for.
 *
 * @param method by the neutral-axis factor, a handbook form, or a measured deduction
 * @param insideRadius inside radius of the bend; auto takes the thickness
 * @param k neutral-axis factor; auto takes the first guess
 * @param deduction measured deduction of a 90-degree bend, for the measured method
 */
public record BendInputs(Input<BendMethod> method, Input<Length> insideRadius, Input<Double> k,
                         Input<Length> deduction) implements InputSet {
    static BendInputs of(String path) {
        String at = path + ".bend.";
        return new BendInputs(
                Input.choice(at + "method", "bend allowance by", BendMethod.class).or(BendMethod.K.word())
                        .help("How the bend allowance is found: by k, by a handbook form for soft, half hard or hard metal, or from a deduction measured on a test piece."),
                Input.length(at + "insideRadius", "inside radius").between("0 in", "1/2 in").orAuto()
                        .help("Inside radius of the bend as your brake makes it. Auto takes the sheet's thickness."),
                Input.number(at + "k", "k").between("0.2", "0.5").orAuto()
                        .help("Where the neutral axis lies in the thickness, from the inside. Auto: 0.33 for radii under twice the thickness, else 0.5."),
                Input.length(at + "deduction", "measured deduction").between("-1/2 in", "1/2 in").orAuto()
                        .help("For the measured method: both outside flange lengths less the flat length of a 90-degree test piece."));
    }

    @Override
    public List<Input<?>> inputs() {
        return List.of(method, insideRadius, k, deduction);
    }
}
