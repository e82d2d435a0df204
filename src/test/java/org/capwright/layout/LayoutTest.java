package org.capwright.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.capwright.geom.Path;
import org.capwright.geom.Segment;
import org.capwright.geom.Vec2;
import org.capwright.part.Cap;
import org.capwright.part.Jobs;
import org.junit.jupiter.api.Test;

/** Views, steps and sign-off rows of the worked cap, against the trade handbook's worked figures (inches). */
class LayoutTest {
    private final Cap cap = Cap.solve(Jobs.kiln());
    private final Layout layout = Layout.of(cap);

    @Test
    void everyPartIsReferredToSomewhere() {
        everyPartIsReferredTo(layout);
        Cap four = Cap.solve(Jobs.kilnWith(Map.of("stack.outsideDiameter", "36 in", "leaves.count", "4",
                "gutter.insideWidth", "auto", "gutter.depth", "auto", "hood.aboveRim", "auto", "hood.beads[1].fromTop", "3 in")));
        everyPartIsReferredTo(Layout.of(four));
    }

    private static void everyPartIsReferredTo(Layout layout) {
        List<String> words = layout.views().stream().flatMap(view -> view.notes().stream()).map(View.Note::words).toList();
        for (PartList.Item item : layout.parts().items()) {
            assertThat(words).as(item.name()).anyMatch(text -> text.startsWith(item.number() + "  " + item.name()));
        }
    }

    /** Section 3 to 8: bore 18.125, hood inside 22.2281, rods 23.0698 long, web 1.9863, leaf circle 2 x 9.6537. */
    @Test
    void dimensionsAreTheWorkedFigures() {
        assertThat(inches("section")).anySatisfy(near(18.125)).anySatisfy(near(22.2281)).anySatisfy(near(18));
        assertThat(inches("plan")).anySatisfy(near(23.0698)).anySatisfy(near(2 * 9.6537)).anySatisfy(near(1));
        assertThat(inches("standoff")).anySatisfy(near(1.9863));
        assertThat(inches("middle gutter")).anySatisfy(near(0.5)).anySatisfy(near(1));
    }

    private static java.util.function.Consumer<Double> near(double inches) {
        return value -> assertThat(value).isCloseTo(inches, within(0.0001));
    }

    private List<Double> inches(String beginning) {
        return view(beginning).spans().stream().map(span -> span.mm() / 25.4).toList();
    }

    private View view(String beginning) {
        return layout.views().stream().filter(view -> view.title().startsWith(beginning)).findFirst().orElseThrow();
    }

    /** Each dimension ends on something that is drawn: on a line of the view, a tenth of a millimetre near. */
    @Test
    void dimensionsEndOnLines() {
        for (View view : layout.views()) {
            for (View.Span span : view.spans()) {
                boolean below = span.side() == View.Side.BELOW;
                for (double at : new double[] {span.fromMm(), span.toMm()}) {
                    assertThat(coordinates(view, below)).as("%s: %s", view.title(), span)
                            .anyMatch(value -> Math.abs(value - at) < 0.1);
                }
            }
        }
    }

    /** Ends of lines, middles and extremes of arcs. */
    private static List<Double> coordinates(View view, boolean x) {
        return view.lines().stream().map(View.Line::path).map(Path::segments).flatMap(List::stream).flatMap(LayoutTest::points)
                .map(p -> x ? p.x() : p.y()).toList();
    }

    private static Stream<Vec2> points(Segment segment) {
        Stream<Vec2> ends = Stream.of(segment.from(), segment.to(), segment.from().plus(segment.to()).times(0.5));
        if (segment instanceof Segment.Arc arc) {
            return Stream.concat(ends, Stream.of(arc.center(), new Vec2(arc.bounds().minX(), arc.bounds().minY()),
                    new Vec2(arc.bounds().maxX(), arc.bounds().maxY())));
        }
        return ends;
    }

    /** Handbook: section 5 girths, section 8 bends; girth of the stack is pi times 18. */
    @Test
    void stepsCarryTheJobsOwnNumbers() {
        List<String> actions = BuildSteps.of(cap).stream().flatMap(step -> step.actions().stream()).toList();
        assertThat(actions).anyMatch(text -> text.contains("Tape round the stack reads 56 9/16 in -.014 (diameter 18 in)"))
                .anyMatch(text -> text.startsWith("Cut 57 3/32 in +.010 x"))
                        .anyMatch(text -> text.contains("inside diameter 18 1/8 in"))
                .anyMatch(text -> text.startsWith("Bend inner 86.9 deg, outer 92.6 deg"))
                .anyMatch(text -> text.contains("cut 2 to 23 1/16 in +.007"));
        assertThat(BuildSteps.of(cap).stream().flatMap(step -> step.cautions().stream()))
                .anyMatch(text -> text.contains("Zinc fume"))
                .anyMatch(text -> text.contains("Leaves pinch")).anyMatch(text -> text.contains("Sheet edges cut"));
    }

