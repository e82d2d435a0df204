package org.capwright.price;

import java.util.List;
import org.capwright.check.Checks;
import org.capwright.check.Measure;
import org.capwright.check.Verdict;
import org.capwright.job.JobText;
import org.capwright.part.Cap;
import org.capwright.stock.KeptNests;
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
     * Several ways side by side; {@link Compared#of} also tells why a way can't be gone.
     *
     * @param job the job as it is
     * @param variants the ways; one that changes nothing is the job itself
     * @param shop the stock
     * @param card the rates
     * @param options how long to nest each
     * @return one for each variant that can be made at all, in their order
     */
    public static List<Alternative> of(JobText job, List<Variant> variants, ShopStock shop, RateCard card,
            StockPlan.Options options) {
        StockPlan.Options all = new StockPlan.Options(options.workSeconds() * variants.size(),
                options.seconds() * variants.size(), options.seed(),
                options.better(), options.cancelled());
        return Compared.of(job, variants, shop, card, all, new KeptNests()).stream().flatMap(one -> one.alternative().stream())
                .toList();
    }

    /** The alternative that a cap is. */
    static Alternative of(Variant variant, Cap cap, Price price) {
        int fouls = (int) Checks.of(cap).stream().filter(check -> check.verdict() == Verdict.FOUL).count()
                + StockFit.checks(price.plan().jobs().get(0).blanks(), price.plan().shop()).size();
        return new Alternative(variant, price, cap.massKg(), Measure.LIFT_PRESSURE.of(cap), cap.heightMm(), fouls);
    }
}
