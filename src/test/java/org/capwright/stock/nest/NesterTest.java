package org.capwright.stock.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.geom.Path;
import org.capwright.geom.PathBuilder;
import org.capwright.geom.Vec2;
import org.junit.jupiter.api.Test;

class NesterTest {
    private static final NestRules RULES = new NestRules(5, 6, 100);

    /** Two of radius 300 side by side would need 1205 with the spacing; one shifted against the other they fit on less. */
    @Test
    void halfDiscsInterlock() {
        Path half = PathBuilder.from(new Vec2(0, -300)).arcTo(new Vec2(0, 300), Vec2.ZERO, true).close();
        Piece leaf = new Piece("", "leaf", half, List.of(), List.of(0, 2));
        // stacked they need 1205 across, beside each other 605 along: neither fits on 1000 x 560
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(leaf, 2)), List.of(Tasks.sheet(560, 1000)), RULES),
                Tasks.work(0.2));
        assertThat(nest.sheets()).hasSize(1);
        LayoutProof.valid(nest);
    }

    @Test
    void smallPiecesGoIntoNotches() {
        Path notched = Path.polyline(List.of(new Vec2(0, 0), new Vec2(488, 0), new Vec2(488, 188), new Vec2(300, 188),
                new Vec2(300, 100),
                new Vec2(188, 100), new Vec2(188, 188), new Vec2(0, 188)), true);
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(new Piece("", "notched", notched, List.of(), List.of(0)), 1),
                new Demand(Tasks.circle(40), 1)), List.of(Tasks.sheet(500, 200)), RULES), Tasks.work(0.1));
        assertThat(nest.sheets()).hasSize(1);
        LayoutProof.valid(nest);
    }

    /** A ring that fills its sheet; the disc and the bar find room in its hole only. */
    @Test
    void smallPiecesGoIntoHoles() {
        Piece ring = new Piece("", "ring", Path.circle(Vec2.ZERO, 244), List.of(Path.circle(Vec2.ZERO, 200)), List.of(0));
        NestTask task = new NestTask(List.of(new Demand(ring, 1), new Demand(Tasks.circle(90), 1),
                new Demand(Tasks.rectangle(250, 60), 1)),
                List.of(Tasks.sheet(500, 500)), RULES);
        Nest nest = Nester.nest(task, Tasks.work(0.2));
        assertThat(nest.sheets()).hasSize(1);
        assertThat(nest.bound().orElseThrow().sheets()).isEqualTo(1);
        LayoutProof.valid(nest);
        assertThat(nest.sheets().get(0).placements()).filteredOn(one -> !one.piece().equals(ring))
                .allMatch(one -> one.outline().bounds().center().distance(new Vec2(250, 250)) < 200);
    }

    /** The check, too, knows that a hole is free, and no more than the hole. */
    @Test
    void theCheckLooksIntoHoles() {
        Piece ring = new Piece("", "ring", Path.circle(Vec2.ZERO, 244), List.of(Path.circle(Vec2.ZERO, 200)), List.of(0));
        Placement around = new Placement(ring, 0, new Vec2(250, 250));
        for (double x : new double[] {250, 354, 358, 470}) {
            Placement inside = new Placement(Tasks.circle(90), 0, new Vec2(x, 250));
            SheetLayout layout = new SheetLayout(Tasks.sheet(600, 500), List.of(around, inside), Optional.empty(), List.of());
            assertThat(NestCheck.problems(layout, RULES).isEmpty()).as("disc at %s", x).isEqualTo(x < 356);
        }
    }

    /** Less than 100 ms of a usual desktop's work lies between a cancel and the answer, and between two questions whether to. */
    @Test
    void aCancelIsHeardAtOnce() {
        NestTask task = manyHalfDiscs();
        for (double after : new double[] {0, 0.05, 0.5, 1.5}) {
            long from = (long) (after * Effort.STEPS_PER_SECOND);
            long[] asked = {0, 0, -1};
            Effort[] effort = new Effort[1];
            effort[0] = new Effort(1000, 600, () -> {
                asked[1] = Math.max(asked[1], effort[0].spent() - asked[0]);
                asked[0] = effort[0].spent();
                asked[2] = asked[2] < 0 && asked[0] >= from ? asked[0] : asked[2];
                return asked[2] >= 0;
            });
            Search search = new Search(task, effort[0], 1, sheets -> { });
            search.run(0);
            long least = (long) (0.1 * Effort.STEPS_PER_SECOND);
            assertThat(asked[1]).as("between questions").isLessThan(least);
            assertThat(effort[0].spent() - asked[2]).as("after the cancel").isLessThan(least);
            assertThat(effort[0].interrupted()).isTrue();
        }
    }

    /** Before there is any layout, what lies already is kept, and the rest is told. */
    @Test
    void anEarlyCancelKeepsWhatLies() {
        int[] asked = new int[1];
        Nest nest = Nester.nest(manyHalfDiscs(), new Nester.Options(5, 600, 1, better -> { }, () -> ++asked[0] > 20));
        int placed = nest.sheets().stream().mapToInt(sheet -> sheet.placements().size()).sum();
        assertThat(placed).isBetween(1, 20);
        assertThat(placed + nest.unplaced().stream().mapToInt(Demand::quantity).sum()).isEqualTo(nest.task().pieces());
        assertThat(nest.settled()).isFalse();
        LayoutProof.valid(nest);
        Nest none = Nester.nest(manyHalfDiscs(), new Nester.Options(5, 600, 1, better -> { }, () -> true));
        assertThat(none.sheets()).isEmpty();
        assertThat(none.unplaced()).isEqualTo(none.task().demands());
    }

    private static NestTask manyHalfDiscs() {
        List<Demand> demands = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double r = 120 + 9 * i;
            Path half = PathBuilder.from(new Vec2(0, -r)).arcTo(new Vec2(0, r), Vec2.ZERO, true).close();
            demands.add(new Demand(new Piece("", "leaf " + i, half, List.of(), List.of(0, 2)), 12));
            demands.add(new Demand(Tasks.rectangle(300 + 10 * i, 80), 6));
        }
        return new NestTask(demands, List.of(Tasks.sheet(3048, 1219)), RULES);
    }

    @Test
    void piecesOfWhichNoTwoShareASheetNeedOneEach() {
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(700, 700), 3), new Demand(Tasks.circle(50), 4)),
                List.of(Tasks.sheet(1000, 1000)), RULES), Tasks.work(0.1));
        assertThat(nest.words())
                .isEqualTo("3 sheets; no layout can use fewer than 3 (3 pieces of which no two share a sheet, in quarter turns),"
                + " none can cost less");
    }

    @Test
    void spacingCounts() {
        // 4 of 492 mm with 5 mm between them and 6 mm round them need just 1001 mm; on 998 mm no two find room, not even corner
        // to corner
        NestTask tight = new NestTask(List.of(new Demand(Tasks.rectangle(492, 492), 4)), List.of(Tasks.sheet(1001, 1001)), RULES);
        assertThat(Nester.nest(tight, Tasks.work(0.1)).sheets()).hasSize(1);
        NestTask over = new NestTask(List.of(new Demand(Tasks.rectangle(492, 492), 4)), List.of(Tasks.sheet(998, 998)), RULES);
        Nest nest = Nester.nest(over, Tasks.work(0.1));
        assertThat(nest.sheets()).hasSize(4);
        assertThat(nest.bound().orElseThrow().sheets()).isEqualTo(4);
    }

    @Test
    void grainIsKept() {
        Piece along = new Piece("", "along", Tasks.rectangle(400, 90).outline(), List.of(), List.of(0, 2));
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(along, 8)), List.of(Tasks.sheet(450, 1200)), RULES),
                Tasks.work(0.1));
        assertThat(nest.sheets().get(0).placements()).allMatch(one -> one.turns() % 2 == 0);
    }

    @Test
    void theCheapestSizesAreTaken() {
        SheetSize large = new SheetSize("large", 2000, 1000, 100, Integer.MAX_VALUE, false);
        SheetSize small = new SheetSize("small", 1000, 1000, 60, Integer.MAX_VALUE, false);
        Nest one = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(900, 900), 1)), List.of(large, small), RULES),
                Tasks.work(0.1));
        assertThat(one.cost()).isEqualTo(60);
        Nest three = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(900, 900), 3)), List.of(large, small), RULES),
                Tasks.work(0.1));
        assertThat(three.cost()).isEqualTo(160);
    }

    @Test
    void remnantsFirstEvenIfTheyCostMore() {
        SheetSize whole = new SheetSize("whole", 2000, 1000, 100, Integer.MAX_VALUE, false);
        SheetSize remnant = new SheetSize("remnant", 500, 500, 200, 1, true);
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(400, 400), 2)), List.of(whole, remnant), RULES),
                Tasks.work(0.1));
        assertThat(nest.sheets()).extracting(sheet -> sheet.size().name()).containsExactlyInAnyOrder("remnant", "whole");
    }

    @Test
    void whatFitsNowhereIsLeftOver() {
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(900, 100), 2),
                new Demand(Tasks.rectangle(1500, 100), 1)),
                List.of(Tasks.sheet(1000, 1000)), RULES), Tasks.work(0.1));
        assertThat(nest.unplaced()).extracting(demand -> demand.piece().name() + ": " + demand.quantity())
                .containsExactly("1500.0 x 100.0: 1");
        assertThat(nest.sheets()).hasSize(1);
        Nest none = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(900, 100), 2)), List.of(), RULES),
                Tasks.work(0.1));
        assertThat(none.unplaced()).hasSize(1);
        assertThat(none.use()).isZero();
    }

    @Test
    void limitedSheetsRunOut() {
        SheetSize two = new SheetSize("two", 1000, 1000, 1, 2, false);
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(900, 900), 3)), List.of(two), RULES),
                Tasks.work(0.1));
        assertThat(nest.sheets()).hasSize(2);
        assertThat(nest.unplaced().get(0).quantity()).isEqualTo(1);
    }

    @Test
    void rectanglesAreLaidOutForAShearWhereThatCostsNoMore() {
        Nest nest = Nester.nest(new NestTask(List.of(new Demand(Tasks.rectangle(300, 200), 5),
                new Demand(Tasks.rectangle(150, 120), 7)),
                List.of(Tasks.sheet(1200, 800)), RULES), Tasks.work(0.2));
        assertThat(nest.sheets()).hasSize(1);
        assertThat(nest.sheets().get(0).cuts()).isNotEmpty();
    }

    @Test
    void theSameSeedGivesTheSameNest() {
        NestTask task = mixed();
        List<Placement> first = placements(Nester.nest(task, Tasks.work(0.3)));
        assertThat(placements(Nester.nest(task, Tasks.work(0.3)))).isEqualTo(first);
    }

    @Test
    void cancelKeepsTheBest() {
        List<Nest> heard = new ArrayList<>();
        Nest nest = Nester.nest(mixed(), new Nester.Options(5, 600, 1, heard::add, () -> !heard.isEmpty()));
        assertThat(nest.settled()).isFalse();
        assertThat(nest.unplaced()).isEmpty();
        assertThat(placements(nest)).isEqualTo(placements(heard.get(heard.size() - 1)));
    }

    @Test
    void everyNestHeardOfIsBetterThanTheOneBefore() {
        List<Nest> heard = new ArrayList<>();
        Nester.nest(mixed(), new Nester.Options(0.5, 600, 3, heard::add, () -> false));
        for (int i = 1; i < heard.size(); i++) {
            assertThat(heard.get(i).cost()).isLessThanOrEqualTo(heard.get(i - 1).cost());
        }
        heard.forEach(LayoutProof::valid);
    }

    @Test
    void theCheckFindsWhatIsWrong() {
        SheetSize sheet = Tasks.sheet(1000, 500);
        List<Placement> placements = List.of(new Placement(Tasks.circle(50), 0, new Vec2(60, 60)),
                new Placement(Tasks.circle(50), 0, new Vec2(164, 60)),
                new Placement(Tasks.rectangle(100, 100), 0, new Vec2(899, 100)));
        assertThat(NestCheck.problems(new SheetLayout(sheet, placements, Optional.empty(), List.of()), RULES)).containsExactly(
                "circle 50.0 (piece 2 of sheet) and circle 50.0 (piece 1 of sheet) are 4.000 mm apart",
                "100.0 x 100.0 (piece 3 of sheet) is nearer to the edge than the margin");
        NestRules bare = new NestRules(0, 0, 0);
        List<Placement> touching = List.of(placements.get(0), new Placement(Tasks.circle(50), 0, new Vec2(160, 60)));
        assertThat(NestCheck.problems(new SheetLayout(sheet, touching, Optional.empty(), List.of()), bare)).isEmpty();
        List<Placement> over = List.of(placements.get(0), new Placement(Tasks.circle(50), 0, new Vec2(159, 60)));
        assertThat(NestCheck.problems(new SheetLayout(sheet, over, Optional.empty(), List.of()), bare)).hasSize(1);
    }

    @Test
    void whatIsNoSheetIsRefused() {
        assertThatThrownBy(() -> new SheetSize("flat", 0, 10, 1, 1, false))
                .hasMessage("length, width, cost and number of a sheet must be over 0: flat");
        assertThatThrownBy(() -> new NestRules(-1, 0, 0)).hasMessage("spacing, margin and least remnant must be at least 0 mm");
        assertThatThrownBy(() -> Nester.Options.of(Double.NaN, 1)).hasMessageStartingWith("seconds must be at least 0");
    }

    private static NestTask mixed() {
        Path half = PathBuilder.from(new Vec2(0, -200)).arcTo(new Vec2(0, 200), Vec2.ZERO, true).close();
        return new NestTask(List.of(new Demand(new Piece("", "leaf", half, List.of(), List.of(0, 2)), 8),
                new Demand(Tasks.rectangle(700, 120), 6),
                new Demand(Tasks.circle(60), 10)), List.of(Tasks.sheet(1250, 1000)), RULES);
    }

    private static List<Placement> placements(Nest nest) {
        return nest.sheets().stream().flatMap(sheet -> sheet.placements().stream()).toList();
    }
}
