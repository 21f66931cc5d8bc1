package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a file does wrong is mended by a rule and told by its row, or refused. */
class ReadingsFileTest extends ReadingsTables {

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
                "it has 2 cells where other rows have 3",
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
