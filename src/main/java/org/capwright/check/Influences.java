package org.capwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.capwright.job.CapJob;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobInputs;
import org.capwright.job.JobReader;
import org.capwright.job.RefusedJobException;
import org.capwright.part.Cap;

/** What buys what: moves every input by one shop's step and sees what it does to a figure. */
public final class Influences {
    private static final double NOTHING = 1e-4;

    private Influences() {
    }

    /**
     * The inputs that move a figure.
     *
     * @param cap the cap
     * @param measure the figure
     * @return one step of each input that moves it, largest change first; changes under a ten-thousandth of the figure left out; upwards, or downwards where upwards is refused
     */
    public static List<Influence> of(Cap cap, Measure measure) {
        double now = measure.of(cap);
        List<Influence> influences = new ArrayList<>();
        for (Input<?> input : Inputs.all()) {
            if (countsFor(cap, input)) {
                step(cap, input, measure, now, 1).or(() -> step(cap, input, measure, now, -1))
                        .filter(influence -> Math.abs(influence.change()) > NOTHING * Math.abs(now)).ifPresent(influences::add);
            }
        }
        influences.sort(Comparator.comparingDouble((Influence influence) -> -Math.abs(influence.change())));
        return influences;
    }

    /** Not the limits, not what stands apart from the design, and not the thickness of a sheet that goes by its gauge. */
    private static boolean countsFor(Cap cap, Input<?> input) {
        boolean byGauge = input.name().equals("thickness") && input.mayBeAuto() && cap.job().find(input).isEmpty();
        return !input.path().startsWith("limits.") && Inputs.ofDesign(input.path()) && !input.path().contains("[]") && !byGauge;
    }

    private static Optional<Influence> step(Cap cap, Input<?> input, Measure measure, double now, int steps) {
        Optional<String> to = ShopSize.stepped(cap, input, steps);
        Optional<String> typed = cap.job().text().at(input.path()).filter(text -> !text.equals(Input.AUTO));
        Optional<String> from = typed.or(() -> ShopSize.stepped(cap, input, 0));
        return to.flatMap(text -> solved(cap, input, text)).map(moved -> new Influence(input, from.orElseThrow(), to.get(),
                ShopSize.step(input, cap.job().get(JobInputs.UNITS)), measure.of(moved) - now));
    }

    private static Optional<Cap> solved(Cap cap, Input<?> input, String text) {
        Optional<CapJob> job = JobReader.reread(cap.job(), input, text).job();
        try {
            return job.map(Cap::solve);
        } catch (RefusedJobException e) {
            return Optional.empty();
        }
    }
}
