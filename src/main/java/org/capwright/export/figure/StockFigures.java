package org.capwright.export.figure;

import java.util.ArrayList;
import java.util.List;
import org.capwright.price.Price;
import org.capwright.stock.StockPlan;

/** The figures of stock and price; one that is not known is left out. */
public final class StockFigures {
    private StockFigures() {
    }

    /**
     * The figures of a plan.
     *
     * @param plan the plan
     * @return {@code stock.sheets}, {@code stock.bound}, {@code stock.use}, {@code stock.cost} and masses
     */
    public static List<Figure> of(StockPlan plan) {
        FigureList list = new FigureList().number("stock.sheets", plan.sheetCount()).number("stock.bound", plan.sheetBound())
                .number("stock.use", plan.use());
        plan.sheetPrice().ifPresent(cost -> list.add("stock.cost", cost, plan.shop().currency()));
        return list.kg("stock.bought", plan.boughtKg()).kg("stock.scrap", plan.scrapKg()).figures();
    }

    /**
     * The figures of a price and its plan.
     *
     * @param price the price
     * @return the plan's figures, then {@code price.material}, {@code price.hardware}, {@code price.labour}, {@code price.total}
     */
    public static List<Figure> of(Price price) {
        List<Figure> all = new ArrayList<>(of(price.plan()));
        FigureList list = new FigureList();
        price.materialTotal().ifPresent(sum -> list.add("price.material", sum, price.currency()));
        price.hardwareTotal().ifPresent(sum -> list.add("price.hardware", sum, price.currency()));
        price.labourTotal().ifPresent(sum -> list.add("price.labour", sum, price.currency()));
        price.total().ifPresent(sum -> list.add("price.total", sum, price.currency()));
        all.addAll(list.figures());
        return all;
    }
}
