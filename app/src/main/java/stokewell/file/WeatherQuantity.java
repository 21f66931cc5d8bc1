package stokewell.file;

import static stokewell.file.WeatherUnit.CELSIUS;
import static stokewell.file.WeatherUnit.FAHRENHEIT;
import static stokewell.file.WeatherUnit.KELVIN;
import static stokewell.file.WeatherUnit.KILOJOULES_IN_THE_HOUR;
import static stokewell.file.WeatherUnit.KILOMETRES_AN_HOUR;
import static stokewell.file.WeatherUnit.KILOWATTS_A_SQUARE_METRE;
import static stokewell.file.WeatherUnit.KNOTS;
import static stokewell.file.WeatherUnit.METRES_A_SECOND;
import static stokewell.file.WeatherUnit.MILES_AN_HOUR;
import static stokewell.file.WeatherUnit.PER_CENT;
import static stokewell.file.WeatherUnit.SHARE;
import static stokewell.file.WeatherUnit.WATTS_A_SQUARE_METRE;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a column of a weather file may hold, the names it goes by, its units and the range it is believed in (SI). */
enum WeatherQuantity {
    TEMPERATURE(
            "temperature",
            193.15,
            333.15,
            Set.of(CELSIUS, FAHRENHEIT, KELVIN),
            CELSIUS,
            "temp temperature airtemp airtemperature drybulb drybulbtemperature drybulbtemp t2m tair ta tout tmp"
                    + " outdoortemperature outdoor outsidetemperature outside averagetemperature ilmanlämpötila"
                    + " lufttemperatur"),
    DEW_POINT(
            "dew point",
            173.15,
            313.15,
            Set.of(CELSIUS, FAHRENHEIT, KELVIN),
            CELSIUS,
            "dewpoint dewpointtemp dewpointtemperature dew td"),
    HUMIDITY(
            "relative humidity",
            0.001,
            1.05,
            Set.of(PER_CENT, SHARE),
            PER_CENT,
            "rh rhum relhum relativehumidity humidity"),
    WIND(
            "wind",
            0,
            75,
            Set.of(METRES_A_SECOND, KILOMETRES_AN_HOUR, MILES_AN_HOUR, KNOTS),
            METRES_A_SECOND,
            "wind windspeed windspd wspd ws ws10m averagewindspeed windspeedavg tuulennopeus"),
    GLOBAL(
            "global irradiance",
            0,
            1500,
            Set.of(WATTS_A_SQUARE_METRE, KILOWATTS_A_SQUARE_METRE, KILOJOULES_IN_THE_HOUR),
            WATTS_A_SQUARE_METRE,
            "ghi gh global globalradiation globalirradiance globalhorizontal globalhorizontalirradiance solarradiation"),
    BEAM(
            "beam irradiance",
            0,
            1400,
            Set.of(WATTS_A_SQUARE_METRE, KILOWATTS_A_SQUARE_METRE, KILOJOULES_IN_THE_HOUR),
            WATTS_A_SQUARE_METRE,
            "dni gbn beam beamnormal directnormal directnormalirradiance"),
    DIFFUSE(
            "diffuse irradiance",
            0,
            1200,
            Set.of(WATTS_A_SQUARE_METRE, KILOWATTS_A_SQUARE_METRE, KILOJOULES_IN_THE_HOUR),
            WATTS_A_SQUARE_METRE,
            "dhi gdh diffuse diffuseradiation diffusehorizontal diffusehorizontalirradiance"),
    INFRARED(
            "sky infrared",
            40,
            700,
            Set.of(WATTS_A_SQUARE_METRE, KILOWATTS_A_SQUARE_METRE),
            WATTS_A_SQUARE_METRE,
            "ir irh infrared skyinfrared longwavedown lwdown"),
    SKY_EMISSIVITY("sky emissivity", 0.3, 1.2, Set.of(SHARE), SHARE, "skyemissivity");

    final String label;
    final double low;
    final double high;
    final Set<WeatherUnit> units;
    final WeatherUnit usual;
    private final Set<String> names;

    WeatherQuantity(String label, double low, double high, Set<WeatherUnit> units, WeatherUnit usual, String names) {
        this.label = label;
        this.low = low;
        this.high = high;
        this.units = units;
        this.usual = usual;
        this.names = Set.of(names.split(" "));
    }

    boolean isSun() {
        return this == GLOBAL || this == BEAM || this == DIFFUSE;
    }

    /** The quantity that a column name means; capitals, spaces and punctuation do not count. */
    static Optional<WeatherQuantity> named(String name) {
        String plain = plain(name);
        return Arrays.stream(values()).filter(q -> q.names.contains(plain)).findFirst();
    }

    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}0-9]", "");
    }
}
