package org.capwright.export.figure;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.capwright.check.Check;
import org.capwright.check.Remedies;
import org.capwright.check.Remedy;
import org.capwright.check.Verdict;
import org.capwright.stock.StockFit;

/**
 * A check as it is printed among the figures.
 *
 * @param id its name
 * @param verdict clear, tight or foul
 * @param value what was found
 * @param limit what is asked for
 * @param margin how far it is on the good side
 * @param unit unit of the three
 * @param at where and at which opening; left out where it has no place
 * @param source where the limit comes from
 * @param remedy what to do; left out where it is clear
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record CheckEntry(String id, String verdict, double value, double limit, double margin, String unit, Place at, String source,
                  String remedy) {
    /** A place in mm, and an opening in degrees. */
    record Place(double x, double y, double z, double opening) {
    }

    static CheckEntry of(Check check, List<Remedy> remedies) {
        Place place = check.place().map(p -> new Place(p.at().x(), p.at().y(), p.at().z(), Math.toDegrees(p.openRad())))
                .orElse(null);
        return new CheckEntry(check.id(), check.verdict().word(), check.quantity().inUnit(check.value()),
                check.quantity().inUnit(check.limit().value()), check.quantity().inUnit(check.margin()), check.quantity().unit(),
                        place,
                check.limit().source(), check.verdict() == Verdict.CLEAR ? null : StockFit.made(check) ? StockFit.REMEDY
                        : Remedies.sentence(remedies));
    }
}
