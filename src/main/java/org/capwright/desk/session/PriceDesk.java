package org.capwright.desk.session;

import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import org.capwright.job.CapJob;
import org.capwright.part.Cap;
import org.capwright.price.Compared;
import org.capwright.price.Price;
import org.capwright.price.Pricing;
import org.capwright.price.RateCard;
import org.capwright.price.Variants;
import org.capwright.stock.KeptNests;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.stock.StockPlan;

/** Prices of the job that is open, for several numbers of caps, and other ways to make it. Priced anew while it is watched. */
public final class PriceDesk {
    /** Numbers of caps that a price is given for. */
    public static final List<Integer> CAPS = List.of(1, 2, 5, 10);
    private static final double FIRST_SECONDS = 0.5;
    private static final double SECONDS_TO_COMPARE = 3;

    private final Session session;
    private final Latest pricing;
    private final Latest comparing;
    // each is its worker's own
    private final KeptNests kept = new KeptNests();
    private final KeptNests keptToCompare = new KeptNests();
    private final ReadOnlyObjectWrapper<List<Price>> prices = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<Compared>> alternatives = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper comparison = new ReadOnlyBooleanWrapper();
    private final BooleanProperty watched = new SimpleBooleanProperty();

    /**
     * The prices of a session.
     *
     * @param session what is open
     * @param pricing who prices
     * @param comparing who compares
     */
    public PriceDesk(Session session, Latest pricing, Latest comparing) {
        this.session = session;
        this.pricing = pricing;
        this.comparing = comparing;
        session.solvedProperty().addListener((o, was, is) -> {
            comparing.drop();
            comparison.set(false);
            alternatives.set(List.of());
            price();
        });
        session.shop().rates().valueProperty().addListener((o, was,
                is) -> prices.set(prices.get().stream().map(price -> Pricing.of(price.plan(), is)).toList()));
        watched.addListener((o, was, is) -> price());
    }

    private void price() {
        Solved solved = session.solvedProperty().get();
        if (!watched.get() || solved == null) {
            return;
        }
        ShopStock stock = session.shop().stock().valueProperty().get();
        busy.set(true);
        RateCard card = card();
        pricing.ask(overtaken -> prices(solved.cap().job(), stock, card, overtaken), answer -> {
            busy.set(false);
            prices.set(answer.stream().map(price -> Pricing.of(price.plan(), card())).toList());
        }, e -> {
            busy.set(false);
            throw e;
        });
    }

    /** The price of one cap is told as soon as it is there. */
    private List<Price> prices(CapJob job, ShopStock stock, RateCard card, BooleanSupplier overtaken) {
        Cap cap = StockFit.split(job, stock);
        StockPlan.Options options = options(StockPlan.Options.USUAL_SECONDS, overtaken);
        List<Price> first = Pricing.of(cap, CAPS.subList(0, 1), stock, card, options(FIRST_SECONDS, overtaken), kept);
        pricing.tell(overtaken, () -> prices.set(first));
        return Pricing.of(cap, CAPS, stock, card, options, kept);
    }

    private static StockPlan.Options options(double seconds, BooleanSupplier overtaken) {
        return new StockPlan.Options(seconds, seconds, 1, group -> { }, overtaken);
    }

    private RateCard card() {
        return session.shop().rates().valueProperty().get();
    }

    /** Compares the job with other ways to make it. */
    public void compare() {
        Solved solved = session.solvedProperty().get();
        if (solved == null) {
            return;
        }
        ShopStock stock = session.shop().stock().valueProperty().get();
        RateCard card = card();
        CapJob job = solved.cap().job();
        comparison.set(true);
        comparing.ask(overtaken -> Compared.of(job.text(), Variants.of(job, stock), stock, card,
                options(SECONDS_TO_COMPARE, overtaken), keptToCompare),
                answer -> {
                    comparison.set(false);
                    alternatives.set(answer);
                }, e -> {
                    comparison.set(false);
                    throw e;
                });
    }

    /**
     * Prices for {@link #CAPS}, as many as are there yet.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<List<Price>> pricesProperty() {
        return prices.getReadOnlyProperty();
    }

    /**
     * Other ways to make the job; empty before they are asked for.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<List<Compared>> alternativesProperty() {
        return alternatives.getReadOnlyProperty();
    }

    /**
     * Whether prices are on their way.
     *
     * @return the property
     */
    public ReadOnlyBooleanProperty busyProperty() {
        return busy.getReadOnlyProperty();
    }

    /**
     * Whether a comparison is on its way.
     *
     * @return the property
     */
    public ReadOnlyBooleanProperty comparingProperty() {
        return comparison.getReadOnlyProperty();
    }

    /**
     * Whether anybody looks; nothing is priced while nobody does.
     *
     * @return the property
     */
    public BooleanProperty watchedProperty() {
        return watched;
    }
}
