package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stokewell.check.Fault;

class CheckVerbTest {

    private static final String SHED = "../examples/boat-shed.yaml";

    private record Said(int status, String out, String err) {}

    private static Said say(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Said(status, out.toString(), err.toString());
    }

    @Test
    void theFirstLineSaysWhatAPowerCutDoes() {
        Said said = say("check", SHED);
        assertThat(said.status).isZero();
        assertThat(said.out.lines().findFirst().orElseThrow())
                .contains("A power cut")
                .contains("min later");
        assertThat(said.out.lines().skip(1).findFirst().orElseThrow()).contains("boils in");
        assertThat(said.out).contains("licensed person").contains("safety.surroundings.flammables");
    }

    @Test
    void aStopEndsWithThreeAndIsTheFirstWord() {
        String answers = "safety={valve to open: yes}";
        Said check = say("check", SHED, "--set", answers);
        assertThat(check.status).isEqualTo(CheckVerb.STOP);
        assertThat(check.out.lines().findFirst().orElseThrow()).contains("STOP");
        Said json = say("check", SHED, "--set", answers, "--json");
        assertThat(json.status).isEqualTo(CheckVerb.STOP);
        assertThat(json.out).contains("\"stop\":true").contains("\"id\":\"vent.valve\"");
        assertThat(say("drill", SHED, "--set", answers, "--fault", "power-out").out)
                .contains("STOP.");
    }

    @Test
    void jsonCarriesEachFindingWhole() {
        Said said = say("check", SHED, "--json");
        for (String key : new String[] {"findings", "id", "level", "what", "why", "remedy", "basis"}) {
            assertThat(said.out).contains("\"" + key + "\":");
        }
    }

    @Test
    void oneObjectAFault() {
        Said said = say("drill", SHED, "--json");
        assertThat(said.status).isZero();
        for (Fault f : Fault.values()) assertThat(said.out).containsOnlyOnce("\"fault\":\"" + DrillVerb.name(f) + "\"");
        Said one = say("drill", SHED, "--fault", "pump dead", "--json");
        assertThat(one.out).contains("\"fault\":\"pump-dead\"").doesNotContain("\"fault\":\"power-out\"");
    }

    @Test
    void drillsShowATableAndASentenceEach() {
        Said said = say("drill", SHED);
        assertThat(said.out)
                .contains("B boils")
                .contains("Power out")
                .contains("Backdraft")
                .contains("licensed person");
    }

    @Test
    void onePageAndOnePictureHoldAllDrills(@org.junit.jupiter.api.io.TempDir Path folder) throws Exception {
        Path html = folder.resolve("drills.html");
        Path png = folder.resolve("drills.png");
        say("drill", SHED, "--html", html.toString(), "--png", png.toString(), "--units", "us");
        String page = Files.readString(html);
        for (Fault f : Fault.values()) {
            String title =
                    Character.toUpperCase(f.title().charAt(0)) + f.title().substring(1);
            assertThat(page).contains(title);
        }
        assertThat(page)
                .contains("What a hand can still do")
                .contains("boils in")
                .contains("psi")
                .contains("°F")
                .contains(">50<", ">250<")
                .doesNotContain(">68<", ">284<");
        assertThat(javax.imageio.ImageIO.read(png.toFile()).getWidth()).isGreaterThan(1000);
    }

    @Test
    void anUnknownFaultIsToldWithTheKnownOnes() {
        Said said = say("drill", SHED, "--fault", "gremlins");
        assertThat(said.status).isEqualTo(2);
        assertThat(said.err).contains("gremlins").contains("power-out");
    }

    @Test
    void answersInTheFileAreRead(@org.junit.jupiter.api.io.TempDir Path folder) throws Exception {
        String answers = """

                safety:
                  valve to open: no
                  vent: {rise: 600 mm, rises all the way: yes, warm: yes, cold feed: 22 mm}
                  relief: {opens: 1.5 bar, rated: 20 kW, at stove: yes, clear outlet: yes}
                  materials: {pipe: copper, inhibitor: yes}
                  surroundings:
                    flammables: no
                    garage: no
                    monoxide alarm: yes
                    clearance: 1 m
                """;
        Path file = Files.writeString(folder.resolve("shed.yaml"), Files.readString(Path.of(SHED)) + answers);
        Said said = say("check", file.toString(), "--all");
        assertThat(said.err).isEmpty();
        assertThat(said.out).contains("A carbon monoxide alarm is there").contains("No valve between the fire");
    }
}
