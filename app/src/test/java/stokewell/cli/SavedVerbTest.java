package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.shop.Load;
import stokewell.shop.Shop;
import tools.jackson.databind.JsonNode;

/** Wood before and after, as a person at the shell meets it. */
class SavedVerbTest {

    @TempDir
    Path folder;

    /** A winter as a logger and a diary keep it. */
    private record Winter(LocalDateTime from, int days, double kgPerKelvin, double room, long seed) {

        /** Hourly temperatures, and two loads a day by what the room needs. */
        List<String> table(boolean indoors, boolean stove) {
            Random dice = new Random(seed);
            List<String> lines = new ArrayList<>();
            lines.add("time,outdoor (C)" + (indoors ? ",room (C)" : "") + (stove ? ",stove (C)" : "") + ",wood (kg)");
            double weather = 0;
            double owed = 0;
            for (int h = 0; h < 24 * days; h++) {
                int hour = from.plusHours(h).getHour();
                if (hour == 5) {
                    weather = 0.7 * weather + 2.5 * dice.nextGaussian();
                    owed = kgPerKelvin * (room - weather - 3) * (1 + 0.15 * dice.nextGaussian()) / 2;
                }
                double out = weather - 3 * Math.cos((hour - 3) * Math.PI / 12);
                boolean load = h >= 24 && (hour == 8 || hour == 17);
                String wood = load ? String.format(Locale.ROOT, "%.2f", Math.max(0.5, owed)) : "";
                int since = hour >= 17 ? hour - 17 : hour >= 8 ? hour - 8 : 12;
                lines.add(String.format(
                        Locale.ROOT,
                        "%s,%.1f%s%s,%s",
                        from.plusHours(h).toString().replace('T', ' '),
                        out,
                        indoors ? String.format(Locale.ROOT, ",%.1f", room + 0.3 * dice.nextGaussian()) : "",
                        stove ? "," + (since == 0 ? 40 : since < 5 ? 180 - 20 * since : 60 - since) : "",
                        wood));
            }
            return lines;
        }
    }

    private static Winter first() {
        return new Winter(LocalDateTime.of(2023, 11, 1, 0, 0), 70, 1.2, 16, 1);
    }

    private static Winter second(double kgPerKelvin, double room, int days) {
        return new Winter(LocalDateTime.of(2024, 11, 1, 0, 0), days, kgPerKelvin, room, 2);
    }

    private String file(String name, List<String> lines) throws IOException {
        return Files.write(folder.resolve(name), lines).toString();
    }

    private Shell.Said compare(Winter before, Winter after, boolean indoors, String... more) throws IOException {
        List<String> words = new ArrayList<>(List.of("saved", "--zone", "UTC"));
        words.addAll(List.of("--before", file("before.csv", before.table(indoors, false))));
        words.addAll(List.of("--after", file("after.csv", after.table(indoors, false))));
        words.addAll(List.of(more));
        return Shell.say(words.toArray(String[]::new));
    }

    /** Hourly weather with sun, over both winters: ever stronger in the second. */
    private String weather(LocalDateTime from, int days, double middle) throws IOException {
        List<String> lines = new ArrayList<>(List.of("time,temp_c,wind_m_s,ghi"));
        Random dice = new Random(7);
        double clear = 0;
        for (int h = 0; h < 24 * days; h++) {
            int hour = from.plusHours(h).getHour();
            if (hour == 0) clear = 0.2 + 1.6 * dice.nextDouble();
            double sun = Math.max(0, Math.sin((hour - 6) * Math.PI / 12)) * Math.PI * middle * clear;
            lines.add(String.format(Locale.ROOT, "%s,0.0,2.0,%.0f", from.plusHours(h), sun));
        }
        return file("weather-" + from.toLocalDate() + ".csv", lines);
    }

    @Test
    void theSunOfTheWeatherFileIsTakenIntoAccount() throws IOException {
        Shell.Said said = compare(
                first(),
                second(0.8, 16, 60),
                true,
                "--weather",
                weather(LocalDateTime.of(2023, 11, 1, 0, 0), 70, 40),
                "--weather",
                weather(LocalDateTime.of(2024, 11, 1, 0, 0), 60, 90));
        assertThat(said.status()).isZero();
        assertThat(flat(said))
                .containsPattern(
                        "had 1\\.\\d kWh/m2 of sun a day more. What that is worth in wood hardly shows in the days before");
    }

    /** The card without its line ends. */
    private static String flat(Shell.Said said) {
        return said.out().replaceAll("\\s+", " ");
    }

    @Test
    void aSavingIsToldWithItsIntervalAndInTheUsersUnits() throws IOException {
        Shell.Said said = compare(first(), second(0.8, 18, 60), true);
        assertThat(said.err()).doesNotContain("wrong");
        assertThat(said.status()).isZero();
        assertThat(flat(said))
                .containsPattern("You burn 3\\d \\+/- \\d % less wood than before")
                .contains("2.0 K warmer")
                .contains("kg");
        assertThat(flat(compare(first(), second(0.8, 18, 60), true, "--units", "us")))
                .contains("lb")
                .contains("3.6 F")
                .doesNotContain(" kg");
    }

    @Test
    void theAnswerForProgramsHoldsTheTruth() throws IOException {
        JsonNode json = compare(first(), second(0.8, 18, 60), true, "--json").json();
        double value = json.get("share").get("value").asDouble();
        double half = json.get("share").get("half90").asDouble();
        assertThat(json.get("verdict").asString()).isEqualTo("less");
        assertThat(Math.abs(value - 1.0 / 3)).isLessThan(1.5 * half);
        assertThat(half).isLessThan(0.08);
        assertThat(json.get("drivenBy").asString()).isEqualTo("room less outdoors");
        assertThat(json.get("by").asString()).isEqualTo("weight");
    }

