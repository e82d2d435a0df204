package org.capwright.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.capwright.check.Checks;
import org.capwright.check.Measure;
import org.capwright.check.Verdict;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.stock.StockPlan;

/**
 * What another way to make a job comes to.
 *
 * @param variant which way
 * @param price price of one cap
 * @param massKg mass of the cap
 * @param liftPressurePa lift pressure of the leaf that opens last, an estimate
 * @param heightMm height over all
 * @param fouls how many checks are foul
 */
public record Alternative(Variant variant, Price price, double massKg, double liftPressurePa, double heightMm, int fouls) {
    /**
     * Several ways side by side.
     *
     * @param job the job as it is
     * @param variants the ways; one that changes nothing is the job itself
     * @param shop the stock
     * @param card the rates
     * @param options how long to nest each
     * @return one for each variant that can be made at all, in their order
     */
    public static List<Alternative> of(JobText job, List<Variant> variants, ShopStock shop, RateCard card, StockPlan.Options options) {
        List<Alternative> all = new ArrayList<>();
        for (Variant variant : variants) {
            of(job, variant, shop, card, options).ifPresent(all::add);
        }
        return all;
    }

    private static Optional<Alternative> of(JobText job, Variant variant, ShopStock shop, RateCard card, StockPlan.Options options) {
        JobText text = job;
        for (Map.Entry<String, String> one : variant.typed().entrySet()) {
            text = text.with(one.getKey(), one.getValue());
        }
        try {
            Cap cap = StockFit.split(JobReader.read(text).orThrow(), shop);
            int fouls = (int) Checks.of(cap).stream().filter(check -> check.verdict() == Verdict.FOUL).count();
            return Optional.of(new Alternative(variant, Pricing.of(cap, 1, shop, card, options), cap.massKg(), Measure.LIFT_PRESSURE.of(cap),
                    cap.heightMm(), fouls));
        } catch (RefusedJobException refused) {
            // such a cap can't exist: nothing to compare
            return Optional.empty();
        }
    }
}
