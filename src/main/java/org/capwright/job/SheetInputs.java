package org.capwright.job;

import java.util.List;
import org.capwright.metal.Metal;
import org.capwright.units.Length;

/**
 * What a sheet part is made of.
 *
 * @param metal which metal
 * @param gauge gauge number in that metal's own table
 * @param thickness measured thickness; auto takes the table's
 */
public record SheetInputs(Input<Metal> metal, Input<Integer> gauge, Input<Length> thickness) implements InputSet {
    static SheetInputs of(String path, int gauge) {
        return new SheetInputs(
                metal(path).or(Metal.GALVANIZED.word()),
                Input.count(path + ".gauge", "gauge").between("10", "28").or(Integer.toString(gauge))
                        .help("Gauge number in this metal's own table. A gauge is not a thickness: each metal has its own."),
                Input.length(path + ".thickness", "measured thickness").between("0.01 in", "0.25 in").orAuto()
                        .help("Measured sheet thickness, coating included. Auto takes the nominal thickness of the gauge."));
    }

    /** The metal of a part, without a default. */
    static Input<Metal> metal(String path) {
        return Input.bare(path + ".metal", "metal", Kind.choice(List.of(Metal.values()), Metal::word))
                .help(
                "What the part is made of: it decides gauge table, weight and the cautions that are shown. Read the "
                    + "mark on the sheet; a magnet does not hold on 304, 316 or aluminium.");
    }

    @Override
    public List<Input<?>> inputs() {
        return List.of(metal, gauge, thickness);
    }
}
