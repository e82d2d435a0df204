package org.capwright.stock;

import java.util.LinkedHashMap;
import java.util.Map;
import org.capwright.stock.nest.Nest;
import org.capwright.stock.nest.NestTask;
import org.capwright.stock.nest.Nester;

/**
 * Nests already made, so that the same pieces on the same sheets are nested once: a change of rates or of another part's gauge
 * leaves most groups as they are. A nest that was cut short is made again. Holds the nests used last; not for several threads
 * at once.
 */
public final class KeptNests {
    private static final int MOST = 200;

    private final Map<Key, Nest> nests = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Nest> eldest) {
            return size() > MOST;
        }
    };

    private record Key(NestTask task, long seed) {
    }

    /** Whether a task needs no search. */
    boolean has(NestTask task, long seed) {
        return nests.containsKey(new Key(task, seed));
    }

    /** The nest of a task, kept or made. */
    Nest nest(NestTask task, Nester.Options options) {
        Key key = new Key(task, options.seed());
        Nest known = nests.get(key);
        if (known != null) {
            options.better().accept(known);
            return known;
        }
        Nest made = Nester.nest(task, options);
        if (made.settled()) {
            nests.put(key, made);
        }
        return made;
    }
}
