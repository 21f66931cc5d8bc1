package stokewell.file;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Units that weather columns are written in: {@code SI = written * factor + shift}. */
enum WeatherUnit {
    CELSIUS("°C", 1, 273.15),
    FAHRENHEIT("°F", 5 / 9.0, 273.15 - 32 * 5 / 9.0),
    KELVIN("K", 1, 0),
    METRES_A_SECOND("m/s", 1, 0),
    KILOMETRES_AN_HOUR("km/h", 1 / 3.6, 0),
    MILES_AN_HOUR("mph", 0.44704, 0),
    KNOTS("kt", 1852 / 3600.0, 0),
    WATTS_A_SQUARE_METRE("W/m2", 1, 0),
    KILOWATTS_A_SQUARE_METRE("kW/m2", 1000, 0),
    KILOJOULES_IN_THE_HOUR("kJ/m2", 1 / 3.6, 0),
    PER_CENT("%", 0.01, 0),
    SHARE("1", 1, 0);

    private static final Map<String, WeatherUnit> NAMES = Map.ofEntries(
            Map.entry("c", CELSIUS),
            Map.entry("degc", CELSIUS),
            Map.entry("celsius", CELSIUS),
            Map.entry("degreecelsius", CELSIUS),
            Map.entry("f", FAHRENHEIT),
            Map.entry("degf", FAHRENHEIT),
            Map.entry("fahrenheit", FAHRENHEIT),
            Map.entry("k", KELVIN),
            Map.entry("kelvin", KELVIN),
            Map.entry("ms", METRES_A_SECOND),
            Map.entry("ms1", METRES_A_SECOND),
            Map.entry("kmh", KILOMETRES_AN_HOUR),
            Map.entry("kph", KILOMETRES_AN_HOUR),
            Map.entry("mph", MILES_AN_HOUR),
            Map.entry("kt", KNOTS),
            Map.entry("kts", KNOTS),
            Map.entry("kn", KNOTS),
            Map.entry("knots", KNOTS),
            Map.entry("wm2", WATTS_A_SQUARE_METRE),
            Map.entry("kwm2", KILOWATTS_A_SQUARE_METRE),
            Map.entry("kjm2", KILOJOULES_IN_THE_HOUR),
            Map.entry("%", PER_CENT),
            Map.entry("pct", PER_CENT),
            Map.entry("percent", PER_CENT),
            Map.entry("1", SHARE),
            Map.entry("share", SHARE));

    final String symbol;
    private final double factor;
    private final double shift;

    WeatherUnit(String symbol, double factor, double shift) {
        this.symbol = symbol;
        this.factor = factor;
        this.shift = shift;
    }

    double toSi(double written) {
        return written * factor + shift;
    }

    double fromSi(double value) {
        return (value - shift) / factor;
    }

    /** The unit that a text such as "°C", "km/h" or "W/m^2" names. */
    static Optional<WeatherUnit> named(String text) {
        String plain = text.toLowerCase(Locale.ROOT).replace('²', '2').replaceAll("[^a-z0-9%]", "");
        return Optional.ofNullable(NAMES.get(plain));
    }
}
