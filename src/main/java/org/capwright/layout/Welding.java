package org.capwright.layout;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.capwright.metal.Metal;

/** What welding a metal asks for: cautions before, cleaning after (common practice, no source). */
final class Welding {
    private Welding() {
    }

    /** Cautions before welding metals, each once. */
    static List<String> cautions(Metal... metals) {
        return Stream.of(metals).flatMap(metal -> caution(metal).stream()).distinct().toList();
    }

    private static List<String> caution(Metal metal) {
        return switch (metal) {
            case GALVANIZED -> List.of("Zinc fume: take the coating off at the weld, extraction on (29 CFR 1910.252).");
            case STAINLESS_304, STAINLESS_316 ->
                List.of("Welding stainless gives off chromium(VI): extraction on (29 CFR 1910.1026).");
            case ALUMINIZED, COLD_ROLLED, ALUMINIUM -> List.of();
        };
    }

    /** What is left to do at the welds of metals. */
    static String after(Stream<Metal> metals) {
        return metals.map(Welding::after).distinct().collect(Collectors.joining("; "));
    }

    private static String after(Metal metal) {
        return switch (metal) {
            case GALVANIZED, ALUMINIZED -> "restore the coating at welds";
            case STAINLESS_304, STAINLESS_316 -> "take the heat tint off at welds";
            case COLD_ROLLED -> "paint bare steel";
            case ALUMINIUM -> "brush the welds";
        };
    }
}
