package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments as loggers write them: dates, clocks, zones and the hour that comes twice. */
class ReadingsTimesTest extends ReadingsTables {

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
}
