package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static stokewell.cli.Shell.say;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stokewell.cli.Shell.Said;
import tools.jackson.databind.JsonNode;

class VerbsTest {

    private static final String SHED = "../examples/boat-shed.yaml";
    private static final String HUT = "../examples/saddlery.yaml";
    private static final String HALL = "../examples/joinery.yaml";
    private static final String HOURS = "../examples/weather/eccc_prince_george_bc_2016h1_hourly.csv";

    @Test
    void aFileWithFaultsIsRefusedWithAllOfThemAndTheirLines() {
        Said said = say("night", "src/test/resources/stokewell/file/broken.yaml");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err())
                .contains("broken.yaml:4  room.length")
                .contains("broken.yaml:7  room.hight")
                .contains("Nearest: height")
                .contains("faults; nothing was run.")
                .doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "night",
                "nigth " + SHED,
                "night " + SHED + " --wether x",
                "night nowhere.yaml",
                "night ..",
                "night " + SHED + " --against",
                "night " + SHED + " --set store.jaket=2in",
                "night " + SHED + " --units metric",
                "night " + SHED + " --limit 10",
                "night " + SHED + " --limit warm",
                "night " + SHED + " --hour 25:00",
                "night " + SHED + " --from yesterday",
                "night " + SHED + " --until 3Febr.",
                "night " + SHED + " --weather nowhere.csv",
                "night " + SHED + " --weather -12C",
                "night " + SHED + " --weather snap:cold",
                "night " + SHED + " --weather -300C/2C",
                "night " + SHED + " --start room=8",
                "night " + SHED + " --start attic=8C",
                "night " + SHED + " --start store-top=60C",
                "night " + SHED + " --start store=180C",
                "night " + SHED + " --without chimney",
                "night " + SHED + " --html nowhere/page.html",
                "night " + SHED + " --csv ..",
                "night " + SHED + " --weather " + HOURS + " --from 2031-01-01",
                "season " + SHED,
                "season " + SHED + " --weather -12C/-3C",
                "season " + HALL + " --from 2001-12-01 --until 2001-11-01",
                "defaults",
                "keys extra",
                "help sing"
            })
    void whatIsAskedWronglyIsToldInWordsAndNothingIsRun(String line) {
        Said said = say(line.split(" "));
        assertThat(said.status()).as(said.err()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).isNotBlank().doesNotContain("Exception").doesNotContain("\tat ");
    }

    @Test
    void theStackIsShownOnlyToWhoAsks() {
        assertThat(say("night", "nowhere.yaml", "--debug").err()).contains("Complaint");
    }

    @Test
    void everyVerbStandsInTheHandbookWithHowItEnds() throws Exception {
        String page = Files.readString(Path.of("../docs/verbs.md"));
        Stokewell.line("help").getSubcommands().forEach((name, verb) -> {
            boolean three = String.join(
                            " ", verb.getCommandSpec().usageMessage().description())
                    .contains("Ends with 3");
            assertThat(page)
                    .as(name)
                    .containsPattern("\n\\| `" + name + "` \\|.*\\| " + (three ? "yes.*" : "(no|)") + " ?\\|\n");
        });
    }

    @Test
    void helpTellsEveryVerb() {
        Said all = say("help");
        assertThat(all.status()).isZero();
        assertThat(all.out()).contains("night", "season", "keys", "schema", "defaults", "Exit codes");
        assertThat(say().out()).isEqualTo(all.out());
        assertThat(say("help", "night").out())
                .contains("--weather")
                .isEqualTo(say("night", "--help").out());
    }

    @Test
    void keysSchemaAndDefaultsAreTold() {
        assertThat(say("keys").out()).contains("`store.jacket`").contains("100 mm mineral wool");
        assertThat(say("keys", "--units", "us").out()).contains(" ft");
        assertThat(say("schema").json().get("$schema").asString()).contains("2020-12");
        Said defaults = say("defaults", SHED, "--set", "store.elevation=2 ft");
        assertThat(defaults.status()).isZero();
        assertThat(defaults.out()).contains("loop.back.wall").doesNotContain("store.elevation");
        assertThat(say("night", SHED, "--no-plot", "--defaults").out()).contains("loop.back.wall");
    }

    @Test
    void aSettingChangesTheAnswerTheWayItShould() {
        JsonNode both = say("night", HUT, "--set", "pickups.jacket.area=0.3 m2", "--against", "--json")
                .json();
        double asFiled = both.get("asFiled").get("waterShare").asDouble();
        assertThat(both.get("now").get("waterShare").asDouble()).isLessThan(asFiled - 0.05);
        assertThat(say("night", HUT, "--json").json().get("waterShare").asDouble())
                .isEqualTo(asFiled);
    }

    @Test
    void twoNightsAreShownBesideEachOther() {
        Said said = say("night", HUT, "--without", "water", "--against", "--no-plot");
        assertThat(said.status()).isZero();
        assertThat(said.out()).contains("as filed").contains("change");
    }

    @Test
    void withoutFanLessHeatComesOutOfTheStore() {
        JsonNode with = say("night", SHED, "--json").json();
        JsonNode still = say("night", SHED, "--without", "fan", "--json").json();
        assertThat(still.get("fanStarts").asInt()).isZero();
        assertThat(still.get("morning").get("storeMeanC").asDouble())
                .isGreaterThan(with.get("morning").get("storeMeanC").asDouble());
        JsonNode dry = say("night", SHED, "--without", "store", "--json").json();
        assertThat(dry.get("morning").get("storeMeanC").isNull()).isTrue();
        assertThat(dry.get("charge").isNull()).isTrue();
    }

    @Test
    void bothFamiliesOfUnitsTellTheSameNight() {
        String si = say("night", SHED, "--no-plot").out();
        String us = say("night", SHED, "--no-plot", "--units", "us").out();
        double celsius = number(si, "room at 07:30 +([0-9.]+) C");
        assertThat(number(us, "room at 07:30 +([0-9.]+) F")).isCloseTo(celsius * 9 / 5 + 32, offset(0.15));
        double kilograms = number(si, "wood +([0-9.]+) kg in 5 loads");
        assertThat(number(us, "wood +([0-9.]+) lb in 5 loads, [0-9.]+ cord"))
                .isCloseTo(kilograms / 0.45359237, offset(1.5));
    }

    private static double number(String text, String pattern) {
        Matcher m = Pattern.compile(pattern).matcher(text);
        assertThat(m.find()).as(pattern).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void aColderDayMakesAColderMorning() {
        double day = room(say("night", HUT, "--json"));
        double colder = room(say("night", HUT, "--weather", "-25 C / -15 C", "--json"));
        double swapped = room(say("night", HUT, "--weather", "-15 C/-25C", "--json"));
        double snap = room(say("night", HUT, "--weather", "snap: -25 C / -15 C for 2 days", "--json"));
        assertThat(colder).isEqualTo(swapped).isLessThan(snap);
        assertThat(snap).isLessThan(day);
    }

    private static double room(Said said) {
        return said.json().get("morning").get("roomC").asDouble();
    }

    @Test
    void anHourlyFileBeginsOnItsColdestDayUnlessAnotherIsAsked() {
        JsonNode coldest = say("night", HUT, "--weather", HOURS, "--json").json();
        assertThat(coldest.get("from").asString()).startsWith("2016-01-").endsWith("T08:00:00");
        Said asked = say("night", HUT, "--weather", HOURS, "--from", "10 Feb 18:00", "--until", "36 h", "--json");
        assertThat(asked.json().get("from").asString()).isEqualTo("2016-02-10T18:00:00");
        assertThat(asked.json().get("until").asString()).isEqualTo("2016-02-12T06:00:00");
        assertThat(asked.err()).contains("temperature missing for 2 h").contains("more such remarks");
        Said far = say("night", HUT, "--weather", "../examples/weather/tmy3_703165_sand_point_ak.csv", "--no-plot");
        assertThat(far.err()).contains("km from where the rig stands");
    }

    @Test
    void aStartIsTakenFromAFileToo(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(
                folder.resolve("now.txt"), "# at eight\nroom: 12 C\nstore top: 140 F\nstore bottom: 40 C\n");
        JsonNode read = say("night", SHED, "--start", file.toString(), "--json").json();
        JsonNode said = say("night", SHED, "--start", "store_bottom=40C,room=12C,Store Top=60C", "--json")
                .json();
        assertThat(read.get("heatKWh")).isEqualTo(said.get("heatKWh"));
        assertThat(read.get("start").asString()).contains("as given");
    }

    @Test
    void everyOutputFileIsWrittenWhole(@TempDir Path folder) throws Exception {
        Path html = folder.resolve("night.html");
        Path png = folder.resolve("night.png");
        Path csv = folder.resolve("night.csv");
        Files.writeString(html, "old");
        Said said = say("night", SHED, "--html", html.toString(), "--png", png.toString(), "--csv", csv.toString());
        assertThat(said.status()).isZero();
        assertThat(html).content().startsWith("<!").contains("Tern Ledge").endsWith("</html>\n");
        assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
        assertThat(Files.readAllLines(csv)).hasSizeGreaterThan(280);
        assertThat(folder).isDirectoryNotContaining("glob:**.new");
    }

    @Test
    void thePictureCanBeLeftOut() {
        assertThat(say("night", HUT).out().lines().count())
                .isGreaterThan(say("night", HUT, "--no-plot").out().lines().count() + 10);
    }

    @Test
    void aSeasonIsToldByMonths(@TempDir Path folder) throws Exception {
        Path csv = folder.resolve("season.csv");
        Said said = say("season", HALL, "--from", "10 Dec", "--until", "8 Jan", "--json", "--csv", csv.toString());
        assertThat(said.status()).as(said.err()).isZero();
        JsonNode season = said.json();
        assertThat(season.get("months")).hasSize(2);
        assertThat(season.get("months").get(0).get("woodKg").asDouble()).isGreaterThan(300);
        assertThat(season.get("ledgerResidual") == null
                        || season.get("ledgerResidual").asDouble() < 1e-9)
                .isTrue();
        assertThat(Files.readAllLines(csv)).hasSizeGreaterThan(29 * 48);
    }

    @Test
    void aRecordWithoutAWholeWinterIsTakenAsFarAsItReaches() {
        Said said = say("season", HUT, "--weather", HOURS, "--until", "20 Jan", "--json");
        assertThat(said.status()).as(said.err()).isZero();
        assertThat(said.json().get("from").asString()).isEqualTo("2016-01-05T00:00:00");
        assertThat(said.json().get("until").asString()).isEqualTo("2016-01-20T00:00:00");
    }

    @Test
    void theLargestExampleIsLargeEnoughToProveTheEngine() throws Exception {
        var rig =
                stokewell.file.RigFile.read(Path.of(HALL), java.util.List.of()).rig();
        var weather = WeatherChoice.of(null, rig, Path.of(HALL), stokewell.file.UnitSystem.SI)
                .weather();
        assertThat(stokewell.network.Compiler.compile(rig, weather).network().size())
                .isGreaterThanOrEqualTo(60);
    }
}
