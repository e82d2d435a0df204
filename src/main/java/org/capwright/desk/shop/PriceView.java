package org.capwright.desk.shop;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.capwright.desk.session.PriceDesk;
import org.capwright.desk.session.Session;
import org.capwright.desk.session.ShopFile;
import org.capwright.desk.session.Watched;
import org.capwright.export.Money;
import org.capwright.price.Price;
import org.capwright.price.RateCard;

/** What the job costs, for several numbers of caps; other ways to make it; and the shop's rates, to be edited. */
public final class PriceView extends BorderPane implements Watched {
    private final PriceDesk desk;
    private final FlowPane choices = new FlowPane(8, 8);
    private final PriceLines lines;
    private final Label note = new Label();
    private final Button quote = new Button("Quote...");
    private int caps = PriceDesk.CAPS.get(0);

    /**
     * The view.
     *
     * @param session what is open
     * @param desk its prices
     * @param write writes quote and inner sheet as files
     */
    public PriceView(Session session, PriceDesk desk, Consumer<List<Price>> write) {
        this.desk = desk;
        this.lines = new PriceLines();
        ShopFile<RateCard> rates = session.shop().rates();
        quote.setId("quote");
        quote.setOnAction(event -> write.accept(desk.pricesProperty().get()));
        Node price = price(rates);
        Node compare = new CompareView(session, desk);
        Node editor = new RateEditor(rates);
        ToggleGroup group = new ToggleGroup();
        HBox bar = new HBox(6, page(group, "Price", price), page(group, "Other ways", compare),
                page(group, "Shop's rates", editor));
        bar.getStyleClass().add("view-bar");
        group.getToggles().get(0).setSelected(true);
        group.selectedToggleProperty().addListener((o, was, is) -> {
            if (is == null) {
                was.setSelected(true);
            }
        });
        setTop(bar);
        setCenter(price);
        desk.pricesProperty().addListener((o, was, is) -> show());
        desk.busyProperty().addListener((o, was, is) -> show());
        show();
    }

    private ToggleButton page(ToggleGroup group, String name, Node content) {
        ToggleButton button = new ToggleButton(name);
        button.setId("price-" + name.substring(0, 5).strip().toLowerCase(Locale.ROOT));
        button.setToggleGroup(group);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.selectedProperty().addListener((o, was, is) -> {
            if (is) {
                setCenter(content);
            }
        });
        return button;
    }

    private BorderPane price(ShopFile<RateCard> rates) {
        FlowPane shares = new FlowPane(14, 6, new ShopField(rates, "labourPerHour", "labour an hour", 5),
                new ShopField(rates, "overheadPercent", "overhead %", 4),
                new ShopField(rates, "marginPercent", "margin %", 4), new ShopField(rates, "tax.percent", "tax %", 4), quote);
        note.getStyleClass().addAll("quiet", "small");
        note.setWrapText(true);
        note.setMinHeight(Region.USE_PREF_SIZE);
        VBox head = new VBox(8, choices, shares, note);
        head.getStyleClass().add("view-bar");
        BorderPane pane = new BorderPane(lines);
        pane.setTop(head);
        return pane;
    }

    private void show() {
        List<Price> prices = desk.pricesProperty().get();
        choices.getChildren().clear();
        ToggleGroup group = new ToggleGroup();
        for (Price price : prices) {
            choices.getChildren().add(choice(price, group));
        }
        if (desk.busyProperty().get() && prices.size() < PriceDesk.CAPS.size()) {
            choices.getChildren().add(new Label("nesting for " + PriceDesk.CAPS.get(prices.size())));
        }
        prices.stream().filter(price -> price.caps() == caps).findFirst().or(() -> prices.stream().findFirst()).ifPresent(lines::show);
        boolean whole = prices.size() == PriceDesk.CAPS.size() && prices.stream().allMatch(price -> price.total().isPresent());
        quote.setDisable(prices.size() < PriceDesk.CAPS.size());
        note.setText(prices.isEmpty() ? "" : prices.get(0).note() + (whole || prices.get(0).missing().isEmpty() ? ""
                : " Missing, so no quote can be written: " + String.join("; ", prices.get(0).missing()) + "."));
    }

    private ToggleButton choice(Price price, ToggleGroup group) {
        Money money = new Money(price.currency());
        String each = price.caps() == 1 ? "1 cap" : price.caps() + " caps, " + money.plain(price.each()) + " each";
        ToggleButton button = new ToggleButton(money.of(price.total()) + "\n" + each + ", " + price.plan().sheetCount()
                + (price.plan().sheetCount() == 1 ? " sheet" : " sheets"));
        button.setId("price-for-" + price.caps());
        button.getStyleClass().add("price-choice");
        button.setToggleGroup(group);
        button.setSelected(price.caps() == caps);
        button.setOnAction(event -> {
            caps = price.caps();
            button.setSelected(true);
            lines.show(price);
        });
        return button;
    }

    @Override
    public void setWatched(boolean now) {
        desk.watchedProperty().set(now);
    }
}
