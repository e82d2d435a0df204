package org.capwright.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.capwright.part.Sheet;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestBound;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Nester;

/**
 * What some jobs are cut from: sheets by metal and thickness, and bars.
 *
 * @param shop the stock
 * @param jobs the jobs
 * @param sheets sheets, nested
 * @param bars bars, planned
 * @param seed seed of the search
 */
public record StockPlan(ShopStock shop, List<StockJob> jobs, List<SheetGroup> sheets, List<BarGroup> bars, long seed) {
    private static final int EVERY_GROUP = 6;

    /** Keeps its own copies. */
    public StockPlan {
        jobs = List.copyOf(jobs);
        sheets = List.copyOf(sheets);
        bars = List.copyOf(bars);
    }

    /**
     * How long to search.
     *
     * @param workSeconds how much to search in all: what a usual desktop does in so many seconds
     * @param seconds at most by the clock, for all groups together; what one group leaves over the next ones may use
     * @param seed seed of the search
     * @param better told of every better group, on the calling thread
     * @param cancelled asked now and then; true keeps the best so far
     */
    public record Options(double workSeconds, double seconds, long seed, Consumer<SheetGroup> better, BooleanSupplier cancelled) {
        /** How long a user is made to wait if he says nothing. */
        public static final double USUAL_SECONDS = 2;

        /**
         * Without a listener.
         *
         * @param seconds at most
         * @param seed seed of the search
         * @return the options
         */
        public static Options of(double seconds, long seed) {
            return new Options(seconds, seconds, seed, group -> { }, () -> false);
        }
    }

    /**
     * Plans some jobs together.
     *
     * @param jobs the jobs
     * @param shop the stock
     * @param options how long to search
     * @return the plan
     */
    public static StockPlan of(List<StockJob> jobs, ShopStock shop, Options options) {
        return of(jobs, shop, options, new KeptNests());
    }

    /**
     * Plans some jobs together; groups that were nested before are not nested again.
     *
     * @param jobs the jobs
     * @param shop the stock
     * @param options how long to search
     * @param kept nests made before, and those made now
     * @return the plan
     */
    public static StockPlan of(List<StockJob> jobs, ShopStock shop, Options options, KeptNests kept) {
        List<Sheet> kinds = new ArrayList<>();
        jobs.stream().flatMap(job -> job.blanks().stream()).forEach(blank -> {
            if (kinds.stream().noneMatch(kind -> SheetGroup.same(kind, blank.sheet()))) {
                kinds.add(blank.sheet());
            }
        });
        List<NestTask> tasks = kinds.stream().map(kind -> SheetGroup.task(kind, jobs, shop)).toList();
        Shares shares = new Shares(options, tasks.stream().map(task -> kept.has(task, options.seed()) ? 0.0 : task.pieces()
                + EVERY_GROUP).toList());
        List<SheetGroup> groups = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            groups.add(group(kinds.get(i), tasks.get(i), shop, shares.of(i), kept));
        }
        return new StockPlan(shop, jobs, groups, BarGroup.of(jobs, shop, options.cancelled()), options.seed());
    }

    private static SheetGroup group(Sheet kind, NestTask task, ShopStock shop, Options share, KeptNests kept) {
        List<StockSheet> stock = shop.sheetsFor(kind);
        return new SheetGroup(kind, stock, kept.nest(task, new Nester.Options(share.workSeconds(), share.seconds(), share.seed(),
                nest -> share.better().accept(new SheetGroup(kind, stock, nest)), share.cancelled())));
    }

    /**
     * Whether every search came to its own end, so that the same seed gives the same plan again.
     *
     * @return false where the clock or the user cut any short
     */
    public boolean settled() {
        return sheets.stream().allMatch(group -> group.nest().settled());
    }

    /**
     * How many sheets.
     *
     * @return the number
     */
    public int sheetCount() {
        return sheets.stream().mapToInt(group -> group.nest().sheets().size()).sum();
    }

    /**
     * How many sheets at least, whatever the layout.
     *
     * @return the sum of the groups' bounds
     */
    public int sheetBound() {
        return sheets.stream().mapToInt(group -> group.nest().bound().map(NestBound::sheets).orElse(0)).sum();
    }

    /**
     * Share of the sheets' area that becomes pieces.
     *
     * @return 0 to 1
     */
    public double use() {
        double area = sheets.stream().mapToDouble(group -> group.nest().areaMm2()).sum();
        return area == 0 ? 0 : sheets.stream().mapToDouble(group -> group.nest().use() * group.nest().areaMm2()).sum() / area;
    }

    /**
     * Whether everything found a place.
     *
     * @return false where a blank or a rod can't be cut from the stock
     */
    public boolean complete() {
        return sheets.stream().map(SheetGroup::nest).map(Nest::unplaced).allMatch(List::isEmpty)
                && bars.stream().allMatch(bar -> bar.plan().tooLongMm().isEmpty());
    }

    /**
     * Price of all sheets.
     *
     * @return in the stock's currency; empty where a price is missing or a blank has no place
     */
    public OptionalDouble sheetPrice() {
        double sum = 0;
        for (SheetGroup group : sheets) {
            OptionalDouble price = group.price();
            if (price.isEmpty() || !group.nest().unplaced().isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += price.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    /**
     * Mass of all sheets and bars.
     *
     * @return kg
     */
    public double boughtKg() {
        return sheets.stream().mapToDouble(SheetGroup::boughtKg).sum() + bars.stream().mapToDouble(BarGroup::boughtKg).sum();
    }

    /**
     * Mass of the sheets that becomes neither pieces nor usable remnants.
     *
     * @return kg
     */
    public double scrapKg() {
        return sheets.stream().mapToDouble(group -> group.boughtKg() - group.usedKg() - group.remnantKg()).sum();
    }
}
