package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.Surface;
import stokewell.weather.Weather;

/** Facts of the bundled files were counted with a separate script from the raw text. */
class WeatherFileTest {

    static final Path EXAMPLES = Path.of("..", "examples", "weather");
    static final Site ALBUQUERQUE = new Site(Math.toRadians(35.04), Math.toRadians(-106.61), -7 * 3600, 1630);
    static final Site MAYBELL = new Site(Math.toRadians(40.53), Math.toRadians(-108.54), -7 * 3600, 2168);

    @TempDir
    Path folder;

    private WeatherFile.Reading text(String text) {
        return WeatherFile.read(written(text));
    }

    private Path written(String text) {
        try {
            return Files.writeString(folder.resolve("weather.csv"), text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A table of n hours from 2024-01-01 00:00. */
    private static String table(String heading, int n, IntFunction<String> row) {
        return heading + "\n"
                + IntStream.range(0, n)
                        .mapToObj(i -> LocalDateTime.of(2024, 1, 1, 0, 0).plusHours(i) + row.apply(i))
                        .collect(Collectors.joining("\n"));
    }

    private static void rangeIs(Hourly hourly, double low, double high) {
        var all = Arrays.stream(hourly.temperature()).summaryStatistics();
        assertThat(all.getMin() - 273.15).isCloseTo(low, within(1e-6));
        assertThat(all.getMax() - 273.15).isCloseTo(high, within(1e-6));
    }

    @Test
    void tmy3OfSandPoint() {
        var reading = WeatherFile.read(EXAMPLES.resolve("tmy3_703165_sand_point_ak.csv"));
        Hourly hourly = reading.hourly();
        assertThat(hourly.hours()).isEqualTo(8760);
        assertThat(hourly.isWrapped()).isTrue();
        assertThat(hourly.start()).hasHour(1).hasMinute(0);
        rangeIs(hourly, -10.6, 19.4);
        Site site = reading.site().orElseThrow();
        assertThat(Math.toDegrees(site.latitude())).isCloseTo(55.317, within(1e-9));
        assertThat(Math.toDegrees(site.longitude())).isCloseTo(-160.517, within(1e-9));
        assertThat(site.utcOffset()).isEqualTo(-9 * 3600.0);
        assertThat(hourly.sun().orElseThrow().centre()).isEqualTo(-1800);
        assertThat(reading.source()).startsWith("TMY3");
        assertThat(reading.notes()).anyMatch(n -> n.what().contains("December to January"));
    }

    /** As spreadsheets of the US write times. */
    @Test
    void hoursOfTwelveWithAmAndPm() {
        for (String[] half : new String[][] {{" AM", " PM"}, {"am", "pm"}, {" a.m.", " p.m."}}) {
            StringBuilder table = new StringBuilder("Date (MM/DD/YYYY),Time,Temperature (F),Wind speed (mph)");
            for (int i = 0; i < 48; i++) {
                int hour = i % 12 == 0 ? 12 : i % 12;
                String time = hour + ":00" + half[i % 24 / 12];
                table.append("\n1/")
                        .append(13 + i / 24)
                        .append("/2024,")
                        .append(time)
                        .append(',')
                        .append(32 + i)
                        .append(",5");
            }
            Hourly hourly = text(table.toString()).hourly();
            assertThat(hourly.start()).isEqualTo(LocalDateTime.of(2024, 1, 13, 0, 0));
            assertThat(hourly.hours()).isEqualTo(48);
            for (int i = 0; i < 48; i++) {
                assertThat(hourly.temperature()[i]).isCloseTo(273.15 + i / 1.8, within(1e-9));
            }
        }
        String together = "time,temp_c\n"
                + IntStream.range(0, 24)
                        .mapToObj(i -> "1/31/2024 " + (i % 12 == 0 ? 12 : i % 12) + ":00:00 " + (i < 12 ? "AM" : "PM")
                                + "," + i)
                        .collect(Collectors.joining("\n"));
        assertThat(text(together).hourly().temperature()[15]).isCloseTo(273.15 + 15, within(1e-9));
        assertThat(text(together.replace("12:00:00 PM", "13:00:00 PM")).notes())
                .anyMatch(n -> n.what().contains("no time that can be read"));
    }

    @Test
    void nsrdbOfMaybell() {
        var reading = WeatherFile.read(EXAMPLES.resolve("nsrdb_tmy2017_maybell_co.csv"), MAYBELL);
        assertThat(reading.hourly().hours()).isEqualTo(8760);
        assertThat(reading.hourly().isWrapped()).isTrue();
        assertThat(reading.hourly().start()).hasHour(0).hasMinute(30);
        rangeIs(reading.hourly(), -20, 34);
        // 202.956 W/m2 on average, counted outside
        double mean = Arrays.stream(reading.hourly().sun().orElseThrow().global())
                .average()
                .orElseThrow();
        assertThat(mean).isCloseTo(202.95570776, within(1e-6));
    }

    @Test
    void pvgisOfPiedmontIsShiftedToLocalTime() {
        var reading = WeatherFile.read(EXAMPLES.resolve("pvgis_tmy_45n_8e_2005_2023.csv"));
        Hourly hourly = reading.hourly();
        assertThat(hourly.hours()).isEqualTo(8760);
        assertThat(hourly.start()).hasHour(1);
        assertThat(hourly.temperature()[0]).isCloseTo(273.15 + 2.04, within(1e-9));
        rangeIs(hourly, -2.34, 34.33);
        assertThat(hourly.infrared()).isPresent();
        assertThat(hourly.sun().orElseThrow().centre()).isCloseTo(0.1761 * 3600, within(1e-6));
        assertThat(reading.site().orElseThrow().altitude()).isEqualTo(250);
    }

    @Test
    void princeGeorgeHasItsGapsFilledAndTold() {
        var reading = WeatherFile.read(EXAMPLES.resolve("eccc_prince_george_bc_2016h1_hourly.csv"));
        assertThat(reading.hourly().hours()).isEqualTo(4368);
        rangeIs(reading.hourly(), -23.9, 27.5);
        assertThat(reading.hourly().wind()[0]).isCloseTo(4 / 3.6, within(1e-12));
        assertThat(reading.notes())
                .contains(new WeatherFile.Note(2656, "temperature missing for 5 h before this row, filled in"));
    }

    @Test
    void albuquerqueIsInImperialUnitsAndUtc() {
        Path file = EXAMPLES.resolve("asos_albuquerque_nm_2017_hourly.csv");
        var reading = WeatherFile.read(file, ALBUQUERQUE);
        assertThat(reading.hourly().hours()).isEqualTo(8760);
        assertThat(reading.hourly().start()).isEqualTo(LocalDateTime.of(2017, 1, 1, 0, 0));
        rangeIs(reading.hourly(), (12.92 - 32) / 1.8, (96.08 - 32) / 1.8);
        assertThat(reading.notes()).anyMatch(n -> n.what().startsWith("25 rows without a time"));
        assertThatThrownBy(() -> WeatherFile.read(file))
                .isInstanceOf(WeatherFault.class)
                .hasMessageContaining("times are UTC")
                .hasMessageContaining("Give the site");
    }

    @Test
    void seattleNormalsLackTheFirstHourAndCanBeWrapped() {
        var reading = WeatherFile.read(EXAMPLES.resolve("noaa_hourly_normals_seattle_1981_2010.csv"));
        assertThat(reading.hourly().hours()).isEqualTo(8759);
        rangeIs(reading.hourly(), 3.1, 24.4);
        assertThat(reading.hourly().wrapped().hours()).isEqualTo(8760);
    }

    @Test
    void degreeDaysOfMaybellMatchAPlainCount() throws IOException {
        double base = 18.0;
        double sum = 0;
        double day = 0;
        List<String> lines = Files.readAllLines(EXAMPLES.resolve("nsrdb_tmy2017_maybell_co.csv"));
        for (int i = 1; i < lines.size(); i++) {
            day += Double.parseDouble(lines.get(i).split(",")[6]);
            if (i % 24 == 0) {
                sum += Math.max(0, base - day / 24);
                day = 0;
            }
        }
        Hourly hourly = WeatherFile.read(EXAMPLES.resolve("nsrdb_tmy2017_maybell_co.csv"))
                .hourly();
        // an eased join between two months moves at most six hours on each side by half the jump
        assertThat(hourly.degreeDays(base + 273.15)).isCloseTo(sum, within(2.0));
        Weather winter = Weather.of(hourly, MAYBELL, List.of(), LocalDateTime.of(2025, 10, 1, 0, 30));
        assertThat(winter.degreeDays(base + 273.15, 0, 365 * 86400.0)).isCloseTo(sum, within(2.0));
        assertThat(sum).isBetween(3000.0, 6000.0);
    }

    @Test
    void levelSurfaceGetsTheMeasuredSunOfEveryFile() {
        for (String name : List.of("nsrdb_tmy2017_maybell_co.csv", "pvgis_tmy_45n_8e_2005_2023.csv")) {
            var reading = name.startsWith("nsrdb")
                    ? WeatherFile.read(EXAMPLES.resolve(name), MAYBELL)
                    : WeatherFile.read(EXAMPLES.resolve(name));
            Weather weather = Weather.of(reading.hourly(), reading.site().orElseThrow(), List.of(Surface.HORIZONTAL));
            double[] out = new double[weather.channels()];
            double sum = 0;
            for (double t = 0; t < weather.span(); t += 1800) {
                weather.at(t, out);
                sum += out[Weather.SUN] / 2;
            }
            double measured =
                    Arrays.stream(reading.hourly().sun().orElseThrow().global()).sum();
            assertThat(sum).isCloseTo(measured, within(1e-6 * measured));
        }
    }

    @Test
    void isdLiteRowsAreTenthsInUtc() {
        String rows = IntStream.range(0, 48)
                .mapToObj(i -> String.format(
                        Locale.ROOT,
                        "2010 01 %02d %02d %5d %5d %5d %5d %5d %5d %5d %5d",
                        1 + i / 24,
                        i % 24,
                        i == 5 ? -9999 : -100 + i,
                        -150,
                        10132,
                        200,
                        36,
                        8,
                        -9999,
                        -9999))
                .collect(Collectors.joining("\n"));
        var reading = WeatherFile.read(written(rows), MAYBELL);
        assertThat(reading.source()).startsWith("ISD-Lite");
        assertThat(reading.hourly().start()).isEqualTo(LocalDateTime.of(2009, 12, 31, 17, 0));
        assertThat(reading.hourly().temperature()[0]).isCloseTo(263.15, within(1e-9));
        assertThat(reading.hourly().temperature()[5]).isCloseTo(263.65, within(1e-9));
        assertThat(reading.hourly().wind()[0]).isCloseTo(3.6, within(1e-12));
        assertThat(reading.hourly().dewPoint().orElseThrow()[0]).isCloseTo(258.15, within(1e-9));
    }

    @Test
    void nsrdbWithItsTwoHeaderLinesSaysWhereItIs() {
        String rows = IntStream.range(0, 48)
                .mapToObj(i -> "2018,1," + (1 + i / 24) + "," + i % 24 + ",30,-5.5,2.1,100,0,100")
                .collect(Collectors.joining("\n"));
        var reading = text("Source,Location ID,Latitude,Longitude,Time Zone,Elevation,Local Time Zone\n"
                + "NSRDB,1,40.5,-108.5,-7,2168,-7\nYear,Month,Day,Hour,Minute,Temperature,Wind Speed,GHI,DNI,DHI\n"
                + rows);
        assertThat(reading.site().orElseThrow().utcOffset()).isEqualTo(-7 * 3600.0);
        assertThat(reading.hourly().hours()).isEqualTo(48);
        assertThat(reading.hourly().sun().orElseThrow().diffuse()).isPresent();
    }

    @Test
    void semicolonsDecimalCommasAndGermanDatesAreUnderstood() {
        String rows = IntStream.range(0, 48)
                .mapToObj(i -> String.format(Locale.ROOT, "%02d.01.2024 %02d:00;-3,5;7,2", 13 + i / 24, i % 24))
                .collect(Collectors.joining("\n"));
        var reading = text("Datum;Temperatur;Temperature [°C];Wind speed (km/h)\n" + rows.replace(";-3", ";x;-3"));
        assertThat(reading.hourly().start()).isEqualTo(LocalDateTime.of(2024, 1, 13, 0, 0));
        assertThat(reading.hourly().temperature()[7]).isCloseTo(269.65, within(1e-9));
        assertThat(reading.hourly().wind()[7]).isCloseTo(2, within(1e-12));
    }

    @Test
    void rowOfUnitsBelowTheHeadingsCounts() {
        var reading = text(table("time,temperature,wind\n,°F,kt", 24, i -> ",32,10"));
        assertThat(reading.hourly().temperature()[3]).isCloseTo(273.15, within(1e-9));
        assertThat(reading.hourly().wind()[3]).isCloseTo(5.144444, within(1e-6));
    }

    @Test
    void placeCanStandAboveAPlainTable() {
        var reading = text("# latitude: 53.88\n# longitude: -122.68\n# time zone: -8\n# elevation: 691\n"
                + table("time,temperature [K],GHI [W/m2]", 24, i -> ",260," + 10 * i));
        assertThat(reading.site().orElseThrow().altitude()).isEqualTo(691);
        assertThat(reading.hourly().temperature()[3]).isEqualTo(260);
        assertThat(reading.notes()).anyMatch(n -> n.what().contains("no wind in the file"));
    }

    @Test
    void longGapIsRefusedWithItsRow() {
        assertThatThrownBy(() -> text(table("time,temp_c", 48, i -> i >= 10 && i < 17 ? "," : ",1")))
                .isInstanceOf(WeatherFault.class)
                .hasMessageContaining(
                        "weather.csv, row 19: no temperature from 2024-01-01T09:00 to 2024-01-01T17:00, 7 hours");
        assertThat(text(table("time,temp_c", 48, i -> i >= 10 && i < 16 ? "," : "," + i))
                        .hourly()
                        .temperature()[12])
                .isCloseTo(273.15 + 12, within(1e-9));
    }

    @Test
    void longGapInTheSunIsModelledWhereThePlaceIsKnown() {
        String text = table(
                "time,temp_c,ghi_w_m2",
                72,
                i -> "," + (5 - 5 * Math.cos(i * Math.PI / 12)) + "," + (i < 30 ? "100" : i < 50 ? "" : "50"));
        var placed = WeatherFile.read(written(text), MAYBELL);
        assertThat(placed.hourly().sun().orElseThrow().global()[36]).isBetween(50.0, 600.0);
        assertThat(placed.notes()).anyMatch(n -> n.row() == 32 && n.what().contains("modelled"));
        assertThat(text(text).hourly().sun()).isEmpty();
    }

    @Test
    void repeatedOutOfRangeAndUnreadableRowsAreTold() {
        String text = table("time,temp_c", 30, i -> i == 4 ? ",99.9" : i == 6 ? ",cold" : ",1")
                + "\n2024-01-01T03:00,7\nyesterday,3";
        var reading = text(text);
        assertThat(reading.hourly().hours()).isEqualTo(30);
        assertThat(reading.hourly().temperature()[3]).isCloseTo(274.15, within(1e-9));
        assertThat(reading.notes().stream().map(WeatherFile.Note::toString).collect(Collectors.joining("\n")))
                .contains("row=6, what=temperature 99.90 °C is outside -80.00 to 60.00; taken as missing")
                .contains("row=8, what=temperature \"cold\" is not a number")
                .contains("row=32, what=2024-01-01T03:00 is in row 5 too")
                .contains("row=33, what=no time that can be read");
    }

    @Test
    void quarterHoursAreAveraged() {
        String rows = IntStream.range(0, 200)
                .mapToObj(i -> LocalDateTime.of(2024, 1, 1, 0, 0).plusMinutes(15L * i) + "," + (i % 4 == 0 ? 4 : 0))
                .collect(Collectors.joining("\n"));
        var reading = text("time,temp_c\n" + rows);
        assertThat(reading.hourly().hours()).isEqualTo(51);
        assertThat(reading.hourly().temperature()[10]).isCloseTo(274.15, within(1e-9));
        assertThat(reading.notes()).anyMatch(n -> n.what().contains("share an hour"));
    }

    @Test
    void datesThatCouldBeEitherWayAreRefused() {
        String rows = IntStream.range(0, 24)
                .mapToObj(i -> "01/02/2024 " + i + ":00,1")
                .collect(Collectors.joining("\n"));
        assertThatThrownBy(() -> text("time,temp_c\n" + rows)).hasMessageContaining("day/month or as month/day");
        assertThat(text("date (DD/MM/YYYY),temp_c\n" + rows).hourly().start())
                .isEqualTo(LocalDateTime.of(2024, 2, 1, 0, 0));
    }

    @Test
    void filesThatAreNoWeatherSayWhatWouldBe() throws IOException {
        assertThatThrownBy(() -> text("")).isInstanceOf(WeatherFault.class).hasMessageContaining("Give the table");
        assertThatThrownBy(() -> text("temperature,wind\n1,2"))
                .isInstanceOf(WeatherFault.class)
                .hasMessageContaining("none for the time");
        assertThatThrownBy(() -> text("time,temp_c\n2024-01-01,1")).isInstanceOf(WeatherFault.class);
        assertThatThrownBy(() -> WeatherFile.read(folder.resolve("nowhere.csv")))
                .isInstanceOf(WeatherFault.class)
                .hasMessageContaining("cannot be read");
        Path binary = Files.write(folder.resolve("b.csv"), new byte[] {0, 1, 2, (byte) 0xff});
        assertThatThrownBy(() -> WeatherFile.read(binary)).hasMessageContaining("not a text file");
        Path latin = Files.write(
                folder.resolve("l.csv"),
                table("time,temperature [°C]", 24, i -> ",5").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(WeatherFile.read(latin).hourly().hours()).isEqualTo(24);
    }

    @Test
    void anEmptyLineWithinTheTableIsRefusedByItsRowAndAFooterIsNot() {
        String table = table("time,temperature [C]", 48, h -> ",-3");
        int half = table.indexOf("2024-01-02");
        assertThatThrownBy(() -> text(table.substring(0, half) + "\n" + table.substring(half)))
                .isInstanceOf(WeatherFault.class)
                .hasMessageContaining("row 26")
                .hasMessageContaining("an empty line stands within the table");
        assertThat(text(table + "\n\n2 m above the floor, by hand, at noon\n")
                        .hourly()
                        .hours())
                .isEqualTo(48);
    }
}
