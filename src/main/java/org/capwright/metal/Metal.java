package org.capwright.metal;

import java.util.Locale;

/** The metals that caps are made of. */
public enum Metal {
    /** Zinc-coated carbon steel. */
    GALVANIZED(Density.STEEL, Modulus.STEEL),
    /** Aluminium-coated carbon steel. */
    ALUMINIZED(Density.STEEL, Modulus.STEEL),
    /** Uncoated carbon steel. */
    COLD_ROLLED(Density.STEEL, Modulus.STEEL),
    /** Austenitic stainless steel 304. */
    STAINLESS_304(Density.STAINLESS, Modulus.STAINLESS),
    /** Austenitic stainless steel 316. */
    STAINLESS_316(Density.STAINLESS, Modulus.STAINLESS),
    /** Aluminium sheet. */
    ALUMINIUM(Density.ALUMINIUM, Modulus.ALUMINIUM);

    private static final double KG_PER_M3_PER_LB_PER_IN3 = 0.45359237 / (0.0254 * 0.0254 * 0.0254);
    private static final double PA_PER_PSI = 4.4482216152605 / (0.0254 * 0.0254);

    private final double densityKgPerM3;
    private final double elasticityPa;

    Metal(double densityKgPerM3, double elasticityPa) {
        this.densityKgPerM3 = densityKgPerM3;
        this.elasticityPa = elasticityPa;
    }

    /**
     * The word that job files use.
     *
     * @return such as {@code stainless 304}
     */
    public String word() {
        return this == COLD_ROLLED ? "cold-rolled" : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * Whether a weld joins it to another: aluminium only to aluminium, steels to each other (common practice, no source).
     *
     * @param other the other metal
     * @return whether
     */
    public boolean weldsTo(Metal other) {
        return (this == ALUMINIUM) == (other == ALUMINIUM);
    }

    /**
     * Density. Carbon steel 7850 kg/m3 (confirmed); 300-series stainless .29 lb/in3 and aluminium .098 lb/in3 (from memory).
     *
     * @return kg/m3
     */
    public double densityKgPerM3() {
        return densityKgPerM3;
    }

    /**
     * Modulus of elasticity. Steel 29e6 psi, stainless about 28e6, aluminium about 10e6 (from memory).
     *
     * @return Pa
     */
    public double elasticityPa() {
        return elasticityPa;
    }

    private static final class Density {
        static final double STEEL = 7850;
        static final double STAINLESS = .29 * KG_PER_M3_PER_LB_PER_IN3;
        static final double ALUMINIUM = .098 * KG_PER_M3_PER_LB_PER_IN3;
    }

    private static final class Modulus {
        static final double STEEL = 29e6 * PA_PER_PSI;
        static final double STAINLESS = 28e6 * PA_PER_PSI;
        static final double ALUMINIUM = 10e6 * PA_PER_PSI;
    }
}
