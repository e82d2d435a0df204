package org.capwright.part;

import java.util.List;
import java.util.stream.IntStream;
import org.capwright.metal.Bend;

/**
 * The shrinking of a leaf's curved drip flange.
 *
 * @param growthMm how much smaller the blank's radius could be if none of the gathered metal thickened
 * @param blankRadiusMm radius of the blank's curved edge
 * @param takeUpMm length to be gathered along the lip, all arcs of the leaf together
 * @param strain the same as a share of the blank's edge
 * @param crimps crimps at the chosen bite
 * @param passes what the lip measures after each pass
 */
public record Shrink(double growthMm, double blankRadiusMm, double takeUpMm, double strain, int crimps,
                     List<Pass> passes) {
    /** Keeps its own copy. */
    public Shrink {
        passes = List.copyOf(passes);
    }

    /**
     * One pass.
     *
     * @param turnRad turn of the flange after it
     * @param lipArcMm length of the lip's mid-surface arc after it, all arcs of the leaf together
     */
    public record Pass(double turnRad, double lipArcMm) {
    }

    /** What the shop decides about shrinking. */
    record Choice(double kappa, double trimMm, int passes, double biteMm) {
    }

    /**
     * The shrinking of a curved flange, handbook form {@code R_b = R_l + f - BD - kappa G + trim}.
     *
     * @param bend the flange's bend
     * @param radiusMm leaf radius, outside of the formed flange
     * @param depthMm flange depth over all
     * @param arcRad angle of all the leaf's arcs together
     */
    static Shrink of(Bend bend, double radiusMm, double depthMm, double arcRad, Choice choice) {
        double growth = growthMm(bend, radiusMm, depthMm);
        double blank = radiusMm + depthMm - bend.deductionMm() - choice.kappa() * growth + choice.trimMm();
        double takeUp = arcRad * (blank - radiusMm);
        List<Pass> passes = IntStream.rangeClosed(1, choice.passes())
                .mapToObj(i -> pass(bend, radiusMm, blank, arcRad, bend.turnRad() * i / choice.passes())).toList();
        return new Shrink(growth, blank, takeUp, (blank - radiusMm) / blank,
                (int) Math.ceil(takeUp / choice.biteMm()), passes);
    }

    /**
     * Growth: blank radius with the meridian kept, less blank radius with the area of the mid-surface kept (flat disc,
     * bend, wall, by revolution). For f much smaller than R it nears {@code f^2 / (2R)}.
     *
     * @param bend the flange's bend
     * @param radiusMm leaf radius, outside of the formed flange
     * @param depthMm flange depth over all
     * @return mm
     */
    public static double growthMm(Bend bend, double radiusMm, double depthMm) {
        FlangeProfile profile = FlangeProfile.of(bend, depthMm);
        double flat = radiusMm - profile.setbackMm();
        double sameArea = Math.sqrt(flat * flat + 2 * (flat * profile.lengthMm() + profile.outMm2()));
        return flat + profile.lengthMm() - sameArea;
    }

    private static Pass pass(Bend full, double radiusMm, double blankMm, double arcRad, double turnRad) {
        Bend bend = new Bend(turnRad, full.insideRadiusMm(), full.thicknessMm(), full.neutralFactor());
        double flat = radiusMm - full.outsideSetbackMm();
        double wall = blankMm - flat - bend.allowanceMm();
        double middle = bend.insideRadiusMm() + bend.thicknessMm() / 2;
        double lip = flat + middle * Math.sin(turnRad) + wall * Math.cos(turnRad);
        return new Pass(turnRad, arcRad * lip);
    }
}
