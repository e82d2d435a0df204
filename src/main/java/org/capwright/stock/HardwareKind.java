package org.capwright.stock;

import java.util.Locale;

/** What hardware is, for its price. */
public enum HardwareKind {
    /** Round bar, cut to length. */
    BAR,
    /** Flanged bushing, by its bore. */
    BUSHING,
    /** Blind rivet, by its diameter. */
    RIVET,
    /** Fastener of the sleeve, by the diameter of its hole. */
    FASTENER,
    /** Sealant, by the metre. */
    SEALANT;

    /**
     * Its word in stock files.
     *
     * @return such as {@code bushing}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
