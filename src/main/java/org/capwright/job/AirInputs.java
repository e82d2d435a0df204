package org.capwright.job;

import org.capwright.units.Flow;
import org.capwright.units.Length;
import org.capwright.units.Pressure;
import org.capwright.units.Temperature;

/** What comes up the stack. */
public final class AirInputs {
    /** Design flow. */
    public static final Input<Flow> FLOW = Input.flow("air.flow", "design flow").between("10 ft3/min", "500000 ft3/min")
            .orAuto().help("Flow of the running fan. Auto assumes 3000 ft/min in the sleeve: type the real one when you know it.");
    /** Temperature of the air. */
    public static final Input<Temperature> TEMPERATURE = Input.temperature("air.temperature", "temperature")
            .between("-40 F", "600 F").or("70 F").help(
                "Temperature of what comes up the stack: hot gas is thinner and lifts less, and oil-bronze bushings "
                    + "do not bear it. Measure at the fan, running hot.");
    /** Altitude of the roof. */
    public static final Input<Length> ALTITUDE = Input.length("air.altitude", "altitude").between("-1500 ft", "15000 ft")
            .or("0 ft").help(
                "Height of the roof above the sea: thinner air lifts the leaves less. Read it off a map; a hundred "
                    + "feet more or less do not matter.");
    /** Pressure of the fan at no flow. */
    public static final Input<Pressure> SHUT_OFF_PRESSURE = Input.pressure("air.shutOffPressure", "shut-off pressure")
            .between("0 inH2O", "20 inH2O").or("1 inH2O")
            .help("Pressure that the fan builds against closed leaves; from its curve, at no flow.");
    /** Friction factor of the bushings. */
    public static final Input<Double> FRICTION = Input.number("air.friction", "bushing friction").between("0", "1").or("0.2")
            .help("Friction factor of rod in bushing; 0.2 is a cautious value for dry, dirty bushings.");
    /** What the stack carries. */
    public static final Input<Duty> DUTY = Input.choice("air.duty", "duty", Duty.class).or(Duty.GENERAL.word())
            .help(
                "What the stack carries; it decides cautions and checks. Leaves have no place over a cooking hood: "
                    + "grease is refused.");

    /** All of them, in order. */
    static final Group GROUP = Group.of("air", "Air", FLOW, TEMPERATURE, ALTITUDE, SHUT_OFF_PRESSURE, FRICTION, DUTY);

    private AirInputs() {
    }

    /** What the stack carries. */
    public enum Duty implements Word {
        /** Plain room or process air. */
        GENERAL,
        /** Overspray and solvent vapour. */
        SPRAY_BOOTH,
        /** Hot gas. */
        HOT,
        /** Corrosive fume. */
        CORROSIVE,
        /** Grease-laden vapour from cooking: refused. */
        GREASE
    }
}
