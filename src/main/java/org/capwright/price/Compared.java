package org.capwright.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.capwright.job.JobReader;
import org.capwright.job.JobText;
import org.capwright.job.Problem;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;
import org.capwright.stock.KeptNests;
import org.capwright.stock.Shares;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.stock.StockPlan;

/**
 * What became of a way to make a job when it was compared with others.
 *
 * @param variant which way
 * @param alternative what it comes to; empty where such a cap can't exist
 * @param reason why it can't exist or has no price; empty where it has one
 */
public record Compared(Variant variant, Optional<Alternative> alternative, String reason) {
    /**
     * Several ways side by side; the time is shared out among them, and groups of blanks that a way leaves as they are are
     * nested once.
     *
     * @param job the job as it is
     * @param variants the ways; one that changes nothing is the job itself
     * @param shop the stock
     * @param card the rates
     * @param options how long to nest, for all of them together
     * @param kept nests made before, and those made now
     * @return one for each variant, in their order
     */
    public static List<Compared> of(JobText job, List<Variant> variants, ShopStock shop, RateCard card,
            StockPlan.Options options, KeptNests kept) {
        Shares shares = new Shares(options, variants.stream().map(variant -> 1.0).toList());
        List<Compared> all = new ArrayList<>();
        for (int i = 0; i < variants.size(); i++) {
            Variant variant = variants.get(i);
            try {
                Cap cap = StockFit.split(JobReader.read(typed(job, variant)).orThrow(), shop);
                all.add(of(variant, cap, Pricing.of(cap, List.of(1), shop, card, shares.of(i), kept).get(0)));
            } catch (RefusedJobException refused) {
                all.add(new Compared(variant, Optional.empty(), refused.problems().stream().map(Problem::message)
                        .collect(Collectors.joining(" "))));
            }
        }
        return all;
    }

    private static Compared of(Variant variant, Cap cap, Price price) {
        String reason = price.missing().isEmpty() ? "" : "no price: missing " + String.join("; ", price.missing());
        return new Compared(variant, Optional.of(Alternative.of(variant, cap, price)), reason);
    }

    private static JobText typed(JobText job, Variant variant) {
        JobText text = job;
        for (Map.Entry<String, String> one : variant.typed().entrySet()) {
            text = text.with(one.getKey(), one.getValue());
        }
        return text;
    }
}
