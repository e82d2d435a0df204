package org.capwright.part;

import org.capwright.metal.Bend;

/**
 * Mid-surface of a flange in section: a bend and a straight wall, from where the flat ends. {@code out} counts along
 * the flat, away from it; {@code down} from the mid-plane of the flat. The integrals run along the section.
 *
 * @param setbackMm from the mould line back to where the flat ends
 * @param lengthMm length of the section
 * @param outMm2 integral of out
 * @param downMm2 integral of down
 * @param outOutMm3 integral of out squared
 * @param outDownMm3 integral of out times down
 */
record FlangeProfile(double setbackMm, double lengthMm, double outMm2, double downMm2, double outOutMm3,
                     double outDownMm3) {
    /**
     * The flange of a bend.
     *
     * @param bend its bend
     * @param depthMm depth over all, along the flange's outside from the mould line
     */
    static FlangeProfile of(Bend bend, double depthMm) {
        double beta = bend.turnRad();
        double s = Math.sin(beta);
        double c = Math.cos(beta);
        double r = bend.insideRadiusMm() + bend.thicknessMm() / 2;
        double wall = depthMm - bend.outsideSetbackMm();
        double out = r * s;
        double down = r * (1 - c);
        return new FlangeProfile(bend.outsideSetbackMm(), r * beta + wall,
                r * r * (1 - c) + out * wall + c * wall * wall / 2,
                r * r * (beta - s) + down * wall + s * wall * wall / 2,
                r * r * r * (beta / 2 - Math.sin(2 * beta) / 4)
                        + wall * (out * out + out * c * wall + c * c * wall * wall / 3),
                r * r * r * (1 - c - s * s / 2)
                        + wall * (out * down + (out * s + down * c) * wall / 2 + c * s * wall * wall / 3));
    }

    /** Area of the section revolved through {@code angleRad} about an axis {@code radiusMm} from where the flat ends. */
    double revolvedAreaMm2(double radiusMm, double angleRad) {
        return angleRad * (radiusMm * lengthMm + outMm2);
    }

    /** Integral of the squared distance from that axis along the section. */
    double squaredRadiusMm3(double radiusMm) {
        return radiusMm * radiusMm * lengthMm + 2 * radiusMm * outMm2 + outOutMm3;
    }

    /** Integral of distance from that axis times down along the section. */
    double radiusDownMm3(double radiusMm) {
        return radiusMm * downMm2 + outDownMm3;
    }
}
