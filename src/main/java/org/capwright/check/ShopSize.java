package org.capwright.check;

import java.util.Optional;
import org.capwright.job.Input;
import org.capwright.job.JobInputs;
import org.capwright.job.Kind;
import org.capwright.part.AutoValues;
import org.capwright.part.Cap;
import org.capwright.units.Angle;
import org.capwright.units.Length;
import org.capwright.units.ShopFormat;
import org.capwright.units.UnitSystem;

/**
 * Steps an input by what a shop would: 1/16 in or 1 mm (1/64 in or 0.1 mm where the whole range is under an inch, such as
 * bend radii), one gauge, one piece, one degree.
 */
public final class ShopSize {
    private static final double FINE_RANGE_MM = 12.7;
    private static final double ROUNDING = 1e-6;

    private ShopSize() {
    }

    /**
     * An input's value so many steps on.
     *
     * @param cap the cap it has its value in
     * @param input the input
     * @param steps how many, either way
     * @return what to type; empty where the input has no value that can be stepped
     */
    public static Optional<String> stepped(Cap cap, Input<?> input, int steps) {
        UnitSystem system = cap.job().get(JobInputs.UNITS);
        return AutoValues.of(cap, input).flatMap(value -> {
            if (value instanceof Length length) {
                return Optional.of(length(length, steps, stepMm(input, system), system));
            }
            if (value instanceof Integer count && input.kind() == Kind.COUNT) {
                return Optional.of(Integer.toString(count + steps));
            }
            return value instanceof Angle angle ? Optional.of(angle(angle, steps)) : Optional.empty();
        });
    }

    /** How long a step of an input is, in words. */
    static String step(Input<?> input, UnitSystem system) {
        if (input.kind() == Kind.LENGTH) {
            double mm = stepMm(input, system);
            return new ShopFormat(system, 64).length(Length.ofMm(mm));
        }
        return input.kind() == Kind.ANGLE ? "1 deg" : input.name().equals("gauge") ? "one gauge" : "1";
    }

    private static double stepMm(Input<?> input, UnitSystem system) {
        boolean fine = input.most().filter(most -> Kind.LENGTH.reader().read(most,
                UnitSystem.INCH).mm() <= FINE_RANGE_MM).isPresent();
        if (system == UnitSystem.INCH) {
            return Length.MM_PER_INCH / (fine ? 64 : 16);
        }
        return fine ? 0.1 : 1;
    }

    /** The multiples of the step beyond the value, in the direction of the steps. */
    private static String length(Length from, int steps, double stepMm, UnitSystem system) {
        double multiples = from.mm() / stepMm;
        double whole = steps == 0 ? multiples : steps > 0 ? Math.floor(multiples + ROUNDING) : Math.ceil(multiples - ROUNDING);
        Length to = Length.ofMm((whole + steps) * stepMm);
        return new ShopFormat(system, 64).plain(to) + (system == UnitSystem.INCH ? " in" : " mm");
    }

    private static String angle(Angle from, int steps) {
        double whole = steps == 0 ? from.degrees() : steps > 0 ? Math.floor(from.degrees() + ROUNDING)
                : Math.ceil(from.degrees() - ROUNDING);
        return Math.round(whole + steps) + " deg";
    }
}
