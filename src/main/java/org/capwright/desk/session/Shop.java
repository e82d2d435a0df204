package org.capwright.desk.session;

import java.util.Optional;
import org.capwright.price.RateCard;
import org.capwright.stock.ShopStock;
import org.capwright.store.DeskFolder;
import org.capwright.store.JobFiles;
import org.capwright.store.RateFiles;
import org.capwright.store.StockFiles;

/**
 * What belongs to the shop and not to a job.
 *
 * @param stock what it has and can buy
 * @param rates what it reckons with
 */
public record Shop(ShopFile<ShopStock> stock, ShopFile<RateCard> rates) {
    /**
     * The shop of a user: files beside the settings, samples where there are none.
     *
     * @param folder where they are kept
     * @return the shop
     */
    public static Shop of(DeskFolder folder) {
        return new Shop(new ShopFile<>(folder.stockFile(), new ShopFile.Form<>(StockFiles.sample(), StockFiles::of,
                StockFiles::text, JobFiles::read, StockFiles::write)),
                new ShopFile<>(folder.ratesFile(), new ShopFile.Form<>(RateFiles.sample(), RateFiles::of, RateFiles::text,
                JobFiles::read, RateFiles::write)));
    }

    /**
     * The stock that blanks must fit: none before the shop has put in its own, since a sample proves nothing.
     *
     * @return its own stock
     */
    public Optional<ShopStock> ownStock() {
        return stock.sampleProperty().get() ? Optional.empty() : Optional.of(stock.valueProperty().get());
    }
}
