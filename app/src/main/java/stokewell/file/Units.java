package stokewell.file;

import static stokewell.file.UnitSystem.SI;
import static stokewell.file.UnitSystem.US;

import stokewell.rig.Dimension;

/**
 * The units of each dimension. Factors: the exact definitions of inch, pound and US gallon; the Btu of the International
 * Table, 1055.05585262 J; a head of water at 1000 kg/m3 and 9.80665 m/s2.
 */
public final class Units {

    /** m. */
    public static final double INCH = 0.0254;
    /** m. */
    public static final double FOOT = 0.3048;
    /** kg. */
    public static final double POUND = 0.45359237;
    /** m3, US. */
    public static final double GALLON = 231 * INCH * INCH * INCH;

    private static final double FOOT2 = FOOT * FOOT;
    private static final double FOOT3 = FOOT * FOOT * FOOT;
    /** J. */
    public static final double BTU = 1055.05585262;

    private static final double RANKINE = 5.0 / 9;
    private static final double HOUR = 3600;
    private static final double WATER_METRE = 9806.65;
    /** Pa. */
    public static final double PSI = POUND * 9.80665 / (INCH * INCH);

    /** Filled as dimensions are met: a start of the program needs only some. */
    private static final Unit[][] TABLE = new Unit[Dimension.values().length][];

    private Units() {}

    static Unit[] of(Dimension is) {
        Unit[] known = TABLE[is.ordinal()];
        if (known == null) TABLE[is.ordinal()] = known = make(is);
        return known;
    }

    /** The unit of that name, or {@code null}. */
    static Unit named(Dimension is, String text) {
        String bare = text.strip();
        for (Unit unit : of(is)) if (unit.symbol().equals(bare)) return unit;
        String plain = Unit.plain(text);
        for (Unit unit : of(is)) if (unit.isCalled(plain)) return unit;
        return null;
    }

    private static Unit both(String symbol, double factor, String... others) {
        return new Unit(symbol, factor, 0, null, others);
    }

    private static Unit si(String symbol, double factor, String... others) {
        return new Unit(symbol, factor, 0, SI, others);
    }

    private static Unit us(String symbol, double factor, String... others) {
        return new Unit(symbol, factor, 0, US, others);
    }

    private static Unit[] list(Unit... units) {
        return units;
    }

