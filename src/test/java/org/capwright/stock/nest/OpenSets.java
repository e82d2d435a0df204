package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import org.capwright.geom.Path;
import org.capwright.geom.Vec2;

/** Reads the open nesting sets; no spacing, no margin. */
public final class OpenSets {
    private static final NestRules RULES = new NestRules(0, 0, 0);
    private static final List<Integer> TURNS = List.of(0, 1, 2, 3);

    private OpenSets() {
    }

    /** First pieces, sheet width and height; then corner count and corners of each piece. */
    public static NestTask irregular(String text) {
        Scanner in = new Scanner(text).useLocale(Locale.ROOT);
        int count = in.nextInt();
        SheetSize sheet = new SheetSize("sheet", in.nextDouble(), in.nextDouble(), 1, Integer.MAX_VALUE, false);
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            List<Vec2> corners = new ArrayList<>();
            for (int left = in.nextInt(); left > 0; left--) {
                corners.add(new Vec2(in.nextDouble(), in.nextDouble()));
            }
            demands.add(demand("piece " + (i + 1), corners));
        }
        return new NestTask(demands, List.of(sheet), RULES);
    }

    /** First pieces and sizes; then length, width, 1 and cost of each size; then number, length, width, 1 of each piece. */
    public static NestTask rectangles(String text) {
        Scanner in = new Scanner(text).useLocale(Locale.ROOT);
        int count = in.nextInt();
        int sizes = in.nextInt();
        in.nextLine();
        List<SheetSize> sheets = new ArrayList<>();
        for (int i = 0; i < sizes; i++) {
            double length = in.nextDouble();
            double width = in.nextDouble();
            in.nextInt();
            sheets.add(new SheetSize("size " + (i + 1), length, width, in.nextDouble(), Integer.MAX_VALUE, false));
        }
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String name = "piece " + in.next();
            double x = in.nextDouble();
            double y = in.nextDouble();
            in.nextInt();
            demands.add(demand(name, List.of(Vec2.ZERO, new Vec2(x, 0), new Vec2(x, y), new Vec2(0, y))));
        }
        return new NestTask(demands, sheets, RULES);
    }

    private static Demand demand(String name, List<Vec2> corners) {
        return new Demand(new Piece("", name, Path.polyline(corners, true), List.of(), TURNS), 1);
    }
}
