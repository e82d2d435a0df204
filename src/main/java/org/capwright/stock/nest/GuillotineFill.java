package org.capwright.stock.nest;

import java.util.ArrayList;
import java.util.List;
import org.capwright.geom.Bounds;

/**
 * Puts rectangles down so that a shear can cut them: each goes into the free rectangle that leaves the shortest side over,
 * which is then cut in two beyond it, along its shorter rest.
 */
final class GuillotineFill extends SheetFill {
    private final List<Bounds> free = new ArrayList<>();

    GuillotineFill(SheetSize size, NestRules rules, Shapes shapes, Effort effort) {
        super(size, rules, shapes, effort);
        free.add(new Bounds(0, 0, usableX, usableY));
    }

    @Override
    public boolean add(int demand) {
        Bounds room = null;
        Form turn = null;
        double least = Double.MAX_VALUE;
        for (Form form : shapes.forms(demand)) {
            for (Bounds rest : free) {
                double over = over(rest, form);
                if (over < least) {
                    least = over;
                    room = rest;
                    turn = form;
                }
            }
        }
        effort.spend(free.size() * 4L);
        if (room == null) {
            return false;
        }
        puts().add(new Put(demand, turn, room.minX(), room.minY()));
        split(room, turn);
        return true;
    }

    /** Shorter side that would be left over; a great number where it does not fit. */
    private static double over(Bounds room, Form form) {
        double across = room.width() - form.width;
        double up = room.height() - form.height;
        return across < -SAME_MM || up < -SAME_MM ? Double.MAX_VALUE : Math.min(across, up);
    }

    private void split(Bounds room, Form form) {
        free.remove(room);
        double x = room.minX() + form.width;
        double y = room.minY() + form.height;
        boolean wholeRight = room.maxX() - x > room.maxY() - y;
        keep(new Bounds(x, room.minY(), room.maxX(), wholeRight ? room.maxY() : y));
        keep(new Bounds(room.minX(), y, wholeRight ? x : room.maxX(), room.maxY()));
    }

    private void keep(Bounds rest) {
        if (rest.width() > SAME_MM && rest.height() > SAME_MM) {
            free.add(rest);
        }
    }
}
