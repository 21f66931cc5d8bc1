package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stokewell.rig.Dimension;

class QuantityTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1.2 m | LENGTH | 1.2",
                "1,5 m | LENGTH | 1.5",
                "26 mm | LENGTH | 0.026",
                "3 ft 6 in | LENGTH | 1.0668",
                "5' 3 1/2\" | LENGTH | 1.6129",
                "5'-3 1/2\" | LENGTH | 1.6129",
                "5' 3 1/2 | LENGTH | 1.6129",
                "5′3½″ | LENGTH | 1.6129",
                "1.5\" | LENGTH | 0.0381",
                "7/8 | LENGTH | 0.022225",
                "7/8 in | LENGTH | 0.022225",
                "1 1/2 in | LENGTH | 0.0381",
                "1-1/2 in | LENGTH | 0.0381",
                "-3 ft 6 in | LENGTH | -1.0668",
                "1e-3 m | LENGTH | 0.001",
                "27 sq ft | AREA | 2.50838208",
                "25 cm² | AREA | 0.0025",
                "1 200 L | VOLUME | 1.2",
                "1200 L | VOLUME | 1.2",
                "1,200.5 L | VOLUME | 1.2005",
                "1.200,5 L | VOLUME | 1.2005",
                "12 345,5 L | VOLUME | 12.3455",
                "100 gal | VOLUME | 0.3785411784",
                "100 imp gal | VOLUME | 0.454609",
                "1 cord | VOLUME | 3.624556363776",
                "3 lb 4 oz | MASS | 1.4741752025",
                "2 t | MASS | 2000",
                "1 h 30 min | TIME | 5400",
                "1:30 | TIME | 5400",
                "-5:00 | TIME | -18000",
                "17:00 | CLOCK | 61200",
                "5:30 pm | CLOCK | 63000",
                "5 pm | CLOCK | 61200",
                "12:15 am | CLOCK | 900",
                "12:15 p.m. | CLOCK | 44100",
                "24:00 | CLOCK | 86400",
                "17h30 | CLOCK | 63000",
                "noon | CLOCK | 43200",
                "70 C | TEMPERATURE | 343.15",
                "70 °C | TEMPERATURE | 343.15",
                "70 degC | TEMPERATURE | 343.15",
                "158 F | TEMPERATURE | 343.15",
                "-40 F | TEMPERATURE | 233.15",
                "300 K | TEMPERATURE | 300",
                "7 K | TEMPERATURE_DIFFERENCE | 7",
                "7 C | TEMPERATURE_DIFFERENCE | 7",
                "18 F | TEMPERATURE_DIFFERENCE | 10",
                "1.5 bar | PRESSURE | 150000",
                "4 m water | PRESSURE | 39226.6",
                "10 ft head | PRESSURE | 29890.6692",
                "0.1 in wc | PRESSURE | 24.908891",
                "10 mm | PRESSURE | 98.0665",
                "1 psi | PRESSURE | 6894.757293168",
                "1000 Btu/h | POWER | 293.07107017",
                "1 MBH | POWER | 293.07107017",
                "1 kBtu | ENERGY | 1055055.85262",
                "3 kWh | ENERGY | 10800000",
                "260 W/K | CONDUCTANCE | 260",
                "1 Btu/h.F | CONDUCTANCE | 0.527527926",
                "0.04 W/(m K) | CONDUCTIVITY | 0.04",
                "1 Btu in/h ft2 F | CONDUCTIVITY | 0.144227889",
                "2.8 W/m²·K | TRANSMITTANCE | 2.8",
                "1 BTU/hr·ft²·°F | TRANSMITTANCE | 5.678263341",
                "R-13 | THERMAL_RESISTANCE | 2.28943238787",
                "R13 | THERMAL_RESISTANCE | 2.28943238787",
                "RSI 2.3 | THERMAL_RESISTANCE | 2.3",
                "0.4 m2.K/W | THERMAL_RESISTANCE | 0.4",
                "600 Wh/K | HEAT_CAPACITY | 2160000",
                "480 J/kg.K | SPECIFIC_HEAT | 480",
                "1 Btu/lb.F | SPECIFIC_HEAT | 4186.8",
                "18 MJ/kg | HEATING_VALUE | 18000000",
                "12 L/min | VOLUME_FLOW | 0.0002",
                "400 m3/h | VOLUME_FLOW | 0.111111111",
                "1 gpm | VOLUME_FLOW | 0.0000630901964",
                "100 cfm | VOLUME_FLOW | 0.0471947443",
                "10 kt | SPEED | 5.144444444",
                "10 mph | SPEED | 4.4704",
                "180 deg | ANGLE | 3.141592653589793",
                "44° 30' N | ANGLE | 0.776671517",
                "90 W | ANGLE | -1.570796327",
                "-71.5° | ANGLE | -1.247910415",
                "south | ANGLE | 3.141592653589793",
                "SE | ANGLE | 2.356194490",
                "north-north-west | ANGLE | 5.890486225",
                "30 kg/m3 | DENSITY | 30",
                "15 1/h | AIR_CHANGE | 0.004166666667",
                "15 ach | AIR_CHANGE | 0.004166666667",
                "20 % | SHARE | 0.2",
                "0,2 | SHARE | 0.2",
                "1/4 | SHARE | 0.25",
                "12 | COUNT | 12",
                "1,3 | NONE | 1.3",
            })
    void readsWhatPeopleWrite(String text, Dimension is, double si) {
        assertThat(Quantity.parse(text, is)).isCloseTo(si, within(1e-7 * Math.max(1e-3, Math.abs(si))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "900 | VOLUME | 900 of what? The unit is missing. Did you mean 900 L or 900 gal?",
                "70 | TEMPERATURE | 70 of what? The unit is missing. Did you mean 70 C or 70 F?",
                "1,200 L | VOLUME | \"1,200\" could be 1200 or 1.200. Write 1200 or 1.200.",
                "12 furlongs | LENGTH | \"furlongs\" is not a unit of length. Known: m, ft, mm, in, cm, km, yd, mile.",
                "12 kg | LENGTH | \"kg\" is not a unit of length, it is one of mass. Known: m, ft, mm, in, cm, km, yd, mile.",
                "6 in 3 ft | LENGTH | \"6 in 3 ft\" goes from in to ft. Write the larger unit first, such as 1.2 m, 26 mm, 2 in or 5 ft 3 in.",
                "warm | TEMPERATURE | \"warm\" is not a temperature. Write 70 C or 158 F.",
                "-300 C | TEMPERATURE | -300 C is below absolute zero. Write 70 C or 158 F.",
                "12.5 | COUNT | \"12.5\" is not a whole number. Write 12.",
                "17 | CLOCK | \"17\" is not a time of day. Write 17:00 or 5:30 pm.",
                "25:10 | CLOCK | \"25:10\" is not a time. Write 17:00 or 5:30 pm.",
                "1/0 in | LENGTH | \"1/0 in\" divides by nothing. Write a fraction such as 7/8.",
            })
    void saysWhatWouldBeRight(String text, Dimension is, String message) {
        assertThatThrownBy(() -> Quantity.parse(text, is))
                .isInstanceOf(QuantityFault.class)
                .hasMessage(message);
    }

    @Test
    void temperatureDifferencesNeverGetTheOffset() {
        assertThat(Quantity.parse("0 F", Dimension.TEMPERATURE_DIFFERENCE)).isZero();
        assertThat(Quantity.parse("0 C", Dimension.TEMPERATURE_DIFFERENCE)).isZero();
        assertThat(Quantity.write(10, Dimension.TEMPERATURE_DIFFERENCE, UnitSystem.US, 3))
                .isEqualTo("18 F");
        assertThat(Quantity.write(10, Dimension.TEMPERATURE_DIFFERENCE, UnitSystem.SI, 3))
                .isEqualTo("10 K");
        for (Unit unit : Units.of(Dimension.TEMPERATURE_DIFFERENCE))
            assertThat(unit.zero()).isZero();
    }

    @Test
    void oneSwitchChangesEveryNumber() {
        assertThat(Quantity.write(343.15, Dimension.TEMPERATURE, UnitSystem.SI, 3))
                .isEqualTo("70 C");
        assertThat(Quantity.write(343.15, Dimension.TEMPERATURE, UnitSystem.US, 3))
                .isEqualTo("158 F");
        assertThat(Quantity.write(1.6129, Dimension.LENGTH, UnitSystem.US, 4)).isEqualTo("5 ft 3.5 in");
        assertThat(Quantity.write(1.6129, Dimension.LENGTH, UnitSystem.SI, 3)).isEqualTo("1.61 m");
        assertThat(Quantity.write(0.026, Dimension.LENGTH, UnitSystem.SI, 3)).isEqualTo("26 mm");
        assertThat(Quantity.write(0.9, Dimension.VOLUME, UnitSystem.SI, 3)).isEqualTo("900 L");
        assertThat(Quantity.write(0.9, Dimension.VOLUME, UnitSystem.US, 3)).isEqualTo("238 gal");
        assertThat(Quantity.write(5400, Dimension.TIME, UnitSystem.SI, 3)).isEqualTo("1 h 30 min");
        assertThat(Quantity.write(63000, Dimension.CLOCK, UnitSystem.US, 3)).isEqualTo("17:30");
        assertThat(Quantity.write(2.289432, Dimension.THERMAL_RESISTANCE, UnitSystem.US, 3))
                .isEqualTo("R-13");
        assertThat(Quantity.write(1.5e5, Dimension.PRESSURE, UnitSystem.SI, 3)).isEqualTo("1.5 bar");
        assertThat(Quantity.write(0.2, Dimension.SHARE, UnitSystem.SI, 3)).isEqualTo("20 %");
    }

    @Property(tries = 4000)
    void whatIsWrittenIsReadBack(
            @ForAll Dimension is,
            @ForAll UnitSystem system,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1) double size,
            @ForAll @DoubleRange(min = -4, max = 8) double decade) {
        double si = size * Math.pow(10, decade);
        if (is == Dimension.COUNT) si = Math.rint(si);
        if (is == Dimension.CLOCK) si = Math.min(86400, Math.abs(si));
        String text = Quantity.write(si, is, system, 17);
        assertThat(Quantity.parse(text, is)).as(text).isCloseTo(si, within(1e-9 * Math.max(1e-2, Math.abs(si))));
        if (is != Dimension.TEMPERATURE && is != Dimension.CLOCK && is != Dimension.COUNT) {
            String minus = Quantity.write(-si, is, system, 17);
            assertThat(Quantity.parse(minus, is)).as(minus).isCloseTo(-si, within(1e-9 * Math.abs(si)));
        }
    }

    @Property(tries = 2000)
    void threeDigitsAreRightToThreeDigits(
            @ForAll Dimension is, @ForAll UnitSystem system, @ForAll @DoubleRange(min = 0.01, max = 86000) double si) {
        if (is == Dimension.CLOCK || is == Dimension.TEMPERATURE || is == Dimension.COUNT) return;
        String text = Quantity.write(si, is, system, 3);
        assertThat(Quantity.parse(text, is)).as(text).isCloseTo(si, within(0.0051 * si));
    }

    @Property(tries = 5000)
    void anyTextIsReadOrRefused(@ForAll Dimension is, @ForAll @StringLength(max = 30) String text) {
        refusedOrFinite(is, text);
    }

    @Property(tries = 5000)
    void textsThatLookLikeNumbersAreReadOrRefused(
            @ForAll Dimension is,
            @ForAll
                    @Chars({
                        '0', '1', '9', ' ', '.', ',', '/', '-', '\'', '"', 'e', 'm', 'i', 'n', 'f', 't', 'h', ':', '½',
                        'R', '°', 'C'
                    })
                    @StringLength(max = 12)
                    String text) {
        refusedOrFinite(is, text);
    }

    private static void refusedOrFinite(Dimension is, String text) {
        try {
            assertThat(Quantity.parse(text, is)).isNotNaN();
        } catch (QuantityFault fault) {
            assertThat(fault.right).isNotBlank();
        }
    }
}
