package stokewell.file;

import stokewell.rig.Dimension;

/** The two families of units. One switch changes every number shown. */
public enum UnitSystem {
    SI,
    US;

    /** The unit that a value of this size is shown in; empty for plain numbers and for the time of day. */
    public String unit(Dimension is, double si) {
        double size = Math.abs(si);
        return this == SI ? metric(is, size) : customary(is, size);
    }

    private static String metric(Dimension is, double size) {
        return switch (is) {
            case NONE, COUNT, CLOCK -> "";
            case SHARE -> "%";
            case LENGTH -> size < 0.3 ? "mm" : "m";
            case AREA -> size < 0.1 ? "cm2" : "m2";
            case VOLUME -> size < 10 ? "L" : "m3";
            case MASS -> size > 0 && size < 0.5 ? "g" : "kg";
            case DENSITY -> "kg/m3";
            case TIME -> time(size);
            case TEMPERATURE -> "C";
            case TEMPERATURE_DIFFERENCE -> "K";
            case PRESSURE -> size < 1e3 ? "Pa" : size < 1e5 ? "kPa" : "bar";
            case HEAD -> "m water";
            case POWER -> size < 1e3 ? "W" : "kW";
            case ENERGY -> size < 3.6e6 ? "Wh" : "kWh";
            case CONDUCTANCE -> "W/K";
            case CONDUCTIVITY -> "W/m.K";
            case TRANSMITTANCE -> "W/m2.K";
            case THERMAL_RESISTANCE -> "m2.K/W";
            case HEAT_CAPACITY -> size < 3.6e6 ? "Wh/K" : "kWh/K";
            case SPECIFIC_HEAT -> "kJ/kg.K";
            case HEATING_VALUE -> "kWh/kg";
            case VOLUME_FLOW -> size < 2e-3 ? "L/min" : "m3/h";
            case MASS_FLOW -> size < 1 ? "kg/h" : "kg/s";
            case SPEED -> "m/s";
            case ANGLE -> "deg";
            case AIR_CHANGE -> "1/h";
        };
    }

    private static String customary(Dimension is, double size) {
        return switch (is) {
            case LENGTH -> size < 0.3048 ? "in" : "ft";
            case AREA -> size < 0.0929 ? "in2" : "ft2";
            case VOLUME -> "gal";
            case MASS -> size > 0 && size < 0.4535 ? "oz" : "lb";
            case DENSITY -> "lb/ft3";
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "F";
            case PRESSURE -> size < 2500 ? "in wc" : "psi";
            case HEAD -> "ft head";
            case POWER -> "Btu/h";
            case ENERGY -> size < 1e6 ? "Btu" : "kBtu";
            case CONDUCTANCE -> "Btu/h.F";
            case CONDUCTIVITY -> "Btu.in/h.ft2.F";
            case TRANSMITTANCE -> "Btu/h.ft2.F";
            case THERMAL_RESISTANCE -> "h.ft2.F/Btu";
            case HEAT_CAPACITY -> "Btu/F";
            case SPECIFIC_HEAT -> "Btu/lb.F";
            case HEATING_VALUE -> "Btu/lb";
            case VOLUME_FLOW -> size < 2e-3 ? "gpm" : "cfm";
            case MASS_FLOW -> "lb/h";
            case SPEED -> "mph";
            default -> metric(is, size);
        };
    }

    private static String time(double size) {
        return size < 120 ? "s" : size < 3600 ? "min" : size < 864_000 ? "h" : "d";
    }
}
