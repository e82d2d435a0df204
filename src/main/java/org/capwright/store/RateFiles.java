package org.capwright.store;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.capwright.job.JobText;
import org.capwright.price.Operation;
import org.capwright.price.Rate;
import org.capwright.price.RateCard;

/** Rate cards: JSON in UTF-8. A rate that is left out is not known. */
public final class RateFiles {
    /** The newest form of rate cards that this program reads. */
    public static final int NEWEST_VERSION = 1;

    private RateFiles() {
    }

    /**
     * Reads a rate card.
     *
     * @param file the file
     * @return the card
     * @throws StoreException if it can't be read from disk
     * @throws UnreadableJobException if it is not well-formed
     * @throws org.capwright.job.RefusedJobException if any field is refused, with every problem
     */
    public static RateCard read(Path file) {
        return card(JobFiles.read(file));
    }

    /**
     * Reads a rate card from its texts.
     *
     * @param text what is typed in it
     * @return the card
     * @throws org.capwright.job.RefusedJobException if any field is refused, with every problem
     */
    public static RateCard of(JobText text) {
        return card(text);
    }

    /**
     * The texts of a rate card, as its file has them.
     *
     * @param card the card
     * @return texts by path
     */
    public static JobText text(RateCard card) {
        return ShopText.of(tree(card));
    }

    /**
     * The sample that the program brings along. Its rates are invented, and its note says so.
     *
     * @return the sample
     */
    public static RateCard sample() {
        return card(Samples.text("sample-rates.json"));
    }

    /**
     * Writes a rate card whole or not at all.
     *
     * @param file the file, replaced if there is one
     * @param card the card
     * @throws StoreException if it can't be written
     */
    public static void write(Path file, RateCard card) {
        JobFiles.writeWhole(file, PrettyJson.print(tree(card)));
    }

    private static RateCard card(JobText text) {
        ShopText in = new ShopText(text);
        in.count("capwrightRates", 1, NEWEST_VERSION);
        Map<Operation, Rate> rates = new EnumMap<>(Operation.class);
        for (Operation operation : Operation.values()) {
            String at = "operations." + operation.key() + ".";
            rates.put(operation, new Rate(in.amount(at + "minutesEach"), in.amount(at + "setUpMinutes")));
        }
        RateCard card = new RateCard(in.find("note").orElse(""), in.amount("labourPerHour"), share(in, "overheadPercent"),
                share(in, "marginPercent"), in.find("tax.name").orElse("tax"), share(in, "tax.percent"), credit(in), rates);
        in.done("rate card");
        return card;
    }

    private static OptionalDouble credit(ShopText in) {
        OptionalDouble share = share(in, "remnantCreditPercent");
        if (share.orElse(0) > 1) {
            in.refuse("remnantCreditPercent", Double.toString(share.getAsDouble() * 100), "it must be 0 to 100",
                    "Type a smaller number");
            return OptionalDouble.empty();
        }
        return share;
    }

    private static OptionalDouble share(ShopText in, String path) {
        OptionalDouble percent = in.amount(path);
        return percent.isPresent() ? OptionalDouble.of(percent.getAsDouble() / 100) : percent;
    }

    private static Map<String, Object> tree(RateCard card) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("capwrightRates", NEWEST_VERSION);
        tree.put("note", card.note());
        put(tree, "labourPerHour", card.labourPerHour(), 1);
        put(tree, "overheadPercent", card.overhead(), 100);
        put(tree, "marginPercent", card.margin(), 100);
        put(tree, "remnantCreditPercent", card.remnantCredit(), 100);
        Map<String, Object> tax = new LinkedHashMap<>(Map.of("name", card.taxName()));
        put(tax, "percent", card.tax(), 100);
        tree.put("tax", tax);
        Map<String, Object> operations = new LinkedHashMap<>();
        for (Operation operation : Operation.values()) {
            Map<String, Object> one = new LinkedHashMap<>();
            put(one, "minutesEach", card.rate(operation).minutesEach(), 1);
            put(one, "setUpMinutes", card.rate(operation).setUpMinutes(), 1);
            if (!one.isEmpty()) {
                operations.put(operation.key(), one);
            }
        }
        tree.put("operations", operations);
        return tree;
    }

    private static void put(Map<String, Object> tree, String name, OptionalDouble value, double times) {
        if (value.isPresent()) {
            tree.put(name, StockTree.number(value.getAsDouble() * times));
        }
    }
}
