package org.capwright.fitup;

import java.util.Map;
import org.capwright.job.JobText;

/**
 * One reading to take.
 *
 * @param section what it belongs to, such as {@code hood}
 * @param path where it is typed, such as {@code fit.hoodBore[0].diameter}
 * @param words what and where to measure, such as {@code inside diameter at 30.0 deg}
 * @param azimuthDegrees where on the round parts, NaN for a reading that has no azimuth
 * @param drawnMm what it would be if everything were as drawn; NaN for what is not drawn
 * @param typed what has been typed, empty where nothing has
 * @param along what must be typed with it, by path: azimuth, number, side
 */
public record SheetLine(String section, String path, String words, double azimuthDegrees, double drawnMm, String typed,
                        Map<String, String> along) {
    /** Keeps its own copy. */
    public SheetLine {
        along = Map.copyOf(along);
    }

    /**
     * A job with this reading.
     *
     * @param job what was typed so far
     * @param text the reading
     * @return the same with the reading, and what belongs to it where it was not typed yet
     */
    public JobText type(JobText job, String text) {
        JobText typedNow = job;
        for (Map.Entry<String, String> one : along.entrySet()) {
            typedNow = typedNow.at(one.getKey()).isPresent() ? typedNow : typedNow.with(one.getKey(), one.getValue());
        }
        return typedNow.with(path, text);
    }
}
