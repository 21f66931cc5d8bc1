package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings, diary and shop as a person at the shell meets them. */
class ReadingsVerbTest {

    @TempDir
    Path folder;

    private Shell.Said say(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--shop", folder.resolve("shop.stokewell").toString()));
        return Shell.say(all.toArray(String[]::new));
    }

    private String log(String name, String... lines) throws IOException {
        return Files.write(folder.resolve(name), List.of(lines)).toString();
    }

    /** A day of a store at five minutes, with a gap of an hour and one spike. */
    private String day() throws IOException {
        List<String> lines = new ArrayList<>(List.of("Zeit;Store top (°C);Raum (°C)"));
        for (int i = 0; i < 288; i++) {
            if (i >= 100 && i < 112) continue;
            String value = i == 200 ? "15,0" : "60," + i % 5;
            lines.add(String.format("2024-01-15 %02d:%02d;%s;%d,5", i / 12, i % 12 * 5, value, 16 + i % 4));
        }
        return log("day.csv", lines.toArray(String[]::new));
    }

    @Test
    void anImportTellsWhatItFoundAndASecondOneChangesNothing() throws IOException {
        Shell.Said first = say("readings", "import", day(), "--zone", "Europe/Oslo");
        assertThat(first.status()).isZero();
        assertThat(first.out())
                .contains("2 sensors, 552 readings, all new")
                .contains("Store top")
                .contains("2024-01-15 23:55")
                .contains("a gap of 65 min from 2024-01-15 08:15: nothing is put in")
                .contains("1 spike, first 15 C at 2024-01-15 16:40: kept, but not used");
        assertThat(say("readings", "import", day()).out()).contains("552 readings, none new");
        assertThat(say("readings", "import", day(), "--json")
                        .json()
                        .get(0)
                        .get("changed")
                        .asBoolean())
                .isFalse();
    }

    @Test
    void aBrokenFileEndsWithItsRowAndTakesNothingIn() throws IOException {
        String broken = log("b.csv", "time,room [C]", "2024-01-15 08:00,20", "2024-01-15 08:05,2o");
        Shell.Said said = say("readings", "import", broken);
        assertThat(said.status()).isEqualTo(2);
        assertThat(said.err())
                .contains("b.csv:3  \"2o\" in \"room\" is not a number.")
                .contains("nothing was taken in");
        assertThat(say("readings", "list").out()).doesNotContain("room");
        String choice = log("c.csv", "time,room [C]", "3/4/2024 08:00,20", "3/4/2024 08:05,20");
        assertThat(say("readings", "import", choice).err()).contains("--dates dmy");
        assertThat(say("readings", "import", choice, "--dates", "mdy").status()).isZero();
    }

    @Test
    void sensorsAreListedPlacedRenamedAndShownInEitherUnit() throws IOException {
        say("readings", "import", day(), "--zone", "Europe/Oslo", "--map", "Store top (°C)=top");
        assertThat(say("readings", "place", "top", "store top", "--name", "probe 1")
                        .out())
                .contains("probe 1: store top");
        assertThat(say("readings", "list").out())
                .contains("probe 1")
                .contains("store top")
                .doesNotContain("Raum");
        String[] span = {"readings", "show", "probe 1", "--from", "2024-01-15 16:35", "--until", "2024-01-15 16:50"};
        assertThat(say(span).out()).contains("2024-01-15 16:40         15 C").contains("3 readings");
        List<String> us = new ArrayList<>(List.of(span));
        us.addAll(List.of("--units", "us", "--csv"));
        assertThat(say(us.toArray(String[]::new)).out()).contains("2024-01-15T15:40:00Z,59,");
        assertThat(say("readings", "show", "nobody").err()).contains("Known: probe 1");
    }

