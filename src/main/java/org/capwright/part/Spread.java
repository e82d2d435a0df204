package org.capwright.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Places evenly spaced things round a cylinder as far as possible from everything else on it. */
public final class Spread {
    private static final double SAME_RAD = 1e-9;

    private Spread() {
    }

    /**
     * Something that takes room on a cylinder.
     *
     * @param azimuthRad its middle
     * @param halfWidthRad half its width
     */
    public record Feature(double azimuthRad, double halfWidthRad) {
    }

    /**
     * The azimuth of the first of several evenly spaced things that maximises the least distance to every feature; among
     * equals the smallest.
     *
     * @param count how many things
     * @param features what is there
     * @return azimuth in [0, 2 pi / count); 0 where there are no features
     */
    public static double farthest(int count, List<Feature> features) {
        double pitch = 2 * Math.PI / count;
        double best = 0;
        double bestDistance = leastDistanceRad(count, 0, features);
        for (double azimuth : candidates(pitch, features)) {
            double distance = leastDistanceRad(count, azimuth, features);
            boolean better = distance > bestDistance + SAME_RAD;
            boolean asGood = distance > bestDistance - SAME_RAD && azimuth < best;
            if (better || asGood) {
                best = azimuth;
                bestDistance = distance;
            }
        }
        return best;
    }

    /**
     * Least distance from evenly spaced things to the edges of the features.
     *
     * @param count how many things
     * @param firstRad azimuth of the first
     * @param features what is there
     * @return radians, negative where one lies within a feature; pi / count where there are no features
     */
    public static double leastDistanceRad(int count, double firstRad, List<Feature> features) {
        double pitch = 2 * Math.PI / count;
        double least = pitch / 2;
        for (Feature feature : features) {
            double off = Math.abs(Math.IEEEremainder(firstRad - feature.azimuthRad(), pitch));
            least = Math.min(least, off - feature.halfWidthRad());
        }
        return least;
    }

    /**
     * The distance is piecewise linear in the azimuth. Folded into one pitch, the features leave gaps, and it is greatest in
     * the middle of one. Where they leave none, it is midway between two features' edges, and any two may be those.
     */
    private static List<Double> candidates(double pitch, List<Feature> features) {
        List<Feature> folded = features.stream().map(feature -> new Feature(fold(low(feature), pitch) + feature.halfWidthRad(),
                feature.halfWidthRad())).sorted(Comparator.comparingDouble(Spread::low)).toList();
        List<Double> candidates = new ArrayList<>();
        double reach = folded.stream().mapToDouble(Spread::high).max().orElse(0) - pitch;
        for (Feature feature : folded) {
            if (low(feature) > reach) {
                candidates.add(tidy(fold((reach + low(feature)) / 2, pitch), pitch));
            }
            reach = Math.max(reach, high(feature));
        }
        return candidates.isEmpty() ? betweenAnyTwo(pitch, folded) : candidates;
    }

    private static List<Double> betweenAnyTwo(double pitch, List<Feature> features) {
        List<Double> candidates = new ArrayList<>();
        for (Feature a : features) {
            for (Feature b : features) {
                candidates.add(tidy(fold((high(a) + low(b)) / 2, pitch), pitch));
                candidates.add(tidy(fold((high(a) + low(b) + pitch) / 2, pitch), pitch));
            }
        }
        return candidates;
    }

    private static double low(Feature feature) {
        return feature.azimuthRad() - feature.halfWidthRad();
    }

    private static double high(Feature feature) {
        return feature.azimuthRad() + feature.halfWidthRad();
    }

    private static double fold(double azimuth, double pitch) {
        return azimuth - pitch * Math.floor(azimuth / pitch);
    }

    /** Rounding must not turn 0 into a whole pitch. */
    private static double tidy(double azimuth, double pitch) {
        return azimuth < SAME_RAD || pitch - azimuth < SAME_RAD ? 0 : azimuth;
    }
}
