package org.capwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.capwright.metal.Metal;
import org.capwright.part.Bushing;
import org.capwright.part.Cap;
import org.capwright.part.Sheet;
import org.capwright.part.Standoff;

/**
 * The parts of a cap with the numbers that refer to them.
 *
 * @param items the parts, in the order of the work
 */
public record PartList(List<Item> items) {
    /** Keeps its own copy. */
    public PartList {
        items = List.copyOf(items);
    }

    /**
     * A part.
     *
     * @param number its number, from 1
     * @param name its name
     * @param quantity how many the cap has
     * @param sheet what it is cut from, where it is cut from sheet
     * @param metal what it is made of, otherwise
     */
    public record Item(int number, String name, int quantity, Optional<Sheet> sheet, Optional<Metal> metal) {
    }

    /**
     * The parts of a cap.
     *
     * @param cap the cap
     * @return the list
     */
    public static PartList of(Cap cap) {
        List<Item> items = new ArrayList<>();
        sheet(items, "sleeve", 1, cap.sleeve().sheet());
        sheet(items, "hood", 1, cap.hood().sheet());
        cap.leaves().forEach(leaf -> sheet(items, "leaf " + leaf.number(), 2, leaf.sheet()));
        cap.rods().forEach(rod -> metal(items, "pivot rod " + rod.number(), 2, Optional.of(rod.metal())));
        for (Bushing kind : cap.bushings().stream().distinct().toList()) {
            int rods = (int) cap.bushings().stream().filter(kind::equals).count();
            metal(items, "bushing" + cap.bushingsOf(cap.bushings().indexOf(kind) + 1), 4 * rods, Optional.empty());
        }
        metal(items, "washer", 4 * cap.rods().size(), Optional.of(cap.washer().metal()));
        cap.doublers().forEach(plate -> metal(items, "doubler " + plate.number(), 2 * Cap.mirrored(plate.number()),
                Optional.of(plate.metal())));
        cap.gutters().forEach(gutter -> sheet(items, "gutter " + gutter.number(), Cap.mirrored(gutter.number()), gutter.sheet()));
        cap.stops().forEach(bar -> sheet(items, "stop bar " + bar.number(), Cap.mirrored(bar.number()), bar.sheet()));
        Standoff standoff = cap.standoff();
        sheet(items, "standoff", standoff.count(), standoff.sheet());
        metal(items, "blind rivet", standoff.count() * standoff.rivets().each(), Optional.empty());
        return new PartList(items);
    }

    private static void sheet(List<Item> items, String name, int quantity, Sheet sheet) {
        items.add(new Item(items.size() + 1, name, quantity, Optional.of(sheet), Optional.empty()));
    }

    private static void metal(List<Item> items, String name, int quantity, Optional<Metal> metal) {
        items.add(new Item(items.size() + 1, name, quantity, Optional.empty(), metal));
    }

    /**
     * A part's number and name.
     *
     * @param name the name
     * @return such as {@code 3  leaf 1}
     */
    public String words(String name) {
        return items.stream().filter(item -> item.name().equals(name))
                .map(item -> String.format(Locale.ROOT, "%d  %s", item.number(), item.name())).findFirst().orElseThrow();
    }
}
