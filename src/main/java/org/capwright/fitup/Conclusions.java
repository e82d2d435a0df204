package org.capwright.fitup;

import java.util.ArrayList;
import java.util.List;
import org.capwright.check.Quantity;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.units.Angle;
import org.capwright.units.ShopFormat;

/** Says in plain words what readings tell and what they do not. */
final class Conclusions {
    /** A misfit beyond this many times the stated accuracy is worth a word. */
    private static final double MISFIT = 1.5;

    private Conclusions() {
    }

    static List<String> hood(OvalFit fit, ShopFormat format) {
        List<String> all = new ArrayList<>();
        Terms terms = fit.terms();
        if (!terms.radius()) {
            all.add("The hood was not measured: it is taken round, central and of the size drawn.");
            return all;
        }
        if (terms.shift() == 0) {
            all.add("Where the hood stands is not known: it is taken central. Measure the gap to the sleeve at three standoffs or more.");
        } else if (terms.shift() == 1) {
            all.add("Where the hood stands is known along one direction only. Measure gaps at three or more azimuths all round.");
        }
        if (terms.ovality() == 0) {
            all.add("The hood's ovality is not known: it is taken round. Measure diameters at three or more azimuths, such as 0, 60 and 120 deg.");
        } else if (terms.ovality() == 1) {
            all.add("The hood's ovality is known along one direction only. Measure one more diameter, half way between two others.");
        }
        spare(fit, all);
        suspects(fit, format, all);
        return all;
    }

    private static void spare(OvalFit fit, List<String> all) {
        if (fit.freedom() == 0) {
            all.add("There are just as many readings of the hood as the fit needs: a mistyped one would not show. Take one or two more.");
        } else if (fit.suspects().isEmpty() && fit.scale() > MISFIT) {
            all.add("The readings of the hood do not agree with each other as well as their accuracy says, and none stands out: "
                    + "the hood may have dents or lobes, or several readings are off.");
        }
    }

    static void suspects(OvalFit fit, ShopFormat format, List<String> all) {
        for (Residual residual : fit.suspects()) {
            String at = residual.reading().kind() == Reading.Kind.GIRTH ? "" : " at "
                    + format.angle(Angle.ofRad(residual.reading().azimuthRad()));
            String path = residual.reading().path();
            all.add("Measure again: " + Inputs.at(path).map(Input::label).orElse("") + at + " (" + path + ") reads "
                    + Quantity.LENGTH.words(residual.reading().valueMm(), format)
                    + ", which is " + Quantity.LENGTH.words(Math.abs(residual.withoutMm()), format)
                    + (residual.withoutMm() > 0 ? " more" : " less") + " than all the others say.");
        }
    }
}
