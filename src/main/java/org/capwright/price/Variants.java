package org.capwright.price;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.capwright.job.CapJob;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.JobInputs;
import org.capwright.job.LeafInputs;
import org.capwright.metal.Metal;
import org.capwright.stock.ShopStock;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/** The ways that estimators usually compare. */
public final class Variants {
    private static final List<String> PARTS = List.of("sleeve", "hood", "leaves", "gutter", "stop", "standoffs");
    private static final List<Metal> METALS = List.of(Metal.GALVANIZED, Metal.STAINLESS_304, Metal.ALUMINIUM);
    private static final double METRIC_STEP_MM = 10;
    /** Sheets nearer than this share are the same. */
    private static final double APART = 0.06;

    private Variants() {
    }

    /**
     * The job itself, then one thing changed at a time: hood gauge, metal of all sheet parts, number of leaves, annulus.
     *
     * @param job the job
     * @return the ways; some may turn out impossible
     */
    public static List<Variant> of(CapJob job) {
        return of(job, gauges(job));
    }

    /**
     * The same with thicknesses of the stock in place of gauges where the hood's sheet is given by its thickness.
     *
     * @param job the job
     * @param shop the stock
     * @return the ways; some may turn out impossible
     */
    public static List<Variant> of(CapJob job, ShopStock shop) {
        return of(job, job.find(HoodInputs.SHEET.thickness()).map(now -> thicknesses(job, now.mm(), shop))
                .orElseGet(() -> gauges(job)));
    }

    private static List<Variant> of(CapJob job, List<Variant> hoods) {
        List<Variant> variants = new ArrayList<>(List.of(new Variant("as it is", Map.of())));
        variants.addAll(hoods);
        METALS.stream().filter(metal -> metal != job.get(HoodInputs.SHEET.metal())).map(Variants::allOf).forEach(variants::add);
        Stream.of(2, 4, 6).filter(count -> !count.equals(job.get(LeafInputs.COUNT)))
                .map(count -> new Variant(count + " leaves", Map.of(LeafInputs.COUNT.path(), Integer.toString(count))))
                        .forEach(variants::add);
        boolean inch = job.get(JobInputs.UNITS) == UnitSystem.INCH;
        double step = inch ? Length.MM_PER_INCH / 2 : METRIC_STEP_MM;
        ShopFormat format = new ShopFormat(job.get(JobInputs.UNITS), 64);
        Stream.of(-step, step).map(by -> annulus(format.length(Length.ofMm(job.get(HoodInputs.ANNULUS).mm() + by))))
                .forEach(variants::add);
        return variants;
    }

    /** Two gauges down and up; a gauge that is not made is refused with its reason. */
    private static List<Variant> gauges(CapJob job) {
        int now = job.get(HoodInputs.SHEET.gauge());
        return Stream.of(now - 2, now + 2).map(gauge -> new Variant("hood " + gauge + " ga", Map.of(
                HoodInputs.SHEET.gauge().path(), Integer.toString(gauge), HoodInputs.SHEET.thickness().path(), Input.AUTO)))
                        .toList();
    }

    /** The next thinner and thicker sheet of the hood's metal. */
    private static List<Variant> thicknesses(CapJob job, double nowMm, ShopStock shop) {
        List<Double> all = shop.sheets().stream().filter(sheet -> sheet.sheet().metal() == job.get(HoodInputs.SHEET.metal())
                && !sheet.remnant())
                .map(sheet -> sheet.sheet().thicknessMm()).distinct().sorted().toList();
        return Stream.concat(all.stream().filter(mm -> mm < nowMm * (1 - APART)).max(Comparator.naturalOrder()).stream(),
                all.stream().filter(mm -> mm > nowMm * (1 + APART)).findFirst().stream())
                .map(mm -> new ShopFormat(job.get(JobInputs.UNITS), 64).thickness(Length.ofMm(mm)))
                .map(text -> new Variant("hood " + text, Map.of(HoodInputs.SHEET.thickness().path(), text))).toList();
    }

    private static Variant allOf(Metal metal) {
        return new Variant("all " + metal.word(), PARTS.stream().collect(Collectors.toMap(part -> part + ".metal",
                part -> metal.word())));
    }

    private static Variant annulus(String text) {
        return new Variant("annulus " + text, Map.of(HoodInputs.ANNULUS.path(), text));
    }
}
