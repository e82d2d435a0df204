package org.capwright.air;

import org.capwright.units.Length;
import org.capwright.units.Temperature;

/** Density of the air in the stack, by temperature and altitude. An estimate: dry air, the weather's pressure left out. */
public final class AirDensity {
    /** Density of standard air (.075 lb/ft3 in round figures), 70 F at sea level: ACGIH Industrial Ventilation. */
    public static final double STANDARD_KG_PER_M3 = 1.204;
    /** Temperature of standard air: ACGIH Industrial Ventilation. */
    public static final Temperature STANDARD_TEMPERATURE = Temperature.ofFahrenheit(70);

    private static final double LAPSE_PER_M = 2.25577e-5;
    private static final double EXPONENT = 5.2559;

    private AirDensity() {
    }

    /**
     * Pressure of the standard atmosphere at an altitude over that at sea level: {@code (1 - 2.25577e-5 Z)^5.2559}, Z in m.
     * Source: ASHRAE Fundamentals, valid from -5000 to 11000 m.
     *
     * @param altitude height above the sea
     * @return share of 101.325 kPa
     */
    public static double pressureRatio(Length altitude) {
        return Math.pow(1 - LAPSE_PER_M * altitude.mm() / 1000, EXPONENT);
    }

    /**
     * Density factor: {@code T_0 / T * p / p_0}, absolute temperatures, T_0 = 70 F. The textbook form {@code 530 / (460 + F)}
     * rounds 529.67 and 459.67; the two differ by less than 0.04 % from -40 to 600 F.
     *
     * @param air temperature of the air, above absolute zero
     * @param pressureRatio pressure over 29.92 inHg (101.325 kPa)
     * @return share of the standard density
     */
    public static double factor(Temperature air, double pressureRatio) {
        return STANDARD_TEMPERATURE.kelvin() / air.kelvin() * pressureRatio;
    }

    /**
     * Density, rho: the standard one times the density factor.
     *
     * @param air temperature of the air
     * @param altitude height of the roof above the sea
     * @return kg/m3
     */
    public static double kgPerM3(Temperature air, Length altitude) {
        return STANDARD_KG_PER_M3 * factor(air, pressureRatio(altitude));
    }
}