    // spotless:off
    private static Unit[] make(Dimension is) {
        return switch (is) {
            case NONE, COUNT, CLOCK -> list();
            case SHARE -> list(both("%", 0.01, "percent", "per cent", "pct"));
            case LENGTH -> list(
                si("m", 1, "metre", "meter", "metres", "meters"), us("ft", FOOT, "'", "foot", "feet"),
                si("mm", 1e-3, "millimetre", "millimetres", "millimeter", "millimeters"), us("in", INCH, "\"", "''", "inch", "inches"),
                si("cm", 1e-2), si("km", 1000), us("yd", 3 * FOOT, "yard", "yards"), us("mile", 5280 * FOOT, "mi", "miles"));
            case AREA -> list(
                si("m2", 1, "sq m", "sqm"), us("ft2", FOOT2, "sq ft", "sf"), si("cm2", 1e-4, "sq cm"),
                us("in2", INCH * INCH, "sq in"), si("mm2", 1e-6, "sq mm"), us("yd2", 9 * FOOT2, "sq yd"));
            case VOLUME -> list(
                si("L", 1e-3, "litre", "liter", "litres", "liters", "dm3"), us("gal", GALLON, "gallon", "gallons", "US gal", "US gallons", "gal US"),
                si("m3", 1, "cu m", "cubic metre", "cubic metres"), us("ft3", FOOT3, "cu ft", "cubic foot", "cubic feet", "cf"),
                si("mL", 1e-6, "cm3", "cc"), us("imp gal", 0.00454609, "UK gal", "gal imp", "imp gallon", "imp gallons"),
                us("qt", GALLON / 4, "quart", "quarts"), us("in3", INCH * INCH * INCH, "cu in"),
                us("cord", 128 * FOOT3, "cords"), si("stere", 1, "steres"));
            case MASS -> list(
                si("kg", 1, "kilo", "kilos", "kilogram", "kilograms"), us("lb", POUND, "lbs", "pound", "pounds"),
                si("g", 1e-3, "gram", "grams"), us("oz", POUND / 16, "ounce", "ounces"),
                si("t", 1000, "tonne", "tonnes", "metric ton", "metric tons"), us("short ton", 2000 * POUND, "US ton", "short tons"));
            case DENSITY -> list(
                si("kg/m3", 1), us("lb/ft3", POUND / FOOT3, "lb/cu ft", "pcf", "lbs/ft3"), si("kg/L", 1000, "g/cm3", "g/cc", "t/m3"),
                us("lb/gal", POUND / GALLON));
            case TIME -> list(
                both("s", 1, "sec", "secs", "second", "seconds"), both("min", 60, "mins", "minute", "minutes"),
                both("h", HOUR, "hr", "hrs", "hour", "hours"), both("d", 24 * HOUR, "day", "days"),
                both("week", 7 * 24 * HOUR, "weeks", "wk"));
            case TEMPERATURE -> list(
                new Unit("C", 1, 273.15, SI, "deg C", "celsius", "degrees C", "centigrade"),
                new Unit("F", RANKINE, 459.67 * RANKINE, US, "deg F", "fahrenheit", "degrees F"),
                si("K", 1, "kelvin", "deg K"));
            case TEMPERATURE_DIFFERENCE -> list(
                si("K", 1, "kelvin", "deg K"), us("F", RANKINE, "deg F", "F deg", "degrees F", "R", "fahrenheit"),
                si("C", 1, "deg C", "C deg", "degrees C", "celsius"));
            case PRESSURE, HEAD -> list(
                si("bar", 1e5), us("psi", PSI, "psig", "lb/in2"), si("kPa", 1e3), si("Pa", 1, "pascal"), si("mbar", 100, "hPa"),
                si("m water", WATER_METRE, "m", "mwc", "mh2o", "m wg", "m head", "m of water", "m w.c."),
                us("ft head", FOOT * WATER_METRE, "ft", "ft water", "ft wc", "ft h2o", "fth2o", "ft of head", "ft of water"),
                us("in wc", INCH * WATER_METRE, "in", "\"", "inwg", "inh2o", "in water", "in of water", "\"wc", "\" water"),
                si("mm water", 1e-3 * WATER_METRE, "mm", "mmwc", "mmh2o", "mmwg", "mm of water"),
                si("cm water", 1e-2 * WATER_METRE, "cm", "cmwc", "cmh2o"), si("MPa", 1e6), both("atm", 101325));
            case POWER -> list(
                si("kW", 1e3), us("Btu/h", BTU / HOUR, "btuh", "btu/hr", "btu/hour"), both("W", 1, "watt", "watts"),
                us("MBH", 1e3 * BTU / HOUR, "kBtu/h", "kBtu/hr", "mbtuh"), us("hp", 745.69987158227), si("MW", 1e6));
            case ENERGY -> list(
                both("kWh", 3.6e6), us("kBtu", 1e3 * BTU), si("Wh", HOUR), us("Btu", BTU, "btus"), si("MJ", 1e6), si("kJ", 1e3),
                si("J", 1, "joule", "joules"), si("GJ", 1e9), si("MWh", 3.6e9), us("MMBtu", 1e6 * BTU), us("therm", 1e5 * BTU, "therms"));
            case CONDUCTANCE -> list(
                si("W/K", 1, "W/C"), us("Btu/h.F", BTU / HOUR / RANKINE, "Btu/hr.F", "btuh/F"), si("kW/K", 1e3, "kW/C"));
            case CONDUCTIVITY -> list(
                si("W/m.K", 1, "W/m.C"),
                us("Btu.in/h.ft2.F", BTU / HOUR * INCH / FOOT2 / RANKINE, "Btu.in/hr.ft2.F", "Btu in/ft2.h.F", "Btu in/ft2.hr.F"),
                us("Btu/h.ft.F", BTU / HOUR / FOOT / RANKINE, "Btu/hr.ft.F"), si("mW/m.K", 1e-3));
            case TRANSMITTANCE -> list(
                si("W/m2.K", 1, "W/m2.C", "W/K.m2"),
                us("Btu/h.ft2.F", BTU / HOUR / FOOT2 / RANKINE, "Btu/hr.ft2.F", "Btu/ft2.h.F", "Btu/h.F.ft2"));
            case THERMAL_RESISTANCE -> list(
                si("m2.K/W", 1, "K.m2/W", "m2.C/W", "RSI"),
                us("h.ft2.F/Btu", HOUR * FOOT2 * RANKINE / BTU, "hr.ft2.F/Btu", "ft2.h.F/Btu", "ft2.F.h/Btu", "F.ft2.h/Btu", "R"));
            case HEAT_CAPACITY -> list(
                si("Wh/K", HOUR, "Wh/C"), us("Btu/F", BTU / RANKINE), si("kWh/K", 3.6e6, "kWh/C"), si("kJ/K", 1e3, "kJ/C"),
                si("J/K", 1, "J/C"), si("MJ/K", 1e6, "MJ/C"));
            case SPECIFIC_HEAT -> list(
                si("kJ/kg.K", 1e3, "kJ/kg.C", "J/g.K"), us("Btu/lb.F", BTU / POUND / RANKINE), si("J/kg.K", 1, "J/kg.C"),
                si("Wh/kg.K", HOUR));
            case HEATING_VALUE -> list(
                si("kWh/kg", 3.6e6), us("Btu/lb", BTU / POUND), si("MJ/kg", 1e6), si("kJ/kg", 1e3), si("J/kg", 1));
            case VOLUME_FLOW -> list(
                si("L/min", 1e-3 / 60, "lpm"), us("gpm", GALLON / 60, "gal/min", "US gpm"), si("m3/h", 1 / HOUR, "m3/hr", "cmh"),
                us("cfm", FOOT3 / 60, "ft3/min", "cu ft/min"), si("L/s", 1e-3, "lps"), si("m3/s", 1),
                si("L/h", 1e-3 / HOUR, "L/hr"), us("gph", GALLON / HOUR, "gal/h", "gal/hr"), us("ft3/h", FOOT3 / HOUR, "cfh"));
            case MASS_FLOW -> list(
                si("kg/h", 1 / HOUR, "kg/hr"), us("lb/h", POUND / HOUR, "lb/hr", "lbs/h", "pph"), si("kg/s", 1), si("kg/min", 1.0 / 60),
                si("g/s", 1e-3), us("lb/min", POUND / 60, "lbs/min"));
            case SPEED -> list(
                si("m/s", 1), us("mph", 5280 * FOOT / HOUR, "mi/h"), si("km/h", 1 / 3.6, "kph", "kmh"), us("ft/min", FOOT / 60, "fpm"),
                both("kt", 1852 / HOUR, "kn", "kts", "knot", "knots"), us("ft/s", FOOT, "fps"));
            case ANGLE -> list(
                both("deg", Math.PI / 180, "", "degree", "degrees"), both("rad", 1, "radian", "radians"),
                both("arcmin", Math.PI / 10800, "'", "min"), both("arcsec", Math.PI / 648000, "\"", "''", "s", "sec"));
            case AIR_CHANGE -> list(
                both("1/h", 1 / HOUR, "/h", "ach", "1/hr", "/hr", "per hour", "changes/h", "air changes/h"), both("1/s", 1, "/s"));
        };
    }
    // spotless:on
}
