package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.Charset;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables as loggers of all sorts write them: separators, marks, encodings, headings, layouts. */
class ReadingsTableTest extends ReadingsTables {

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

    /** The commonest cheap logger names places and no unit; a long table names what its values are. */
    @Test
    void aPlaceWithoutAUnitIsAskedForAndNotKeptAsANumber() {
        assertThatThrownBy(() -> read("time,room,store top", "2024-01-31 17:05,18.5,61", "2024-01-31 17:10,18.4,60"))
                .isInstanceOf(ReadingsFault.class)
                .hasMessageContaining("\"room\" looks like a temperature")
                .hasMessageContaining("--unit C");
        assertThatThrownBy(() ->
                        read("timestamp,device,temperature", "2024-01-31 17:05,A1,18.5", "2024-01-31 17:10,A1,18.4"))
                .hasMessageContaining("\"A1\" looks like a temperature");
        assertThat(read("time,co2 room,runs", "2024-01-31 17:05,618,3", "2024-01-31 17:10,620,4")
                        .series())
                .extracting(s -> s.unit().kind())
                .containsOnly(SensorKind.NUMBER);
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
        ReadingsFile least = read(ask, "room [C];min;t_s", "18,5;17,0;0", "18,4;16,9;60");
        assertThat(least.series().get(0).times()).containsExactly(start, start + 60);
        ReadingsFile quoted = read(ask, "t_s;\"bench; left [C]\"", "0;18,5", "60;18,4");
        assertThat(quoted.series().get(0).name()).contains("bench; left");
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
}
