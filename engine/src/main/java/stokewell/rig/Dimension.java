package stokewell.rig;

/** What kind of quantity a number is. Inside the engine every one is in its SI unit, named here. */
public enum Dimension {
    /** A plain number. */
    NONE(""),
    /** A whole number. */
    COUNT(""),
    /** A share of one: 0.2 is 20 %. */
    SHARE("1"),
    LENGTH("m"),
    AREA("m2"),
    VOLUME("m3"),
    MASS("kg"),
    DENSITY("kg/m3"),
    TIME("s"),
    /** Seconds after local standard midnight. */
    CLOCK("s"),
    /** A temperature on the scale. */
    TEMPERATURE("K"),
    /** A difference of two temperatures. */
    TEMPERATURE_DIFFERENCE("K"),
    PRESSURE("Pa"),
    /** A pressure that is told as a height of water: what a pump can lift. */
    HEAD("Pa"),
    POWER("W"),
    ENERGY("J"),
    /** W/K: the heat loss coefficient of a whole thing. */
    CONDUCTANCE("W/K"),
    /** W/(m K). */
    CONDUCTIVITY("W/m.K"),
    /** W/(m2 K). */
    TRANSMITTANCE("W/m2.K"),
    /** m2 K/W. */
    THERMAL_RESISTANCE("m2.K/W"),
    /** J/K. */
    HEAT_CAPACITY("J/K"),
    /** J/(kg K). */
    SPECIFIC_HEAT("J/kg.K"),
    /** J/kg. */
    HEATING_VALUE("J/kg"),
    VOLUME_FLOW("m3/s"),
    MASS_FLOW("kg/s"),
    SPEED("m/s"),
    /** Radians from north over east for a bearing, from the horizon for a slope or a latitude. */
    ANGLE("rad"),
    /** Exchanges of the room's air, 1/s. */
    AIR_CHANGE("1/s");

    /** The SI unit that the engine holds it in. */
    public final String unit;

    Dimension(String unit) {
        this.unit = unit;
    }
}