    /** Rods go in from outside before the leaves are fixed to them; nothing is welded for good before the trial fit. */
    @Test
    void tacksBecomeWeldsOnlyAfterTheTrialFit() {
        List<BuildStep> steps = BuildSteps.of(cap);
        BuildStep rods = steps.stream().filter(step -> step.title().startsWith("Doublers")).findFirst().orElseThrow();
        BuildStep trial = steps.stream().filter(step -> step.title().startsWith("Trial fit")).findFirst().orElseThrow();
        assertThat(steps.indexOf(trial)).isGreaterThan(steps.indexOf(rods));
        assertThat(rods.actions()).anyMatch(text -> text.contains("from outside"))
                .anyMatch(text -> text.contains("tack each rod"))
                .noneMatch(text -> text.contains("titch weld"));
        assertThat(trial.actions()).anyMatch(text -> text.contains("stitch weld the rods"));
        assertThat(steps).filteredOn(step -> !step.title().equals("Finish") && step.actions().toString().contains("weld"))
                .allMatch(step -> step.cautions().toString().contains("fume"));
    }

    /** Four leaves: the middle gutter's notches are not as deep as those of the outer gutters. */
    @Test
    void notchesAreNamedByTheirGutters() {
        Cap four = Cap.solve(Jobs.kilnWith(Map.of("stack.outsideDiameter", "36 in", "leaves.count", "4",
                "gutter.insideWidth", "auto",
                "gutter.depth", "auto", "hood.aboveRim", "auto", "hood.beads[1].fromTop", "3 in")));
        List<String> actions = BuildSteps.of(four).stream().flatMap(step -> step.actions().stream()).toList();
        assertThat(actions).anyMatch(text -> text.startsWith("Cut 2 notches for the mouths of gutter 1, "))
                .anyMatch(text -> text.startsWith("Cut 4 notches for the mouths of gutter 2, "));
    }

    @Test
    void aluminiumIsNotWeldedToSteel() {
        Cap light = Cap.solve(Jobs.kilnWith(Map.of("leaves.metal", "aluminium")));
        assertThat(BuildSteps.of(light).toString()).contains("can't be welded to each other").doesNotContain("stitch weld");
        assertThat(BuildSteps.of(cap).toString()).contains("stitch weld");
    }

    /** A finish that fits the metal: a coating is restored only where there is one. */
    @Test
    void finishFitsTheMetal() {
        assertThat(finish(cap)).contains("restore the coating");
        assertThat(finish(Cap.solve(Jobs.kilnWith(Map.of("sleeve.metal", "stainless 304", "hood.metal", "stainless 304",
                "leaves.metal", "stainless 304"))))).contains("heat tint").doesNotContain("coating");
    }

    private static String finish(Cap cap) {
        List<BuildStep> steps = BuildSteps.of(cap);
        return steps.get(steps.size() - 1).actions().toString();
    }

    @Test
    void signOffHasNominalAndToleranceForEach() {
        List<SignOff.Row> rows = SignOff.of(cap);
        assertThat(rows).contains(new SignOff.Row("sleeve, inside diameter", "18 1/8 in", "+ 0.043 in, - 0"))
                .contains(new SignOff.Row("leaf 1, opening at the stop, both leaves", "85.0 deg", "80.0 deg to 88.0 deg"));
        assertThat(rows.stream().filter(row -> row.what().startsWith("gap sleeve to hood"))).hasSize(6);
        assertThat(rows).allMatch(row -> !row.tolerance().isEmpty());
        // 1.2 mm is 0.0472 in
        assertThat(rows).contains(new SignOff.Row("sleeve, height", "10 in", "\u00b1 0.047 in"));
    }

    /** EN 1506 (one copy): 500 mm + 1.1, 630 + 1.2. ISO 2768-1 c (from memory): 30 to 120 mm 0.8, 120 to 400 1.2. */
    @Test
    void tolerances() {
        assertThat(Tolerances.boreMm(500)).hasValue(1.1);
        assertThat(Tolerances.boreMm(500.1)).hasValue(1.2);
        assertThat(Tolerances.boreMm(1300)).isEmpty();
        assertThat(Tolerances.linearMm(50)).hasValue(0.8);
        assertThat(Tolerances.linearMm(254)).hasValue(1.2);
    }

    @Test
    void bentSheetKeepsItsThickness() {
        Path sheet = Shapes.sheet(List.of(new Vec2(0, 10), new Vec2(0, 0), new Vec2(20, 0)), 1);
        assertThat(sheet.area()).isCloseTo(-(10 + 20 - 1) * 1.0 * -1, within(1e-9));
        assertThat(Shapes.mirrored(Path.circle(new Vec2(3, 2), 1)).bounds().maxX()).isCloseTo(-2, within(1e-9));
    }
}
