package org.capwright.fitup;

import org.capwright.check.Check;
import org.capwright.check.Verdict;
import org.capwright.units.ShopFormat;

/**
 * What becomes of one clearance of what was made.
 *
 * @param check the clearance against its limit, with place and opening
 * @param side +1 or -1
 * @param uncertaintyMm how far the clearance may be off by the readings' accuracy, either way, 19 times in 20
 */
public record FitVerdict(Check check, int side, double uncertaintyMm) {
    /**
     * Clear, tight or foul.
     *
     * @return the verdict on the value itself
     */
    public Verdict verdict() {
        return check.verdict();
    }

    /**
     * Whether the readings are good enough for the verdict.
     *
     * @return false where it could be another within the uncertainty
     */
    public boolean sure() {
        return check.limit().verdict(check.value() - uncertaintyMm) == verdict()
                && check.limit().verdict(check.value() + uncertaintyMm) == verdict();
    }

    /**
     * In one line.
     *
     * @param format how numbers are printed
     * @return such as {@code leaf 1 to hood, +x side 5/16 in, at least 1/4 in, give or take 1/32 in}
     */
    public String line(ShopFormat format) {
        return check.line(format) + (uncertaintyMm > 0 ? ", give or take " + check.quantity().words(uncertaintyMm, format) : "");
    }
}
