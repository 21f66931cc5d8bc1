package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rig that must not be lit is never shown as fine, whatever it is asked. */
class StopsEverywhereTest {

    private static final String SHED = "../examples/boat-shed.yaml";
    private static final String JOINERY = "../examples/joinery.yaml";
    private static final String VALVE = "safety={valve to open: yes}";

    private static String say(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        boolean stop = List.of(words).contains(VALVE);
        assertThat(status).as(err.toString()).isEqualTo(stop ? CheckVerb.STOP : 0);
        return out.toString();
    }

    @Test
    void inEveryOutputOfANight(@TempDir Path to) throws Exception {
        Path html = to.resolve("n.html");
        Path csv = to.resolve("n.csv");
        Path png = to.resolve("n.png");
        String card = say(
                "night",
                SHED,
                "--set",
                VALVE,
                "--html",
                html.toString(),
                "--csv",
                csv.toString(),
                "--png",
                png.toString());
        assertThat(card.lines().skip(4).findFirst().orElseThrow()).startsWith("STOP: do not light a fire");
        assertThat(card).contains("DANGER STOP").contains("bare pipe");
        String page = Files.readString(html);
        assertThat(page).contains("<p class=\"verdict\">STOP").contains("STOP: do not light a fire.");
        assertThat(page).doesNotContain(">It carries the night");
        assertThat(Files.readString(csv)).startsWith("# STOP, do not light a fire on this rig: A valve");
        assertThat(png).isNotEmptyFile();
        String json = say("night", SHED, "--set", VALVE, "--json");
        assertThat(json).contains("\"stops\":1").contains("\"id\":\"vent.valve\",\"level\":\"stop\"");
    }

    @Test
    void andWhereThereIsNoneNothingIsSaid(@TempDir Path to) throws Exception {
        Path csv = to.resolve("n.csv");
        String card = say("night", SHED, "--csv", csv.toString());
        assertThat(card).doesNotContain("STOP").contains("./stokewell check");
        assertThat(Files.readString(csv)).startsWith("time,");
        assertThat(say("night", SHED, "--json")).contains("\"stops\":0").contains("\"findings\":[{");
    }

    @Test
    void theOneBesideIsJudgedByItself() {
        String json = say("night", SHED, "--set", VALVE, "--against", "--json");
        String filed = json.substring(0, json.indexOf(",\"now\":"));
        assertThat(filed).contains("\"stops\":0");
        assertThat(json.substring(filed.length())).contains("\"stops\":1");
    }

    @Test
    void inEveryOutputOfASeason(@TempDir Path to) throws Exception {
        Path html = to.resolve("s.html");
        Path csv = to.resolve("s.csv");
        String card = say(
                "season",
                JOINERY,
                "--set",
                VALVE,
                "--from",
                "10 Jan",
                "--until",
                "12 Jan",
                "--html",
                html.toString(),
                "--csv",
                csv.toString());
        assertThat(card).contains("STOP: do not light a fire on this rig.");
        assertThat(Files.readString(html)).contains("<p class=\"verdict\">STOP");
        assertThat(Files.readString(csv)).startsWith("# STOP");
        String json = say("season", JOINERY, "--set", VALVE, "--from", "10 Jan", "--until", "12 Jan", "--json");
        assertThat(json).contains("\"stops\":1");
    }

    @Test
    void inEveryOutputOfAComparison(@TempDir Path to) throws Exception {
        Path csv = to.resolve("c.csv");
        String table = say("compare", SHED, "--set", VALVE, "--csv", csv.toString());
        assertThat(table.lines().skip(3).findFirst().orElseThrow())
                .startsWith("Tern Ledge boat shed")
                .contains(" STOP ");
        assertThat(table).contains("! STOP, no fire: Tern Ledge boat shed. A valve stands");
        assertThat(Files.readString(csv)).contains(",stop,A valve stands between");
        assertThat(say("compare", SHED, "--set", VALVE, "--json"))
                .contains("\"worst\":\"stop\"")
                .contains("\"stops\":1");
    }

    @Test
    void inADrillOfAnotherFault() {
        String json = say("drill", SHED, "--set", VALVE, "--fault", "fan-dead", "--json");
        assertThat(json).contains("\"stops\":[\"vent.valve").contains("\"fault\":\"fan-dead\"");
        assertThat(json).doesNotContain("\"fault\":\"over-fire\"");
    }
}