    @Test
    void mapAndUnitAreReadOrExplained() throws IOException {
        assertThat(say("readings", "import", day(), "--map", "T1").err()).contains("COLUMN=SENSOR");
        assertThat(say("readings", "import", day(), "--map", "T1=x:furlong").err())
                .contains("Known: C, F, K");
        assertThat(say("readings", "import", day(), "--unit", "kW").err()).contains("Known: C, F, K");
        assertThat(say("readings", "import", day(), "--zone", "Oslo").err()).contains("Europe/Oslo");
        assertThat(say("readings", "import", folder.resolve("none.csv").toString())
                        .err())
                .contains("no such file");
        assertThat(say("readings", "list").out().lines().count()).isLessThanOrEqualTo(2);
    }

    @Test
    void theDiaryKeepsLoadsAndDeeds() {
        assertThat(say(
                                "diary",
                                "load",
                                "12 kg",
                                "--at",
                                "2024-01-15 18:00",
                                "--moisture",
                                "25 %",
                                "--dry-basis",
                                "--wood",
                                "ash")
                        .out())
                .contains("written: 2024-01-15 18:00  load    12 kg, ash, 20 % water (wet basis)");
        assertThat(say("diary", "load", "10 lb", "--at", "2024-01-15 20:00").status())
                .isZero();
        assertThat(say("diary", "load", "10 lb", "--at", "2024-01-15 20:00").out())
                .contains("stands there already");
        assertThat(say("diary", "sweep", "flue", "and", "pipe", "--at", "2024-01-14 10:00")
                        .status())
                .isZero();
        assertThat(say("diary", "note").err()).contains("needs words");
        String list = say("diary", "list", "--units", "us").out();
        assertThat(list)
                .contains("sweep   flue and pipe")
                .contains("L2")
                .contains("10 lb")
                .contains("2 loads");
        assertThat(list.indexOf("sweep")).isLessThan(list.indexOf("load "));
        assertThat(say("diary", "strike", "L2").out()).contains("struck out: L2");
        assertThat(say("diary", "strike", "L2").err()).contains("no entry L2");
        assertThat(say("diary", "load", "5000 kg").status()).isEqualTo(2);
        assertThat(say("diary", "load", "5 kg", "--moisture", "90 %").err()).contains("wet basis");
    }

    @Test
    void aShopIsCopiedRestoredAndTakenApartByOneCommandEach() throws IOException {
        say("readings", "import", day(), "--zone", "Europe/Oslo");
        assertThat(say("shop", "rig", "../examples/boat-shed.yaml", "--from", "2024-01-01")
                        .out())
                .contains("kept");
        assertThat(say("shop", "rig", "../examples/boat-shed.yaml").out()).contains("stands there already");
        String copy = folder.resolve("copy").toString();
        assertThat(say("shop", "backup", copy).out()).contains("2 sensors, 552 readings");
        assertThat(say("shop", "restore", copy).err()).contains("--force");
        assertThat(say("shop", "restore", copy, "--force").out()).contains("What stood there is now");
        assertThat(say("shop", "look").out()).contains("All sound");
        String out = folder.resolve("out").toString();
        assertThat(say("shop", "export", out).status()).isZero();
        assertThat(Path.of(out, "rigs", "001.yaml")).hasSameTextualContentAs(Path.of("../examples/boat-shed.yaml"));
        Shell.Said into = Shell.say(
                "shop", "import", out, "--shop", folder.resolve("other").toString());
        assertThat(into.out()).contains("2 sensors, 552 readings").contains("It is new");
        assertThat(Shell.say("shop", "look", "--shop", folder.resolve("none").toString())
                        .err())
                .contains("There is no shop");
        assertThat(say("shop", "zone").out()).contains("Europe/Oslo");
    }

    @Test
    void helpKnowsVerbsOfVerbs() {
        assertThat(Shell.say("help", "readings", "import").out())
                .contains("--dates")
                .contains("--map");
        assertThat(Shell.say("readings", "import").err()).contains("help readings import");
        assertThat(Shell.say("help", "readings", "burn").err()).contains("Known: import, list, show, place");
        assertThat(Shell.say("diary").out()).contains("sweep");
    }
}
