package stokewell.fit;

import java.time.LocalDate;

/**
 * A day from five in the morning to five the next, so that an evening's fire and the night that it warms stand together.
 *
 * @param date    on which it begins
 * @param heat    net heat of the wood that was noted, J
 * @param loads   how many were noted
 * @param outdoor mean temperature, K; NaN where too little was read
 * @param indoor  the same of the room; NaN where there is no sensor or too little was read
 * @param sun     mean of the day on the horizontal, W/m2; NaN where it was not measured
 * @param flaw    why the day does not count
 */
public record WoodDay(LocalDate date, double heat, int loads, double outdoor, double indoor, double sun, Flaw flaw) {

    /** Without the sun. */
    public WoodDay(LocalDate date, double heat, int loads, double outdoor, double indoor, Flaw flaw) {
        this(date, heat, loads, outdoor, indoor, Double.NaN, flaw);
    }

    /** What is wrong with a day. */
    public enum Flaw {
        NONE,
        /** Less than 18 hours of temperature. */
        UNREAD,
        /** A sensor saw a fire for which no load was noted. */
        UNNOTED,
        /** One of many days in a row without a load, and no sensor that would have seen a fire. */
        SILENT
    }

    /** What drives the wood: room less outdoors, or 0 degrees Celsius less outdoors where the room is not known, K. */
    double driving(boolean comfort) {
        return comfort ? indoor - outdoor : 273.15 - outdoor;
    }
}
