package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.capwright.fitup.Reading.Kind;
import org.capwright.geom.Oval;
import org.capwright.job.CapJob;
import org.capwright.job.FitInputs;
import org.capwright.job.Input;
import org.capwright.part.Cap;
import org.capwright.units.Angle;
import org.capwright.units.Length;

/** The readings of the round parts of a job. */
final class Readings {
    private final CapJob job;

    private Readings(CapJob job) {
        this.job = job;
    }

    /** Readings of the stack's outside. */
    static List<Reading> stack(CapJob job) {
        return new Readings(job).girthAnd(FitInputs.STACK_GIRTH, FitInputs.STACK, FitInputs.STACK_AZIMUTH,
                FitInputs.STACK_DIAMETER);
    }

    /** Readings of the sleeve's outside. */
    static List<Reading> sleeve(CapJob job) {
        return new Readings(job).girthAnd(FitInputs.SLEEVE_GIRTH, FitInputs.SLEEVE, FitInputs.SLEEVE_AZIMUTH,
                FitInputs.SLEEVE_DIAMETER);
    }

    /** Readings of the hood's inside; the gaps count from the sleeve. */
    static List<Reading> hood(Cap cap, Oval sleeve) {
        Readings readings = new Readings(cap.job());
        List<Reading> all = new ArrayList<>();
        for (int i = 0; i < readings.job.text().listSize(FitInputs.HOOD_BORE); i++) {
            readings.bore(i).ifPresent(all::add);
        }
        for (int i = 0; i < readings.job.text().listSize(FitInputs.GAPS); i++) {
            readings.gap(i, cap, sleeve).ifPresent(all::add);
        }
        return all;
    }

    private List<Reading> girthAnd(Input<Length> girth, String list, Input<Angle> azimuth, Input<Length> diameter) {
        List<Reading> all = new ArrayList<>();
        job.find(girth).ifPresent(mm -> all.add(new Reading(girth.path(), Kind.GIRTH, 0, mm.mm(), accuracyMm(), 0)));
        for (int i = 0; i < job.text().listSize(list); i++) {
            Input<Length> at = diameter.at(i);
            double rad = job.get(azimuth.at(i)).rad();
            job.find(at).ifPresent(mm -> all.add(new Reading(at.path(), Kind.DIAMETER, rad, mm.mm(), accuracyMm(), 0)));
        }
        return all;
    }

    private Optional<Reading> bore(int i) {
        double rad = job.get(FitInputs.HOOD_AZIMUTH.at(i)).rad();
        double accuracy = accuracyMm(FitInputs.HOOD_ACCURACY.at(i));
        Input<Length> diameter = FitInputs.HOOD_DIAMETER.at(i);
        Input<Length> radius = FitInputs.HOOD_RADIUS.at(i);
        return job.find(diameter).map(mm -> new Reading(diameter.path(), Kind.DIAMETER, rad, mm.mm(), accuracy, 0))
                .or(() -> job.find(radius).map(mm -> new Reading(radius.path(), Kind.RADIUS, rad, mm.mm(), accuracy, 0)));
    }

    private Optional<Reading> gap(int i, Cap cap, Oval sleeve) {
        double rad = job.find(FitInputs.GAP_AZIMUTH.at(i)).map(Angle::rad).orElseGet(() -> cap.standoff().azimuthRad(i));
        Input<Length> gap = FitInputs.GAP.at(i);
        return job.find(gap).map(mm -> new Reading(gap.path(), Kind.GAP, rad, mm.mm(), accuracyMm(FitInputs.GAP_ACCURACY.at(i)),
                sleeve.fromOriginMm(rad)));
    }

    private double accuracyMm() {
        return job.get(FitInputs.ACCURACY).mm();
    }

    private double accuracyMm(Input<Length> own) {
        return job.find(own).map(Length::mm).orElseGet(this::accuracyMm);
    }
}
