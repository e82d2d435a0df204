package org.capwright.store;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.capwright.job.Input;
import org.capwright.job.Inputs;
import org.capwright.job.JobText;

/** The declared order of a job's texts, whatever order they were typed in. */
final class JobOrder {
    private static final Map<String, Integer> RANKS = ranks();

    private JobOrder() {
    }

    /** The texts in the order of the input declarations, a list element by element; unknown paths last, by name. */
    static Map<String, String> ordered(JobText text) {
        List<Place> places = text.texts().keySet().stream().map(Place::of).sorted().toList();
        Map<String, String> ordered = new LinkedHashMap<>();
        places.forEach(place -> ordered.put(place.path(), text.texts().get(place.path())));
        return ordered;
    }

    private static Map<String, Integer> ranks() {
        Map<String, Integer> ranks = new HashMap<>();
        for (Input<?> input : Inputs.all()) {
            int open = input.path().indexOf("[]");
            if (open >= 0) {
                ranks.putIfAbsent(input.path().substring(0, open), ranks.size());
            }
            ranks.put(input.path(), ranks.size());
        }
        return ranks;
    }

    /** Where a path stands: first by the rank of its head (itself, or its list), then by element, then by own rank. */
    private record Place(int head, int element, int rank, String path) implements Comparable<Place> {
        private static final Comparator<Place> ORDER = Comparator.comparingInt(Place::head)
                .thenComparingInt(Place::element).thenComparingInt(Place::rank).thenComparing(Place::path);

        static Place of(String path) {
            int open = path.indexOf('[');
            if (open < 0 || !Inputs.at(path).isPresent()) {
                return new Place(rankOf(path), -1, 0, path);
            }
            int close = path.indexOf(']');
            String general = path.substring(0, open + 1) + path.substring(close);
            int element = Integer.parseInt(path.substring(open + 1, close));
            return new Place(rankOf(path.substring(0, open)), element, rankOf(general), path);
        }

        private static int rankOf(String path) {
            return RANKS.getOrDefault(path, Integer.MAX_VALUE);
        }

        @Override
        public int compareTo(Place other) {
            return ORDER.compare(this, other);
        }
    }
}
