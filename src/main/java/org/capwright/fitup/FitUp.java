package org.capwright.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.blank.Writing;
import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.geom.Oval;
import org.capwright.job.CapJob;
import org.capwright.job.StackInputs;
import org.capwright.part.Cap;
import org.capwright.swing.LeafSize;
import org.capwright.swing.MeasuredSwing;
import org.capwright.swing.MeasuredWork;
import org.capwright.units.ShopFormat;

/**
 * The cap that was made, from its readings, and whether it will clear. Pure: the same job gives the same result.
 *
 * @param drawn the cap as drawn
 * @param stack outline of the stack
 * @param sleeve outline of the sleeve's outside
 * @param hood outline of the hood's inside
 * @param rederived the cap with the cut parts held and the rest derived from them
 * @param work what is not round, central or straight
 * @param swing its swing
 * @param verdicts every clearance of both sides
 * @param notes what the readings tell and what they do not, in plain words
 */
public record FitUp(Cap drawn, OvalFit stack, OvalFit sleeve, OvalFit hood, Rederived rederived, MeasuredWork work,
        MeasuredSwing swing,
                    List<FitVerdict> verdicts, List<String> notes) {
    /** Keeps its own copies. */
    public FitUp {
        verdicts = List.copyOf(verdicts);
        notes = List.copyOf(notes);
    }

    /**
     * Fits the readings of a job and swings what was made.
     *
     * @param job the job with its readings
     * @return fit and verdict
     * @throws org.capwright.job.RefusedJobException where no such cap can exist as drawn; parts that were made and contradict
     *        each other
     *         are told in {@link Rederived#conflicts}
     */
    public static FitUp of(CapJob job) {
        Cap drawn = Cap.solve(job);
        OvalFit stack = OvalFit.of(Readings.stack(job), Oval.circle(job.get(StackInputs.OUTSIDE_DIAMETER).mm() / 2));
        OvalFit sleeve = OvalFit.of(Readings.sleeve(job), Oval.circle(drawn.sleeve().outsideRadiusMm()));
        OvalFit hood = OvalFit.of(Readings.hood(drawn, sleeve.outline()), Oval.circle(drawn.hood().insideRadiusMm()));
        List<LeafSize> leaves = LeafReadings.sizes(drawn, sleeve.outline());
        Rederived rederived = HeldParts.of(drawn, stack, sleeve, hood, leaves);
        return swung(drawn, stack, sleeve, hood, rederived, work(rederived.cap(), sleeve, hood, leaves));
    }

    private static MeasuredWork work(Cap made, OvalFit sleeve, OvalFit hood, List<LeafSize> leaves) {
        MeasuredWork drawn = MeasuredWork.asDrawn(made);
        return new MeasuredWork(hood.terms().radius() ? hood.outline() : drawn.hood(),
                sleeve.terms().radius() ? sleeve.outline() : drawn.sleeve(), LeafReadings.rods(made), leaves);
    }

    private static FitUp swung(Cap drawn, OvalFit stack, OvalFit sleeve, OvalFit hood, Rederived rederived, MeasuredWork work) {
        MeasuredSwing swing = MeasuredSwing.of(rederived.cap(), work);
        return new FitUp(drawn, stack, sleeve, hood, rederived, work, swing, FitVerdicts.of(rederived.cap(), swing, hood),
                notes(drawn, stack, sleeve, hood, rederived, work));
    }

    private static List<String> notes(Cap drawn, OvalFit stack, OvalFit sleeve, OvalFit hood, Rederived rederived,
            MeasuredWork work) {
        ShopFormat format = Writing.of(drawn).format();
        List<String> notes = new ArrayList<>();
        Conclusions.suspects(stack, format, notes);
        Conclusions.suspects(sleeve, format, notes);
        notes.addAll(Conclusions.hood(hood, format));
        notes.addAll(StopEnds.notes(rederived.cap(), work.hood(), format));
        return notes;
    }

    /**
     * The same work, otherwise placed or dressed.
     *
     * @param other what is not round, central or straight then
     * @return fit-up with its swing
     */
    public FitUp with(MeasuredWork other) {
        return swung(drawn, stack, sleeve, hood, rederived, other);
    }

    /**
     * The same without the readings that disagree with the rest.
     *
     * @return fit-up with the hood fitted without them; empty where none disagrees
     */
    public Optional<FitUp> withoutSuspects() {
        return hood.withoutSuspects().map(fit -> {
            List<LeafSize> leaves = work.leaves();
            Rederived again = HeldParts.of(drawn, stack, sleeve, fit, leaves);
            return swung(drawn, stack, sleeve, fit, again, work(again.cap(), sleeve, fit, leaves));
        });
    }

    /**
     * The cap that was made.
     *
     * @return solved with its measured sizes
     */
    public Cap made() {
        return rederived.cap();
    }

    /**
     * The worst verdict, contradictions among held parts included.
     *
     * @return foul if anything is, else tight if anything is, else clear
     */
    public Verdict verdict() {
        Verdict swung = verdicts.stream().map(FitVerdict::verdict).min(Comparator.naturalOrder()).orElse(Verdict.CLEAR);
        Verdict held = rederived.contradictions().stream().map(Check::verdict).min(Comparator.naturalOrder()).orElse(Verdict.CLEAR);
        return swung.compareTo(held) <= 0 ? swung : held;
    }

    /**
     * The clearance that decides: the worst verdict's, of these the one with the least margin.
     *
     * @return its verdict, place and uncertainty
     */
    public FitVerdict deciding() {
        return verdicts.stream().min(Comparator.comparing(FitVerdict::verdict).thenComparingDouble(one -> one.check().margin())).orElseThrow();
    }
}
