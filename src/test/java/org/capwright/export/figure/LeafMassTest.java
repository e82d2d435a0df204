package org.capwright.export.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.capwright.blank.RandomCaps;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.capwright.part.Leaf;
import org.junit.jupiter.api.Test;

/** Mass and centre of gravity of formed leaves against a sum over small pieces of their mid-surface. */
class LeafMassTest {
    private static final int PIECES = 2_000;
    private static final int ALONG_FLANGE = 60;

    private double area;
    private double x;
    private double down;

    @Test
    void kiln() {
        check(Cap.solve(Jobs.kiln()), "kiln");
    }

    @Test
    void randomCaps() {
        for (RandomCaps.Drawn drawn : RandomCaps.of(31, 25)) {
            check(drawn.cap(), drawn.toString());
        }
    }

    private void check(Cap cap, String which) {
        for (Leaf leaf : cap.leaves()) {
            area = 0;
            x = 0;
            down = 0;
            double setback = (leaf.bend().insideRadiusMm() + leaf.sheet().thicknessMm()) * Math.tan(leaf.bend().turnRad() / 2);
            plate(leaf, setback);
            curve(leaf, setback);
            chord(leaf, setback, leaf.slab().hingeEdgeMm(), -1, leaf.hingeFlangeMm());
            if (leaf.slab().freeChord()) {
                chord(leaf, setback, leaf.slab().freeEdgeMm(), 1, leaf.curveFlangeMm());
            }
            String what = "leaf " + leaf.number() + " of " + which;
            double mass = area * leaf.sheet().thicknessMm() * 1e-9 * leaf.sheet().metal().densityKgPerM3();
            assertThat(leaf.balance().massKg()).as(what).isCloseTo(mass, within(0.002 * mass));
            assertThat(leaf.balance().outboardMm()).as(what).isCloseTo(x / area - leaf.rodAxisMm(), within(0.2));
            assertThat(leaf.balance().upMm()).as(what)
                    .isCloseTo(-leaf.rodRadiusMm() - leaf.sheet().thicknessMm() / 2 - down / area, within(0.05));
        }
    }

    /** The flat between the bends, strip by strip. */
    private void plate(Leaf leaf, double setback) {
        double radius = leaf.slab().radiusMm() - setback;
        double from = leaf.slab().hingeEdgeMm() + setback;
        double to = leaf.slab().freeChord() ? leaf.slab().freeEdgeMm() - setback : radius;
        double step = (to - from) / PIECES;
        for (int i = 0; i < PIECES; i++) {
            double at = from + (i + 0.5) * step;
            add(at, 0, 2 * Math.sqrt(radius * radius - at * at) * step);
        }
    }

    /** The curved flange, from one corner to the other. */
    private void curve(Leaf leaf, double setback) {
        double end = Math.acos(leaf.slab().hingeEdgeMm() / leaf.slab().radiusMm());
        double begin = leaf.slab().freeChord() ? Math.acos(leaf.slab().freeEdgeMm() / leaf.slab().radiusMm()) : 0;
        double step = (end - begin) / PIECES;
        for (int i = 0; i < PIECES; i++) {
            double cosine = Math.cos(begin + (i + 0.5) * step);
            along(leaf, setback, leaf.curveFlangeMm(), (out, deep, length) -> {
                double radius = leaf.slab().radiusMm() - setback + out;
                add(radius * cosine, deep, 2 * radius * step * length);
            });
        }
    }

    private void chord(Leaf leaf, double setback, double edge, int side, double depth) {
        double radius = leaf.slab().radiusMm();
        double length = 2 * Math.sqrt(radius * radius - edge * edge);
        along(leaf, setback, depth, (out, deep, piece) -> add(edge + side * (out - setback), deep, length * piece));
    }

    /** A point of a flange's mid-surface: outwards from where the flat ends, downwards from it, and the length it stands for. */
    private interface OnFlange {
        void at(double out, double down, double length);
    }

    /** Walks round the bend and down the wall. */
    private static void along(Leaf leaf, double setback, double depth, OnFlange use) {
        double beta = leaf.bend().turnRad();
        double r = leaf.bend().insideRadiusMm() + leaf.sheet().thicknessMm() / 2;
        for (int i = 0; i < ALONG_FLANGE; i++) {
            double angle = (i + 0.5) * beta / ALONG_FLANGE;
            use.at(r * Math.sin(angle), r - r * Math.cos(angle), r * beta / ALONG_FLANGE);
        }
        double wall = depth - setback;
        for (int i = 0; i < ALONG_FLANGE; i++) {
            double s = (i + 0.5) * wall / ALONG_FLANGE;
            use.at(r * Math.sin(beta) + s * Math.cos(beta), r - r * Math.cos(beta) + s * Math.sin(beta), wall / ALONG_FLANGE);
        }
    }

    private void add(double atX, double atDown, double piece) {
        area += piece;
        x += atX * piece;
        down += atDown * piece;
    }
}
