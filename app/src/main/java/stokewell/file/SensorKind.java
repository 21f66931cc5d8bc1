package stokewell.file;

import java.util.Locale;

/** What a sensor measures, and so in which SI unit its readings are held and which values can be one at all. */
public enum SensorKind {
    /** From the coldest air to the hottest flue. Below -123 °C stand the codes that broken probes send, such as -127. */
    TEMPERATURE("K", 150, 1600),
    /** Relative, of one. */
    HUMIDITY("1", 0, 1.1),
    /** Of one: a valve, a damper, a tank's level. */
    SHARE("1", -0.5, 1.5),
    POWER("W", -1e8, 1e8),
    ENERGY("J", -1e15, 1e15),
    FLOW("m3/s", -10, 10),
    SPEED("m/s", -1, 100),
    /** On a surface. A little below zero at night is the instrument's own cold. */
    SUN("W/m2", -50, 2000),
    PRESSURE("Pa", -1.1e5, 1e8),
    MASS("kg", -1000, 1e6),
    /** On is 1, off is 0. */
    SWITCH("", 0, 1),
    /** Any other number, as it was written. */
    NUMBER("", -1e15, 1e15);

    /** The SI unit that its readings are held in. */
    public final String si;
    /** Least and greatest value that can be a reading, SI. */
    public final double low;

    public final double high;

    SensorKind(String si, double low, double high) {
        this.si = si;
        this.low = low;
        this.high = high;
    }

    /** As people and files write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a value, SI, can be a reading. */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }
}
