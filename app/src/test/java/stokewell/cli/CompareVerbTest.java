package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static stokewell.cli.Shell.say;

import java.util.List;
import org.junit.jupiter.api.Test;
import stokewell.cli.Shell.Said;
import tools.jackson.databind.JsonNode;

class CompareVerbTest {

    private static final String SHED = "../examples/boat-shed.yaml";
    private static final String HUT = "../examples/saddlery.yaml";
    private static final String HOURS = "../examples/weather/eccc_prince_george_bc_2016h1_hourly.csv";
    private static final String WOOL = "store.jacket=12 in mineral wool";

    /** Whoever stands beside it: a row is the night of that rig, and the check of it. */
    @Test
    void eachRowIsWhatItsNightAndItsCheckSayAlone() {
        JsonNode rows =
                say("compare", SHED, HUT, "--try", WOOL, "--json").json().get("rigs");
        assertThat(rows.size()).isEqualTo(4);
        for (JsonNode row : rows) {
            List<String> set = row.get("changes").isEmpty() ? List.of() : List.of("--set", WOOL);
            JsonNode night = alone("night", row, set);
            for (String key :
                    List.of("morning", "lowestRoom", "boilMarginK", "minutesToBoil", "wood", "heatKWh", "start")) {
                assertThat(row.get(key)).as(key).isEqualTo(night.get(key));
            }
            assertThat(row.get("worst")).isEqualTo(alone("check", row, set).get("worst"));
        }
    }

    private static JsonNode alone(String verb, JsonNode row, List<String> set) {
        List<String> words =
                new java.util.ArrayList<>(List.of(verb, row.get("file").asString(), "--json"));
        words.addAll(set);
        return say(words.toArray(String[]::new)).json();
    }

    @Test
    void everyLineFitsTheScreenAndSaysInWhatWeather() {
        Said own = say("compare", SHED, HUT, "--try", WOOL + "; fuel.moisture=15 %");
        assertThat(own.out()).contains("Not all in the same weather").contains(WOOL + "; fuel.moisture=15 %");
        assertThat(own.out().lines()).allMatch(line -> line.length() <= 80);
        Said wind = say("compare", SHED, HUT, "--weather", "-20 C / -8 C", "--units", "us");
        assertThat(wind.out()).contains("-4 F to 17.6 F, wind 8 mph").contains("Not all in the same weather");
        Said same = say("compare", SHED, HUT, "--weather", HOURS);
        assertThat(same.out()).contains("weather: plain CSV, eccc").doesNotContain("Not all");
    }

    @Test
    void theTableAloneGoesToStandardOutput() {
        Said said = say("compare", SHED, HUT, "--csv", "-");
        List<String> lines = said.out().lines().toList();
        assertThat(lines).hasSize(3);
        assertThat(lines.get(0)).startsWith("rig,file,changes,weather,check,stop,room 07:30 [C],lowest room [C],");
        assertThat(lines.get(1)).startsWith("Tern Ledge boat shed,../examples/boat-shed.yaml,,\"plain day, ");
        assertThat(say("night", SHED, "--csv", "-").out()).startsWith("time,room [C],");
        for (String option : List.of("--html", "--png")) {
            assertThat(say("night", SHED, option, "-").status()).isEqualTo(2);
        }
        assertThat(say("night", SHED, "--csv", "-", "--json").status()).isEqualTo(2);
    }

    @Test
    void aFaultInOneOfThemRunsNone() {
        Said said = say("compare", SHED, HUT, "--try", "store.jaket=1 in");
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.out()).isEmpty();
        assertThat(said.err()).contains("Nearest: jacket");
    }
}