    @Test
    void fewDaysAndASmallSavingAreNotProvenYet() throws IOException {
        Shell.Said said = compare(first(), second(1.14, 16, 9), true);
        assertThat(flat(said))
                .contains("Not proven yet")
                .containsPattern("Log \\d+ more day|cannot be proven|would take");
    }

    @Test
    void aColderRoomIsNamedWhereTheRoomWasNotMeasured() throws IOException {
        Shell.Said said = compare(first(), second(0.8, 16, 60), false);
        assertThat(flat(said))
                .contains("a colder room would look like a saving")
                .contains("less wood than before");
        assertThat(flat(said)).contains("for the same weather.");
        JsonNode json = compare(first(), second(0.8, 16, 60), false, "--json", "--base", "14 C")
                .json();
        assertThat(json.get("line").get("bendK").asDouble()).isEqualTo(-14);
    }

    @Test
    void loadsThatNobodyNotedAreSaidAndLeftOut() throws IOException {
        List<String> after = second(0.8, 16, 40).table(true, true);
        List<String> holes = new ArrayList<>();
        // three days on which the stove shows fires and the diary nothing
        for (String line : after) {
            boolean forgotten = line.startsWith("2024-11-1") && line.charAt(9) >= '4' && line.charAt(9) <= '6';
            holes.add(forgotten ? line.substring(0, line.lastIndexOf(',') + 1) : line);
        }
        Shell.Said said = Shell.say(
                "saved",
                "--zone",
                "UTC",
                "--before",
                file("b.csv", first().table(true, true)),
                "--after",
                file("a.csv", holes));
        assertThat(flat(said)).contains("3 days after had a fire (stove").contains("left out");
    }

    @Test
    void aShopIsCutAtItsChangeAndMoisturesCount() throws IOException {
        Path shop = folder.resolve("shop.stokewell");
        Shell.say(
                "readings",
                "import",
                file("one.csv", temperatures(first())),
                "--shop",
                shop.toString(),
                "--zone",
                "UTC");
        Shell.say("readings", "import", file("two.csv", temperatures(second(1.2, 16, 50))), "--shop", shop.toString());
        try (Shop open = Shop.open(shop)) {
            open.together(() -> {
                loads(open, first(), 0.15);
                // as much heat, and so more weight: the wood is wetter
                loads(open, second(1.2, 16, 50), 0.25);
            });
            open.keepRig(0, "old", "name: old\n");
            open.keepRig(Instant.parse("2024-06-01T00:00:00Z").getEpochSecond(), "with a store", "name: new\n");
        }
        Shell.Said said = Shell.say("saved", "--shop", shop.toString());
        assertThat(said.err()).contains("the change is 2024-06-01, from when on the shop keeps the rig with a store");
        assertThat(flat(said)).contains("15 % water before and 25 % after");
        JsonNode cut = Shell.say("saved", "--shop", shop.toString(), "--change", "1 Jun 2024", "--json")
                .json();
        JsonNode spans = Shell.say(
                        "saved",
                        "--shop",
                        shop.toString(),
                        "--json",
                        "--before",
                        "1 Nov 2023..1 Feb 2024",
                        "--after",
                        "1 Nov 2024..1 Feb 2025")
                .json();
        assertThat(spans.get("share")).isEqualTo(cut.get("share"));
        // equal weights of wetter wood are less heat: (1 - w) 5.1 - 0.679 w kWh a kg
        double heat = (5.1 * 0.75 - 0.6786 * 0.25) / (5.1 * 0.85 - 0.6786 * 0.15);
        assertThat(cut.get("share").get("value").asDouble()).isBetween(1 - heat - 0.07, 1 - heat + 0.07);
    }

    private static List<String> temperatures(Winter w) {
        return w.table(true, false).stream()
                .map(l -> l.substring(0, l.lastIndexOf(',')))
                .toList();
    }

    private static void loads(Shop open, Winter w, double moisture) {
        for (String line : w.table(true, false).subList(1, 24 * w.days())) {
            String[] cells = line.split(",", -1);
            if (cells[3].isEmpty()) continue;
            long time = LocalDateTime.parse(cells[0].replace(' ', 'T')).toEpochSecond(ZoneOffset.UTC);
            open.add(new Load(0, time, Double.parseDouble(cells[3]), moisture, "", ""));
        }
    }

    @Test
    void thePageHoldsBothPeriodsAndAsksForNothing() throws IOException {
        Path page = folder.resolve("saved.html");
        compare(first(), second(0.8, 18, 60), true, "--html", page.toString());
        assertThat(Files.readString(page))
                .contains("<svg")
                .contains("less wood than before")
                .contains("before")
                .contains("±")
                .doesNotContain("http://")
                .doesNotContain("<script");
    }

    @Test
    void whatIsAskedWronglyIsToldWithWhatWouldBeRight() throws IOException {
        String csv = file("x.csv", first().table(true, false));
        assertThat(Shell.say(
                                "saved",
                                "--before",
                                csv,
                                "--shop",
                                folder.resolve("none").toString())
                        .err())
                .contains("There is no");
        assertThat(compare(first(), second(0.8, 16, 3), true).err()).contains("needs 5");
        assertThat(Shell.say("saved", "--zone", "UTC", "--before", csv, "--after", "last winter")
                        .err())
                .contains("neither a file here nor days");
    }
}
