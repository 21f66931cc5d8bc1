package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as loggers of all sorts write them. */
class ReadingsFileTest {

    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    private static final Instant NOW = Instant.parse("2026-06-01T00:00:00Z");
    private static final ReadingsAsk PLAIN = ReadingsAsk.plain(ZoneId.of("UTC"), NOW);

    @TempDir
    Path folder;

    private ReadingsFile read(ReadingsAsk ask, String... lines) {
        return read(ask, String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    private ReadingsFile read(String... lines) {
        return read(PLAIN, lines);
    }

    private ReadingsFile read(ReadingsAsk ask, byte[] bytes) {
        try {
            return ReadingsFile.read(Files.write(folder.resolve("log.csv"), bytes), ask);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static long at(String utc) {
        return Instant.parse(utc).getEpochSecond();
    }

    private static List<Double> celsius(ReadingsSeries s) {
        List<Double> all = new ArrayList<>();
        for (double v : s.values()) all.add(Math.rint((v - 273.15) * 1e4) / 1e4);
        return all;
    }

    private static void refused(ThrowingCallable reading, int row, String what, String remedy) {
        assertThatThrownBy(reading).isInstanceOfSatisfying(ReadingsFault.class, fault -> {
            assertThat(fault.what).contains(what);
            assertThat(fault.remedy).contains(remedy);
            assertThat(fault.row).isEqualTo(row);
        });
    }

    private ReadingsAsk dates(DateOrder order) {
        return with(Optional.of(order), Optional.empty(), Optional.empty());
    }

    private static ReadingsAsk with(Optional<DateOrder> order, Optional<Character> mark, Optional<ZoneId> zone) {
        return new ReadingsAsk(
                zone, ZoneId.of("UTC"), order, mark, Optional.empty(), Optional.empty(), List.of(), false, NOW);
    }

    private static ReadingsAsk in(ZoneId zone) {
        return with(Optional.empty(), Optional.empty(), Optional.of(zone));
    }

    // ---- separators, marks, letters

    @ParameterizedTest
    @ValueSource(strings = {",", ";", "\t", "|"})
    void everySeparatorIsFound(String s) {
        ReadingsFile file = read(
                "time" + s + "room [C]" + s + "store [C]",
                "2024-01-31 17:05" + s + "18.5" + s + "61",
                "2024-01-31 17:10" + s + "18.4" + s + "60.5");
        assertThat(file.series()).extracting(ReadingsSeries::name).containsExactly("room", "store");
        assertThat(celsius(file.series().get(1))).containsExactly(61.0, 60.5);
        assertThat(file.series().get(0).times())
                .containsExactly(at("2024-01-31T17:05:00Z"), at("2024-01-31T17:10:00Z"));
    }

    @Test
    void blanksSeparateToo() {
        ReadingsFile file =
                read("date time room_C flue_C", "2024-01-31  17:05   18.5   210", "2024-01-31  17:10   18.4   205");
        assertThat(file.series()).extracting(ReadingsSeries::name).containsExactly("room", "flue");
        assertThat(celsius(file.series().get(1))).containsExactly(210.0, 205.0);
    }

    @Test
    void aDecimalCommaIsReadWhereItIsOne() {
        ReadingsFile file =
                read("Datum;Raum (°C);Leistung [W]", "31.01.2024 17:05;18,5;1.250,5", "31.01.2024 17:10;-0,25;900");
        assertThat(celsius(file.series().get(0))).containsExactly(18.5, -0.25);
        assertThat(file.series().get(1).values()).containsExactly(1250.5, 900);
    }

    @Test
    void quotedCellsWithDecimalCommasAreRead() {
        ReadingsFile file =
                read("\"time\",\"room, lower [C]\"", "\"2024-01-31 17:05\",\"18,5\"", "\"2024-01-31 17:10\",\"18,25\"");
        assertThat(file.series().get(0).name()).isEqualTo("room, lower");
        assertThat(celsius(file.series().get(0))).containsExactly(18.5, 18.25);
    }

    @Test
    void aCommaThatCanBeEitherIsAskedFor() {
        String[] lines = {"time;power [W]", "2024-01-31 17:05;1,250", "2024-01-31 17:10;1,300"};
        refused(() -> read(lines), 2, "decimal mark or stand for thousands", "--decimal");
        ReadingsFile comma = read(with(Optional.empty(), Optional.of(','), Optional.empty()), lines);
        assertThat(comma.series().get(0).values()).containsExactly(1.25, 1.3);
        ReadingsFile point = read(with(Optional.empty(), Optional.of('.'), Optional.empty()), lines);
        assertThat(point.series().get(0).values()).containsExactly(1250, 1300);
    }

    @Test
    void bothMarksInOneFileAreRefused() {
        refused(
                () -> read("time;room [C]", "2024-01-31 17:05;18,5", "2024-01-31 17:10;18.4"),
                3,
                "decimal point and with a decimal comma",
                "--decimal");
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "windows-1252"})
    void everyEncodingIsFoundWithAndWithoutItsMark(String name) {
        String text = "time;r\u00f8\u00f8m (\u00b0C)\r\n2024-01-31 17:05;18.5\r\n2024-01-31 17:10;18.4\r\n";
        Charset charset = Charset.forName(name);
        ReadingsFile bare = read(PLAIN, text.getBytes(charset));
        assertThat(bare.series().get(0).name()).isEqualTo("r\u00f8\u00f8m");
        if (name.startsWith("UTF")) {
            ReadingsFile marked = read(PLAIN, ("\ufeff" + text).getBytes(charset));
            assertThat(marked.series().get(0).name()).isEqualTo("r\u00f8\u00f8m");
            assertThat(celsius(marked.series().get(0))).containsExactly(18.5, 18.4);
        }
    }

    @Test
    void whatIsNoTextIsRefusedInWords() {
        refused(() -> read(PLAIN, new byte[] {'P', 'K', 3, 4, 0, 0}), 0, "spreadsheet", "CSV");
        refused(() -> read(PLAIN, new byte[] {0x1F, (byte) 0x8B, 8}), 0, "compressed", "Unpack");
        refused(() -> read(PLAIN, new byte[] {}), 0, "empty", "again");
        refused(() -> read("just", "some", "words"), 0, "no table", "CSV");
    }

    // ---- headings, units, layout

    @Test
    void linesBeforeAndAfterTheTableAreNoneOfIt() {
        ReadingsFile file = read(
                "Logger 7, serial \"0042",
                "started, 2024-01-31",
                "",
                "No;Time;Room;Store;Remark",
                ";;°F;°F;",
                "1;2024-01-31 17:05;68;140;",
                "2;2024-01-31 17:10;50;141;ok",
                "",
                "end of log");
        assertThat(file.series()).extracting(ReadingsSeries::name).containsExactly("Room", "Store");
        assertThat(celsius(file.series().get(0))).containsExactly(20.0, 10.0);
        assertThat(file.told())
                .anySatisfy(t -> assertThat(t).contains("from row 9").contains("after the table"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Temp (°F)|Temp|F",
                "room1_c|room1|C",
                "T_ext [C]|T_ext|C",
                "Temp, °F (S/N: 12, LBL: shed)|Temp|F",
                "Store top / K|Store top|K",
                "Flue ℃|Flue|C",
                "RH %|RH|%",
                "power_kW|power|kW",
                "Flow [L/min]|Flow|L/min",
                "wind_km_h|wind|km/h",
                "Sun (W/m²)|Sun|W/m2",
                "deg F|deg F|F",
                "Druck [hPa]|Druck|hPa"
            })
    void headingsTellNameAndUnit(String heading, String name, String unit) {
        ReadingsHeading read = ReadingsHeading.of(heading, "");
        assertThat(read.name()).isEqualTo(name);
        assertThat(read.unit().orElseThrow())
                .isEqualTo(SensorUnit.named(unit)
                        .orElseThrow()
                        .as(read.unit().get().kind()));
    }

    @Test
    void humidityIsKnownFromItsName() {
        ReadingsFile file = read("time,Humidity (%),Valve (%)", "2024-01-31 17:05,55.5,20", "2024-01-31 17:10,56,21");
        assertThat(file.series())
                .extracting(s -> s.unit().kind())
                .containsExactly(SensorKind.HUMIDITY, SensorKind.SHARE);
        assertThat(file.series().get(0).values()[0]).isCloseTo(0.555, within(1e-12));
    }

    @Test
    void secondsSinceAStartThatIsSaidBecomeMoments() {
        ReadingsAsk ask = in(ZoneId.of("Europe/Oslo")).from(Optional.of(LocalDateTime.parse("2024-01-31T17:00:00")));
        ReadingsFile file = read(ask, "t_s,room [C]", "0,18.5", "300.4,18.4", "90000,18.0");
        long start = Instant.parse("2024-01-31T16:00:00Z").getEpochSecond();
        assertThat(file.series().get(0).times()).containsExactly(start, start + 300, start + 90000);
        assertThat(celsius(file.series().get(0))).containsExactly(18.5, 18.4, 18.0);
        ReadingsFile minutes = read(ask, "No;elapsed [min];room [C]", "1;0;18,5", "2;2,5;18,4");
        assertThat(minutes.series().get(0).times()).containsExactly(start, start + 150);
        refused(() -> read(ask, "n,room [C]", "0,18.5", "300,18.4"), 0, "no column that counts", "t_s");
    }

    @Test
    void unitsInTheCellsCountEachByItself() {
        ReadingsFile file = read("time;room", "2024-01-31 17:05;20.5 °C", "2024-01-31 17:10;68 °F");
        assertThat(celsius(file.series().get(0))).containsExactly(20.5, 20.0);
    }

    @Test
    void aTemperatureWithoutUnitIsAskedFor() {
        String[] lines = {"time,Temp", "2024-01-31 17:05,68", "2024-01-31 17:10,69"};
        refused(() -> read(lines), 2, "its unit is not said", "--unit C or --unit F");
        ReadingsAsk fahrenheit = new ReadingsAsk(
                Optional.empty(),
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                SensorUnit.named("F"),
                Optional.empty(),
                List.of(),
                false,
                NOW);
        assertThat(celsius(read(fahrenheit, lines).series().get(0))).startsWith(20.0);
    }

    @Test
    void onlyWhatIsAskedForIsTakenUnderItsNewName() {
        ReadingsAsk ask = new ReadingsAsk(
                Optional.empty(),
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(
                        new ReadingsAsk.Wanted("T2", "store top", SensorUnit.named("C")),
                        new ReadingsAsk.Wanted("4", "pump", Optional.empty())),
                false,
                NOW);
        ReadingsFile file = read(ask, "time,T1,T2,P", "2024-01-31 17:05,1,61,on", "2024-01-31 17:10,1,62,off");
        assertThat(file.series()).extracting(ReadingsSeries::name).containsExactly("store top", "pump");
        assertThat(file.series().get(1).unit().kind()).isEqualTo(SensorKind.SWITCH);
        assertThat(file.series().get(1).values()).containsExactly(1, 0);
    }

    @Test
    void aRowPerReadingIsTurnedIntoSensors() {
        ReadingsFile file = read(
                "entity_id,state,unit,last_changed",
                "store top,61.5,°C,2024-01-31T17:05:00.123Z",
                "store top,61.25,°C,2024-01-31T17:10:00Z",
                "pump,on,,2024-01-31T17:05:30Z",
                "room,68,°F,2024-01-31T17:05:00Z",
                "pump,off,,2024-01-31T17:09:30Z",
                "mode,heating,,2024-01-31T17:09:30Z",
                "store top,unavailable,°C,2024-01-31T17:15:00Z");
        assertThat(file.series()).extracting(ReadingsSeries::name).containsExactly("store top", "pump", "room");
        assertThat(celsius(file.series().get(0))).containsExactly(61.5, 61.25);
        assertThat(file.series().get(0).tale().missing()).isEqualTo(1);
        assertThat(file.series().get(1).values()).containsExactly(1, 0);
        assertThat(celsius(file.series().get(2))).containsExactly(20.0);
        assertThat(file.told()).anySatisfy(t -> assertThat(t).contains("left out: mode"));
    }

    @Test
    void channelsByNumberAreSensorsToo() {
        ReadingsFile file = read(
                "channel;time;value [C];battery [V]",
                "1;2024-01-31 17:05;20;3",
                "2;2024-01-31 17:05;60;3",
                "1;2024-01-31 17:10;20.5;3",
                "2;2024-01-31 17:10;61;3");
        assertThat(file.series()).extracting(ReadingsSeries::name).contains("1 value", "2 value");
    }

    @Test
    void aTableWithoutHeadingsIsReadByTheNumbersOfItsColumns() {
        ReadingsAsk ask = new ReadingsAsk(
                Optional.empty(),
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(new ReadingsAsk.Wanted("2", "room", SensorUnit.named("C"))),
                false,
                NOW);
        ReadingsFile file = read(ask, "2024-01-31 17:05,20.5,1", "2024-01-31 17:10,20.4,1");
        assertThat(file.series())
                .singleElement()
                .extracting(ReadingsSeries::name)
                .isEqualTo("room");
        assertThat(file.series().get(0).size()).isEqualTo(2);
    }

    // ---- dates

    @ParameterizedTest
    @ValueSource(
            strings = {
                "2024-01-31 17:05", "2024-01-31T17:05:00", "2024/01/31 17:05", "2024-01-31T17:05:00Z",
                        "2024-01-31 18:05:00+01:00",
                "2024-01-31T12:05:00-0500", "31.01.2024 17:05", "31/1/24 5:05 pm", "1/31/2024 5:05:00 PM",
                        "01-31-2024 17:05",
                "Jan 31, 2024 5:05 PM", "31 Jan 2024 17:05", "31-Jan-24 17:05:00", "Wed, 31 January 2024 17:05",
                        "20240131 1705",
                "20240131T170500Z", "2024-01-31 17:05:00.999", "2024-01-31 17:05 UTC", "2024-01-31 18:05 CET",
                        "17:05 31.01.2024",
                "1706720700", "1706720700000", "2024-1-31, 17:05", "20240131:1705"
            })
    void thisMomentIsReadHoweverItIsWritten(String moment) {
        ReadingsFile file = read("time;room [C]", moment + ";18.5");
        assertThat(file.series().get(0).times()).containsExactly(at("2024-01-31T17:05:00Z"));
    }

    @Test
    void twelveHourClocksKnowNoonAndMidnight() {
        ReadingsFile file = read(
                "time,room [C]",
                "1/31/2024 12:05 AM,1",
                "1/31/2024 11:05 AM,2",
                "1/31/2024 12:05 PM,3",
                "1/31/2024 11:05 PM,4");
        assertThat(file.series().get(0).times())
                .containsExactly(
                        at("2024-01-31T00:05:00Z"),
                        at("2024-01-31T11:05:00Z"),
                        at("2024-01-31T12:05:00Z"),
                        at("2024-01-31T23:05:00Z"));
    }

    @Test
    void dateAndTimeMayStandApartAndTheDayMayEndWithTwentyFour() {
        ReadingsFile file =
                read("Date;Time;room [C]", "30.01.2024;23:00;1", "30.01.2024;24:00;2", "31.01.2024;01:00;3");
        assertThat(file.series().get(0).times())
                .containsExactly(at("2024-01-30T23:00:00Z"), at("2024-01-31T00:00:00Z"), at("2024-01-31T01:00:00Z"));
    }

    @Test
    void theOrderOfDatesIsKnownByADayOverTwelve() {
        assertThat(read("time,room [C]", "03/04/2024 00:00,1", "03/31/2024 00:00,2")
                        .series()
                        .get(0)
                        .times())
                .startsWith(at("2024-03-04T00:00:00Z"));
        assertThat(read("time,room [C]", "03/04/2024 00:00,1", "30/04/2024 00:00,2")
                        .series()
                        .get(0)
                        .times())
                .startsWith(at("2024-04-03T00:00:00Z"));
    }

    @Test
    void theOrderOfDatesIsKnownByDaysThatFollowEachOther() {
        ReadingsFile file = read(
                "time,room [C]",
                "03/04/2024 23:50,1",
                "03/04/2024 23:55,1",
                "04/04/2024 00:00,2",
                "04/04/2024 00:05,2");
        assertThat(file.series().get(0).times()).startsWith(at("2024-04-03T23:50:00Z"));
        assertThat(file.told()).anySatisfy(t -> assertThat(t).contains("read as dmy"));
    }

    @Test
    void datesThatLeaveAChoiceAreAskedFor() {
        String[] lines = {"time,room [C]", "03/04/2024 10:00,1", "03/04/2024 10:05,2"};
        refused(() -> read(lines), 2, "can be read as dmy or mdy", "--dates dmy");
        assertThat(read(dates(DateOrder.MDY), lines).series().get(0).times()).startsWith(at("2024-03-04T10:00:00Z"));
        assertThat(read(dates(DateOrder.DMY), lines).series().get(0).times()).startsWith(at("2024-04-03T10:00:00Z"));
        String[] two = {"time,room [C]", "03/04/05 10:00,1", "03/04/05 10:05,2"};
        assertThat(read(dates(DateOrder.YMD), two).series().get(0).times()).startsWith(at("2003-04-05T10:00:00Z"));
    }

    @Test
    void datesOfBothOrdersAreRefused() {
        refused(() -> read("time,room [C]", "03/31/2024 10:00,1", "31/03/2024 10:05,2"), 3, "is not a moment", "Mend");
    }

    @Test
    void theHeadingMayNameTheZone() {
        ReadingsFile file = read(in(ZoneId.of("UTC")), "Time GMT-05:00,room [C]", "2024-01-31 12:05,1");
        assertThat(file.series().get(0).times()).containsExactly(at("2024-01-31T12:05:00Z"));
        assertThat(read("Time GMT-05:00,room [C]", "2024-01-31 12:05,1")
                        .series()
                        .get(0)
                        .times())
                .containsExactly(at("2024-01-31T17:05:00Z"));
        ReadingsAsk oslo = ReadingsAsk.plain(OSLO, NOW);
        assertThat(read(oslo, "time_utc,room [C]", "2024-01-31 17:05,1")
                        .series()
                        .get(0)
                        .times())
                .containsExactly(at("2024-01-31T17:05:00Z"));
        assertThat(read(oslo, "time,room [C]", "2024-01-31 18:05,1")
                        .series()
                        .get(0)
                        .times())
                .containsExactly(at("2024-01-31T17:05:00Z"));
    }

    // ---- daylight saving. Europe: forward 31 March 2024 02:00, back 27 October 2024 03:00

    @Test
    void theHourThatComesTwiceIsReadTwice() {
        ReadingsFile file = read(
                in(OSLO),
                "time,room [C]",
                "2024-10-27 01:30,1",
                "2024-10-27 02:00,2",
                "2024-10-27 02:30,3",
                "2024-10-27 02:00,4",
                "2024-10-27 02:30,5",
                "2024-10-27 03:00,6");
        assertThat(file.series().get(0).times())
                .containsExactly(
                        at("2024-10-26T23:30:00Z"),
                        at("2024-10-27T00:00:00Z"),
                        at("2024-10-27T00:30:00Z"),
                        at("2024-10-27T01:00:00Z"),
                        at("2024-10-27T01:30:00Z"),
                        at("2024-10-27T02:00:00Z"));
        assertThat(file.series().get(0).tale().jumps()).isEmpty();
        assertThat(file.told())
                .anySatisfy(t -> assertThat(t).startsWith("row 5").contains("end of summer time"));
    }

    @Test
    void aClockThatDoesNotShiftIsFoundOutInSpringAndAutumn() {
        refused(
                () -> read(in(OSLO), "time,room [C]", "2024-03-31 01:30,1", "2024-03-31 02:00,2", "2024-03-31 02:30,3"),
                3,
                "2024-03-31 02:00 does not exist in Europe/Oslo",
                "--zone +01:00");
        String[] autumn = {
            "time,room [C]",
            "2024-10-27 01:00,1",
            "2024-10-27 01:30,1",
            "2024-10-27 02:00,2",
            "2024-10-27 02:30,3",
            "2024-10-27 03:00,4",
            "2024-10-27 03:30,4"
        };
        refused(() -> read(in(OSLO), autumn), 4, "comes twice in Europe/Oslo, but stands here once", "--zone +01:00");
        ReadingsFile file = read(in(ZoneId.of("+01:00")), autumn);
        assertThat(file.series().get(0).times())
                .startsWith(at("2024-10-27T00:00:00Z"))
                .hasSize(6);
    }

    @Test
    void halfOfTheDoubleHourJoinsTheSideItTouches() {
        ReadingsFile before =
                read(in(OSLO), "time,room [C]", "2024-10-27 01:30,1", "2024-10-27 02:00,2", "2024-10-27 02:30,3");
        assertThat(before.series().get(0).times()).endsWith(at("2024-10-27T00:30:00Z"));
        ReadingsFile after =
                read(in(OSLO), "time,room [C]", "2024-10-27 02:00,2", "2024-10-27 02:30,3", "2024-10-27 03:00,3");
        assertThat(after.series().get(0).times()).startsWith(at("2024-10-27T01:00:00Z"));
    }

    // ---- order, doubles, clocks

    @Test
    void theNewestFirstIsTurnedRound() {
        ReadingsFile file = read("time,room [C]", "2024-01-31 17:10,3", "2024-01-31 17:05,2", "2024-01-31 17:00,1");
        assertThat(celsius(file.series().get(0))).containsExactly(1.0, 2.0, 3.0);
        assertThat(file.series().get(0).tale().jumps()).isEmpty();
    }

    @Test
    void doublesAreKeptOnceAndDifferencesToldByRow() {
        ReadingsFile file = read(
                "time,room [C]",
                "2024-01-31 17:00,1",
                "2024-01-31 17:05,2",
                "2024-01-31 17:05,2",
                "2024-01-31 17:10,3",
                "2024-01-31 17:05,9",
                "2024-01-31 17:15,4");
        ReadingsSeries room = file.series().get(0);
        assertThat(celsius(room)).containsExactly(1.0, 2.0, 3.0, 4.0);
        assertThat(room.tale().twice()).isEqualTo(1);
        assertThat(room.tale().differing()).isEqualTo(1);
        assertThat(room.tale().differRow()).isEqualTo(6);
        assertThat(room.tale().jumps())
                .containsExactly(new ReadingsSeries.Jump(6, at("2024-01-31T17:10:00Z"), at("2024-01-31T17:05:00Z")));
    }

    @Test
    void aClockThatWasNotSetIsLeftOutByRow() {
        ReadingsFile file = read(
                "time,room [C]",
                "1970-01-01 00:00,1",
                "1970-01-01 00:05,2",
                "2024-01-31 17:05,3",
                "2099-01-01 00:00,4",
                "2024-01-31 17:10,5");
        ReadingsSeries room = file.series().get(0);
        assertThat(celsius(room)).containsExactly(3.0, 5.0);
        assertThat(room.tale().unset()).isEqualTo(3);
        assertThat(room.tale().unsetRow()).isEqualTo(2);
        refused(() -> read("time,room [C]", "1970-01-01 00:00,1"), 2, "before the year 2000", "clock");
    }

    @Test
    void codesOfBrokenProbesAreNoReadings() {
        ReadingsFile file = read(
                "time,room [C]",
                "2024-01-31 17:00,20",
                "2024-01-31 17:05,-127",
                "2024-01-31 17:10,-9999",
                "2024-01-31 17:15,",
                "2024-01-31 17:20,NaN",
                "2024-01-31 17:25,21");
        ReadingsSeries.Tale tale = file.series().get(0).tale();
        assertThat(celsius(file.series().get(0))).containsExactly(20.0, 21.0);
        assertThat(tale.impossible()).isEqualTo(1);
        assertThat(tale.wrongRow()).isEqualTo(3);
        assertThat(tale.missing()).isEqualTo(3);
        refused(() -> read("time,P [C]", "2024-01-31 17:05,4825"), 2, "cannot be a temperature in C", "--map");
    }

    // ---- broken files

    @Test
    void aBrokenRowRefusesAllOfTheFileByItsRow() {
        String[] head = {"time,room [C],store [C]", "2024-01-31 17:00,20,60"};
        refused(
                () -> read(head[0], head[1], "2024-01-31 17:05,20"),
                3,
                "ends early: 2 cells where other rows have 3",
                "again");
        refused(
                () -> read(head[0], head[1], "2024-01-31 17:05,20,61,5"),
                3,
                "4 cells, but there are 3 headings",
                "comma");
        refused(
                () -> read(head[0], head[1], "2024-01-31 17:05,20,6l"),
                3,
                "\"6l\" in \"store\" is not a number",
                "Mend");
        refused(
                () -> read(head[0], head[1], "2024-01-32 17:05,20,61"),
                3,
                "\"2024-01-32 17:05\" is not a moment",
                "Mend");
        refused(() -> read(head[0], head[1], ",20,61"), 3, "it has no time", "Mend");
        refused(() -> read(head[0], head[1], "2024-01-31 17:05,\"20,61"), 3, "cannot be taken apart", "quotation");
        refused(
                () -> read(head[0], head[1], "", "battery changed", "2024-01-31 17:05,20,61"),
                5,
                "the table goes on here, but row 4 is none of it",
                "out");
    }

    @Test
    void singleRowsMayBeLeftOutIfAsked() {
        ReadingsAsk skip = new ReadingsAsk(
                Optional.empty(),
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                true,
                NOW);
        ReadingsFile file = read(
                skip,
                "time,room [C],store [C]",
                "2024-01-31 17:00,20,60",
                "2024-01-31 17:05,21,6l",
                ",5,5",
                "2024-01-31 17:10,22,62");
        assertThat(celsius(file.series().get(0))).containsExactly(20.0, 22.0);
        assertThat(celsius(file.series().get(1))).containsExactly(60.0, 62.0);
        assertThat(file.told()).anySatisfy(t -> assertThat(t).startsWith("row 3 left out"));
        assertThat(file.told()).anySatisfy(t -> assertThat(t).startsWith("row 4 left out"));
    }

    @Test
    void twoColumnsOfOneNameAreRefused() {
        refused(
                () -> read("time,T [C],T [C]", "2024-01-31 17:00,20,60"),
                0,
                "two columns are called \"T\"",
                "--map 2=room");
    }

    // ---- files of others, as they stand in the examples

    @Test
    void anAirportsFahrenheitIsRead() throws IOException {
        ReadingsAsk skip = new ReadingsAsk(
                Optional.empty(),
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                true,
                NOW);
        Path albuquerque = Path.of("../examples/weather/asos_albuquerque_nm_2017_hourly.csv");
        assertThatThrownBy(() -> ReadingsFile.read(albuquerque, PLAIN)).hasMessageContaining("it has no time");
        ReadingsFile file = ReadingsFile.read(albuquerque, skip);
        ReadingsSeries temperature = file.series().get(0);
        assertThat(temperature.name()).isEqualTo("temp");
        // first row: 2017-01-01T07:00:00Z, 32 F
        assertThat(temperature.times()[0]).isEqualTo(at("2017-01-01T07:00:00Z"));
        assertThat(temperature.values()[0]).isCloseTo(273.15, within(1e-9));
        assertThat(temperature.size()).isGreaterThan(8600);
    }

    @Test
    void aCanadianHalfYearIsRead() throws IOException {
        Path george = Path.of("../examples/weather/eccc_prince_george_bc_2016h1_hourly.csv");
        ReadingsFile file = ReadingsFile.read(george, ReadingsAsk.plain(ZoneId.of("-08:00"), NOW));
        assertThat(file.series()).extracting(ReadingsSeries::name).contains("temp", "dew_point", "rh", "pressure");
        assertThat(file.series().get(0).times()[0]).isEqualTo(at("2016-01-01T08:00:00Z"));
        assertThat(celsius(file.series().get(0))).startsWith(-20.0, -21.3);
    }
}
