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
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;

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
     * @param size its size where it is not cut from sheet, may be empty
     */
    public record Item(int number, String name, int quantity, Optional<Sheet> sheet, Optional<Metal> metal, String size) {
    }

    /**
     * The parts of a cap.
     *
     * @param cap the cap
     * @param format how sizes are printed
     * @return the list
     */
    public static PartList of(Cap cap, ShopFormat format) {
        Collector parts = new Collector(format, new ArrayList<>());
        parts.sheet("sleeve", 1, cap.sleeve().sheet());
        parts.sheet("hood", 1, cap.hood().sheet());
        cap.leaves().forEach(leaf -> parts.sheet("leaf " + leaf.number(), 2, leaf.sheet()));
        cap.rods().forEach(rod -> parts.metal("pivot rod " + rod.number(), 2, rod.metal(), "\u00d8 "
                + parts.length(rod.diameterMm())
                + ", " + parts.length(rod.lengthMm()) + " long"));
        for (Bushing kind : cap.bushings().stream().distinct().toList()) {
            int rods = (int) cap.bushings().stream().filter(kind::equals).count();
            parts.bought("bushing" + cap.bushingsOf(cap.bushings().indexOf(kind) + 1), 4 * rods, "bore "
                    + parts.length(kind.boreMm())
                    + ", outside " + parts.length(kind.outsideMm()) + ", " + parts.length(kind.lengthMm()) + " under flange");
        }
        parts.metal("washer", 4 * cap.rods().size(), cap.washer().metal(), "outside "
                + parts.length(cap.washer().outsideMm()) + ", " + parts.thick(cap.washer().thicknessMm()));
        cap.doublers().forEach(plate -> parts.metal("doubler " + plate.number(), 2 * Cap.mirrored(plate.number()), plate.metal(),
                parts.thick(plate.thicknessMm())));
        cap.gutters().forEach(gutter -> parts.sheet("gutter " + gutter.number(), Cap.mirrored(gutter.number()), gutter.sheet()));
        cap.stops().forEach(bar -> parts.sheet("stop bar " + bar.number(), Cap.mirrored(bar.number()), bar.sheet()));
        Standoff standoff = cap.standoff();
        parts.sheet("standoff", standoff.count(), standoff.sheet());
        parts.bought("blind rivet", standoff.count() * standoff.rivets().each(), "\u00d8 "
                + parts.length(standoff.rivets().diameterMm()));
        return new PartList(parts.items());
    }

    private record Collector(ShopFormat format, List<Item> items) {
        void sheet(String name, int quantity, Sheet sheet) {
            items.add(new Item(items.size() + 1, name, quantity, Optional.of(sheet), Optional.empty(), ""));
        }

        void metal(String name, int quantity, Metal metal, String size) {
            items.add(new Item(items.size() + 1, name, quantity, Optional.empty(), Optional.of(metal), size));
        }

        void bought(String name, int quantity, String size) {
            items.add(new Item(items.size() + 1, name, quantity, Optional.empty(), Optional.empty(), size));
        }

        String length(double mm) {
            return format.length(Length.ofMm(mm));
        }

        String thick(double mm) {
            return format.thickness(Length.ofMm(mm)) + " thick";
        }
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
