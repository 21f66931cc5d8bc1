package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.shop.Shop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A fit as a person at the shell meets it, on a part of the example's readings. */
class FitVerbTest {

    private static final String RIG = "../examples/boat-shed.yaml";
    private static final Path READINGS = Path.of("../examples/readings/boat-shed.csv");
    private static final String WEATHER = "../examples/weather/eccc_prince_george_bc_2016h1_hourly.csv";

    @TempDir
    Path folder;

    private static Shell.Said fit(Path readings, String... more) {
        List<String> words = new ArrayList<>(List.of(
                "fit", RIG, "--readings", readings.toString(), "--weather", WEATHER, "--until", "2016-01-22 19:00"));
        words.addAll(List.of(more));
        return Shell.say(words.toArray(String[]::new));
    }

    @Test
    void loadsThatNobodyNotedAreFoundByTheStovesSensorAndAllIsToldInOneRun() throws Exception {
        List<String> lines = Files.readAllLines(READINGS);
        int noted = 0;
        List<String> bare = new ArrayList<>();
        for (String line : lines) {
            int last = line.lastIndexOf(',');
            if (line.compareTo("2016-01-22 19:00") < 0 && last < line.length() - 1) noted++;
            bare.add(line.substring(0, last));
        }
        Path log = Files.write(folder.resolve("log.csv"), bare);
        Path page = folder.resolve("fit.html");
        Shell.Said said = fit(log, "--json", "--profile", "pump", "--html", page.toString());
        assertThat(said.status()).as(said.err()).isZero();
        JsonNode json = said.json();
        assertThat(json.get("loads").size()).isBetween(3, noted);
        for (JsonNode load : json.get("loads")) {
            assertThat(load.get("noted").asString()).isEqualTo("false");
            assertThat(load.get("kg").asDouble()).isBetween(1.0, 40.0);
        }
        assertThat(json.get("factors").size()).isGreaterThan(8);
        assertThat(json.get("profiles").get(0).get("name").asString()).isEqualTo("pump");
        assertThat(json.get("sensors").toString()).contains("stove");
        assertThat(json.get("changed").get("days").size()).isPositive();
        assertThat(Files.readString(page)).contains("Day by day").contains("Tern Ledge boat shed");
    }

    @Test
    void aFitOfTheShopsReadingsIsKeptInTheShopWithItsWords() throws Exception {
        String shop = folder.resolve("shop.stokewell").toString();
        Shell.Said taken = Shell.say("readings", "import", READINGS.toString(), "--zone", "-05:00", "--shop", shop);
        assertThat(taken.status()).as(taken.err()).isZero();
        Shell.Said said =
                Shell.say("fit", RIG, "--shop", shop, "--weather", WEATHER, "--until", "2016-01-21 20:00", "--json");
        assertThat(said.status()).as(said.err()).isZero();
        assertThat(said.err()).contains("kept in " + shop + " as fit 1");
        // the weights that came with the table are loads
        assertThat(said.json().get("loads").get(0).get("noted").asString()).isEqualTo("true");
        try (Shop open = Shop.openExisting(Path.of(shop))) {
            assertThat(open.fits()).hasSize(1);
            JsonNode kept = new JsonMapper().readTree(open.fits().get(0).body());
            assertThat(kept.get("fit")).isEqualTo(said.json());
            assertThat(kept.get("si").get("sentences").get(0).asString()).contains(" W at ");
            assertThat(kept.get("us").get("sentences").get(0).asString()).contains(" Btu/h at ");
            assertThat(kept.get("of").get("file").asString()).isEqualTo(Files.readString(Path.of(RIG)));
        }
    }

    @Test
    void aShopWhoseClockIsNotTheRigsIsTold() throws Exception {
        for (String zone : List.of("-05:00", "America/New_York", "Europe/Oslo")) {
            String shop =
                    folder.resolve(zone.replaceAll("\\W", "") + ".stokewell").toString();
            Shell.Said taken = Shell.say("readings", "import", READINGS.toString(), "--zone", zone, "--shop", shop);
            assertThat(taken.status()).as(taken.err()).isZero();
            FitReadings readings = new FitReadings();
            readings.source = "shop";
            readings.shop = Path.of(shop);
            readings.weather = WEATHER;
            List<String> told = readings.read(
                            RigFile.read(Path.of(RIG), List.of()).rig(), Path.of(RIG), UnitSystem.SI)
                    .told();
            boolean alike = !zone.startsWith("Europe");
            assertThat(told.stream().anyMatch(t -> t.contains("the rig's standard time is -05:00")))
                    .as(zone)
                    .isNotEqualTo(alike);
            if (!alike) assertThat(told.toString()).contains("Europe/Oslo (+01:00 in winter)");
        }
    }

    @Test
    void aZoneThatIsSaidIsTakenForTimesThatCarryNone() throws Exception {
        double[] first = new double[2];
        for (int k = 0; k < 2; k++) {
            FitReadings readings = new FitReadings();
            readings.source = READINGS.toString();
            readings.weather = WEATHER;
            readings.zone = k == 0 ? null : "-06:00";
            FitReadings.Found found =
                    readings.read(RigFile.read(Path.of(RIG), List.of()).rig(), Path.of(RIG), UnitSystem.SI);
            first[k] = found.readings().noted().get(0).time()
                    + found.weather().start().toEpochSecond(ZoneOffset.UTC);
            assertThat(found.told().toString().contains("--zone says another")).isEqualTo(k == 0);
        }
        // an hour west of the rig's clock is an hour later on it
        assertThat(first[1] - first[0]).isEqualTo(3600);
    }

    @Test
    void whatCannotBeDoneIsSaidWithItsRemedy() {
        Shell.Said profile = fit(READINGS, "--profile", "pump,chimney");
        assertThat(profile.status()).isNotZero();
        assertThat(profile.err())
                .contains("\"chimney\" is no number of this rig")
                .contains("jacket");
        Shell.Said place = fit(READINGS, "--sensor", "room=attic");
        assertThat(place.err()).contains("\"attic\" is no place").contains("store top");
        Shell.Said small = fit(READINGS, "--from", "2016-01-22 00:00");
        assertThat(small.err()).contains("36 hours or more");
        assertThat(fit(folder.resolve("none.csv")).err()).contains("no such file");
    }
}
