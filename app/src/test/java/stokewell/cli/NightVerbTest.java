package stokewell.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NightVerbTest {

    private static final String SHED = "../examples/boat-shed.yaml";

    private record Said(int status, String out, String err) {}

    private static Said say(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Said(status, out.toString(), err.toString());
    }

    @Test
    void theCardLeadsWithWhetherTheRigCarriesTheNight() {
        Said said = say("night", SHED);
        assertThat(said.status).isZero();
        assertThat(said.out)
                .contains("It carries the night")
                .contains("if flow stops, coil boils in")
                .contains("licensed person");
    }

    @Test
    void jsonCarriesWhatProgramsNeed() {
        Said said = say("night", SHED, "--json");
        assertThat(said.status).isZero();
        for (String key : new String[] {
            "rig",
            "from",
            "until",
            "morning",
            "lowestRoom",
            "hoursAbove",
            "boilMarginK",
            "boilingMinutes",
            "steamKg",
            "wood",
            "heatKWh",
            "ledgerResidual",
            "pumpStarts",
            "fanStarts",
            "steps",
            "rhsEvaluations",
            "solveMillis"
        }) {
            assertThat(said.out).contains("\"" + key + "\":");
        }
    }

    @Test
    void withoutItsWaterTheShedDoesNotCarryTheNight() {
        assertThat(say("night", SHED, "--without", "water").out).contains("NOT carry");
    }

    @Test
    void aWrongEntryIsRefusedWithItsPlaceAndNothingRuns() {
        Said said = say("night", SHED, "--set", "store.nodes=500");
        assertThat(said.status).isEqualTo(2);
        assertThat(said.err).contains("nodes");
        assertThat(said.out).isEmpty();
    }

    @Test
    void theTraceIsATable(@TempDir Path folder) throws Exception {
        Path csv = folder.resolve("trace.csv");
        assertThat(say("night", SHED, "--csv", csv.toString()).status).isZero();
        assertThat(Files.readAllLines(csv))
                .hasSizeGreaterThan(280)
                .first()
                .asString()
                .startsWith("time,room [C],outdoors [C]");
    }
}
