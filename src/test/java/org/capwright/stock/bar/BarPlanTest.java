package org.capwright.stock.bar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class BarPlanTest {
    /** Against every way to part the pieces into groups, each group on the cheapest bar that holds it. */
    @Test
    void noPartitionCostsLess() {
        for (long seed = 1; seed <= 150; seed++) {
            Random random = new Random(seed);
            double kerf = random.nextInt(4);
            List<BarSize> sizes = random.nextBoolean() ? List.of(new BarSize(100, 10)) : List.of(new BarSize(100, 10), new BarSize(150, 13));
            List<Double> pieces = new ArrayList<>();
            for (int i = 2 + random.nextInt(6); i > 0; i--) {
                pieces.add(10.0 + random.nextInt(80));
            }
            BarPlan plan = BarPlan.of(pieces, sizes, kerf);
            assertThat(plan.proved()).as("seed %d", seed).isTrue();
            assertThat(plan.cost()).as("seed %d", seed).isCloseTo(least(pieces, 0, new ArrayList<>(), sizes, kerf), Offset.offset(1e-9));
            valid(plan, pieces, kerf);
        }
    }

    private static double least(List<Double> pieces, int next, List<List<Double>> groups, List<BarSize> sizes, double kerf) {
        if (next == pieces.size()) {
            return groups.stream().mapToDouble(group -> cheapest(group, sizes, kerf)).sum();
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= groups.size(); i++) {
            if (i == groups.size()) {
                groups.add(new ArrayList<>());
            }
            groups.get(i).add(pieces.get(next));
            best = Math.min(best, least(pieces, next + 1, groups, sizes, kerf));
            groups.get(i).remove(groups.get(i).size() - 1);
            if (groups.get(i).isEmpty()) {
                groups.remove(i);
                break;
            }
        }
        return best;
    }

    private static double cheapest(List<Double> group, List<BarSize> sizes, double kerf) {
        double length = group.stream().mapToDouble(Double::doubleValue).sum() + kerf * (group.size() - 1);
        return sizes.stream().filter(size -> size.lengthMm() >= length - 1e-9).mapToDouble(BarSize::cost).min().orElse(Double.POSITIVE_INFINITY);
    }

    private static void valid(BarPlan plan, List<Double> pieces, double kerf) {
        List<Double> cut = new ArrayList<>();
        for (CutBar bar : plan.bars()) {
            double length = bar.piecesMm().stream().mapToDouble(Double::doubleValue).sum() + kerf * (bar.piecesMm().size() - 1);
            assertThat(length).isLessThanOrEqualTo(bar.size().lengthMm() + 1e-9);
            cut.addAll(bar.piecesMm());
        }
        assertThat(cut).containsExactlyInAnyOrderElementsOf(pieces);
    }

    @Test
    void manyAlikePiecesAreProvedToo() {
        List<Double> pieces = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            pieces.add(1071.0);
            pieces.add(970.0);
        }
        BarPlan plan = BarPlan.of(pieces, List.of(new BarSize(3657.6, 42)), 3.2);
        // three to a bar, whichever they are
        assertThat(plan.bars()).hasSize(14);
        assertThat(plan.proved()).isTrue();
    }

    @Test
    void tooLongPiecesAreNamed() {
        BarPlan plan = BarPlan.of(List.of(120.0, 50.0), List.of(new BarSize(100, 1)), 2);
        assertThat(plan.tooLongMm()).containsExactly(120.0);
        assertThat(plan.bars()).containsExactly(new CutBar(new BarSize(100, 1), List.of(50.0)));
        assertThat(plan.bars().get(0).restMm(2)).isEqualTo(48);
        assertThat(BarPlan.of(List.of(50.0), List.of(), 2).tooLongMm()).containsExactly(50.0);
    }
}
