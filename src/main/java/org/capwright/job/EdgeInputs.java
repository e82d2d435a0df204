package org.capwright.job;

import java.util.List;
import org.capwright.metal.EdgeKind;
import org.capwright.units.Length;

/**
 * How a cylinder's edge is finished.
 *
 * @param kind plain, hem, double hem or wired
 * @param size width of the hem, or diameter of the wire
 */
public record EdgeInputs(Input<EdgeKind> kind, Input<Length> size) implements InputSet {
    static EdgeInputs of(String path, String label) {
        return new EdgeInputs(
                Input.bare(path + ".kind", label, Kind.choice(List.of(EdgeKind.values()), EdgeKind::word))
                        .or(EdgeKind.PLAIN.word()).help(
                "How the edge is finished: plain, hem, double hem, or wired. A raw edge cuts hands; the others "
                    + "stiffen it and need more sheet."),
                Input.length(path + ".size", label + " size").between("1/16 in", "1 in").or("1/4 in")
                        .help(
                "Width of the hem, or diameter of the wire; it decides what the edge needs of the blank. A plain edge "
                    + "has none."));
    }

    @Override
    public List<Input<?>> inputs() {
        return List.of(kind, size);
    }
}
