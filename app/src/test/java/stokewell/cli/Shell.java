package stokewell.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs verbs in this process, as a shell would. */
final class Shell {

    /** What came back. */
    record Said(int status, String out, String err) {

        /** The output as JSON, all of it. */
        JsonNode json() {
            return JsonMapper.builder().build().readTree(out);
        }
    }

    private Shell() {}

    static Said say(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words);
        return new Said(status, out.toString(), err.toString());
    }

    /** A night of a job's rig, as JSON. */
    static JsonNode night(String job, String... more) {
        List<String> words = new ArrayList<>(List.of("night", "src/test/resources/jobs/" + job + ".yaml", "--json"));
        words.addAll(List.of(more));
        Said said = say(words.toArray(String[]::new));
        if (said.status != 0 && said.status != CheckVerb.STOP) throw new AssertionError(said.err);
        return said.json();
    }
}
