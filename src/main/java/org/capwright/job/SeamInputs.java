package org.capwright.job;

import java.util.List;
import org.capwright.metal.SeamKind;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/**
 * How a cylinder is closed.
 *
 * @param kind butt, lap or grooved lock
 * @param width width of the lap, or of the lock's pocket
 * @param azimuth where the (first) seam is; auto keeps it as far from everything else as it can be
 */
public record SeamInputs(Input<SeamKind> kind, Input<Length> width, Input<Angle> azimuth) implements InputSet {
    static SeamInputs of(String path, SeamKind kind) {
        String at = path + ".seam.";
        return new SeamInputs(
                Input.bare(at + "kind", "seam", Kind.choice(List.of(SeamKind.values()), SeamKind::word)).or(kind.word())
                        .help(
                "How the cylinder is closed: butt (welded edge to edge), lap (spot-welded or riveted), or grooved "
                    + "lock. It decides what is added to the girth."),
                Input.length(at + "width", "seam width").between("1/8 in", "2 in").or("1/2 in")
                        .help("Width of the lap, or of one pocket of the lock; a lock takes three pockets. A butt seam has none."),
                Input.angle(at + "azimuth", "seam at").between("0 deg", "360 deg").orAuto()
                        .help("Azimuth of the seam, from the direction across the rods. Auto keeps it as far as possible from holes, notches and plates."));
    }

    @Override
    public List<Input<?>> inputs() {
        return List.of(kind, width, azimuth);
    }
}
