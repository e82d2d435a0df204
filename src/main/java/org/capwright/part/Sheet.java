package org.capwright.part;

import java.util.OptionalInt;
import org.capwright.job.CapJob;
import org.capwright.job.SheetInputs;
import org.capwright.metal.GaugeTable;
import org.capwright.metal.Metal;
import org.capwright.units.Length;

/**
 * The sheet that a part is cut from.
 *
 * @param metal which metal
 * @param gauge the gauge number, where the thickness is its table's; empty where it was measured
 * @param thicknessMm thickness
 */
public record Sheet(Metal metal, OptionalInt gauge, double thicknessMm) {
    /** The sheet that a job gives a part; its gauge is known to be in the metal's table. */
    static Sheet of(CapJob job, SheetInputs inputs) {
        Metal metal = job.get(inputs.metal());
        return job.find(inputs.thickness())
                .map(measured -> new Sheet(metal, OptionalInt.empty(), measured.mm()))
                .orElseGet(() -> ofGauge(metal, job.get(inputs.gauge())));
    }

    private static Sheet ofGauge(Metal metal, int gauge) {
        Length thickness = GaugeTable.of(metal).flatMap(table -> table.thickness(gauge)).orElseThrow();
        return new Sheet(metal, OptionalInt.of(gauge), thickness.mm());
    }

    /**
     * Mass of a piece of this sheet: thickness times density (listed weights per area run up to 2.5 % over).
     *
     * @param areaMm2 area of its mid-surface, mm2
     * @return kg
     */
    public double massKg(double areaMm2) {
        return areaMm2 * thicknessMm * 1e-9 * metal.densityKgPerM3();
    }
}
