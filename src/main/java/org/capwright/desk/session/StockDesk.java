package org.capwright.desk.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.capwright.job.CapJob;
import org.capwright.job.HoodInputs;
import org.capwright.job.Input;
import org.capwright.job.JobReader;
import org.capwright.job.SleeveInputs;
import org.capwright.part.Cap;
import org.capwright.stock.KeptNests;
import org.capwright.stock.SheetGroup;
import org.capwright.stock.ShopStock;
import org.capwright.stock.StockFit;
import org.capwright.stock.StockJob;
import org.capwright.stock.StockPlan;
import org.capwright.store.JobFiles;

/**
 * What the job that is open, and others that are cut with it, are cut from. Nested anew after each edit while it is watched; what
 * is found is shown as it gets better.
 */
public final class StockDesk {
    private static final List<Input<Integer>> PIECES = List.of(SleeveInputs.PIECES, HoodInputs.PIECES);

    private final Session session;
    private final Latest latest;
    private final ObjectProperty<Wish> wish = new SimpleObjectProperty<>(new Wish(1, StockPlan.Options.USUAL_SECONDS, 1,
            List.of()));
    private final ReadOnlyObjectWrapper<Nested> nested = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyBooleanWrapper searching = new ReadOnlyBooleanWrapper();
    private final BooleanProperty watched = new SimpleBooleanProperty();
    // the worker's own
    private final KeptNests kept = new KeptNests();
    private AtomicBoolean keep = new AtomicBoolean();

    /**
     * What to nest.
     *
     * @param caps how many of the job that is open
     * @param seconds how long to search at most
     * @param seed the same seed gives the same layout
     * @param others job files that are cut with it, one cap of each
     */
    public record Wish(int caps, double seconds, long seed, List<Path> others) {
        /** Keeps its own copy. */
        public Wish {
            others = List.copyOf(others);
        }
    }

    /**
     * What has been found.
     *
     * @param groups the best so far of each metal and thickness
     * @param plan the whole plan; empty while the search goes on
     * @param split numbers of pieces that cylinders were nested in since they fit on no sheet as they are, by input path
     */
    public record Nested(List<SheetGroup> groups, Optional<StockPlan> plan, Map<String, String> split) {
        /** Keeps its own copies. */
        public Nested {
            groups = List.copyOf(groups);
            split = Map.copyOf(split);
        }
    }

    /**
     * The stock plan of a session.
     *
     * @param session what is open
     * @param latest who nests
     */
    public StockDesk(Session session, Latest latest) {
        this.session = session;
        this.latest = latest;
        session.solvedProperty().addListener((o, was, is) -> nest());
        wish.addListener((o, was, is) -> nest());
        watched.addListener((o, was, is) -> nest());
    }

    private void nest() {
        Solved solved = session.solvedProperty().get();
        if (!watched.get() || solved == null) {
            return;
        }
        ShopStock stock = session.shop().stock().valueProperty().get();
        Wish wanted = wish.get();
        AtomicBoolean enough = new AtomicBoolean();
        keep = enough;
        searching.set(true);
        latest.ask(overtaken -> new Search(stock, wanted, overtaken, enough).run(solved.cap().job()), this::done, e -> {
            searching.set(false);
            throw e;
        });
    }

    private void done(Nested answer) {
        searching.set(false);
        nested.set(answer);
    }

    /** Ends the search; the best so far is kept. */
    public void keepBest() {
        keep.set(true);
    }

    /** One search, off the screen's thread. */
    private final class Search {
        private final ShopStock stock;
        private final Wish wanted;
        private final BooleanSupplier overtaken;
        private final AtomicBoolean enough;
        private final List<SheetGroup> best = new ArrayList<>();

        Search(ShopStock stock, Wish wanted, BooleanSupplier overtaken, AtomicBoolean enough) {
            this.stock = stock;
            this.wanted = wanted;
            this.overtaken = overtaken;
            this.enough = enough;
        }

        Nested run(CapJob job) {
            Cap cap = StockFit.split(job, stock);
            Map<String, String> split = split(job, cap);
            List<StockJob> jobs = new ArrayList<>(List.of(StockJob.of(cap, wanted.caps())));
            wanted.others().forEach(file -> jobs.add(StockJob.of(StockFit.split(JobReader.read(JobFiles.read(file)).orThrow(),
                    stock), 1)));
            StockPlan plan = StockPlan.of(jobs, stock, new StockPlan.Options(wanted.seconds(), wanted.seconds(), wanted.seed(),
                    group -> better(group, split), () -> overtaken.getAsBoolean() || enough.get()), kept);
            return new Nested(plan.sheets(), Optional.of(plan), split);
        }

        private void better(SheetGroup group, Map<String, String> split) {
            best.removeIf(one -> one.sheet().equals(group.sheet()));
            best.add(group);
            Nested soFar = new Nested(best, Optional.empty(), split);
            latest.tell(overtaken, () -> nested.set(soFar));
        }
    }

    private static Map<String, String> split(CapJob job, Cap cap) {
        Map<String, String> split = new LinkedHashMap<>();
        for (Input<Integer> input : PIECES) {
            cap.job().text().at(input.path()).filter(text -> !Optional.of(text).equals(job.text().at(input.path()))).ifPresent(text -> split.put(input.path(), text));
        }
        return split;
    }

    /**
     * What to nest.
     *
     * @return the property
     */
    public ObjectProperty<Wish> wishProperty() {
        return wish;
    }

    /**
     * What has been found; null before anything was.
     *
     * @return the property
     */
    public ReadOnlyObjectProperty<Nested> nestedProperty() {
        return nested.getReadOnlyProperty();
    }

    /**
     * Whether a search goes on.
     *
     * @return the property
     */
    public ReadOnlyBooleanProperty searchingProperty() {
        return searching.getReadOnlyProperty();
    }

    /**
     * Whether anybody looks; nothing is nested while nobody does.
     *
     * @return the property
     */
    public BooleanProperty watchedProperty() {
        return watched;
    }
}
