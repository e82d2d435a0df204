package org.capwright.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.capwright.job.CapJob;
import org.capwright.job.HoodInputs;
import org.capwright.job.LeafInputs;
import org.capwright.metal.Metal;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** The ways that estimators usually compare. */
public final class Variants {
    private static final List<String> PARTS = List.of("sleeve", "hood", "leaves", "gutter", "stop", "standoffs");
    private static final List<Metal> METALS = List.of(Metal.GALVANIZED, Metal.STAINLESS_304, Metal.ALUMINIUM);
    private static final double ANNULUS_STEP_MM = Length.MM_PER_INCH / 2;

    private Variants() {
    }

    /**
     * The job itself, then one thing changed at a time: hood gauge, metal of all sheet parts, number of leaves, annulus.
     *
     * @param job the job
     * @return the ways; some may turn out impossible
     */
    public static List<Variant> of(CapJob job) {
        List<Variant> variants = new ArrayList<>(List.of(new Variant("as it is", Map.of())));
        job.find(HoodInputs.SHEET.gauge()).ifPresent(gauge -> Stream.of(gauge - 2, gauge + 2).filter(next -> next >= 16 && next <= 26)
                .map(next -> new Variant("hood " + next + " ga", Map.of(HoodInputs.SHEET.gauge().path(), Integer.toString(next)))).forEach(variants::add));
        METALS.stream().filter(metal -> metal != job.get(HoodInputs.SHEET.metal())).map(Variants::allOf).forEach(variants::add);
        Stream.of(2, 4, 6).filter(count -> !count.equals(job.get(LeafInputs.COUNT)))
                .map(count -> new Variant(count + " leaves", Map.of(LeafInputs.COUNT.path(), Integer.toString(count)))).forEach(variants::add);
        double annulus = job.get(HoodInputs.ANNULUS).mm();
        Stream.of(annulus - ANNULUS_STEP_MM, annulus + ANNULUS_STEP_MM).map(Variants::annulus).forEach(variants::add);
        return variants;
    }

    private static Variant allOf(Metal metal) {
        return new Variant("all " + metal.word(), PARTS.stream().collect(Collectors.toMap(part -> part + ".metal", part -> metal.word())));
    }

    private static Variant annulus(double mm) {
        String text = new ShopFormat(UnitSystem.INCH, 64).length(Length.ofMm(mm));
        return new Variant("annulus " + text, Map.of(HoodInputs.ANNULUS.path(), text));
    }
}
