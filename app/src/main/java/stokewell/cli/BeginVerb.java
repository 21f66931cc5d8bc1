package stokewell.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.check.Check;
import stokewell.check.Drill;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.check.Level;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.show.Ascii;
import stokewell.show.Measure;
import stokewell.show.Spoken;
import stokewell.web.FirstFile;
import stokewell.web.Refusal;

/** Begins with nothing: a first rig file, how far its answer is to be trusted, and what to measure first. */
@Command(
        name = "begin",
        description =
                "Where do I start: write a first rig file from a few answers, say how wide its answer is, and which "
                        + "measurements narrow it most. Ends with 3 if a fire must not be lit on it.",
        sortOptions = false)
final class BeginVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "The rig file to write.")
    Path file;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "KEY=VALUE",
            description =
                    "What you know: name, length, width, height, walls, roof, floor, leaks, low, stove (small, medium, large), "
                            + "store, jacket, loop (pump, gravity), emitter (fan, radiator). Walls may be layers from the room "
                            + "outwards, such as 'walls=25 mm softwood, 50 mm mineral wool'. The rest is guessed and marked.")
    List<String> answers = new ArrayList<>();

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Override
    public Integer call() throws Exception {
        if (file.toString().indexOf('=') > 0) {
            throw Complaint.usage("\"" + file + "\" is an answer.", "Write the file first: begin shed.yaml " + file);
        }
        if (Files.exists(file)) throw Complaint.usage(file + " is there already.", "Name a new file.");
        OutFile.check("FILE", file);
        String yaml = yaml();
        Rig rig = RigFile.parse(file.toString(), yaml, List.of()).rig();
        OutFile.write(file, yaml);
        Unmeasured.Range range = Unmeasured.of(file);
        WeatherChoice outdoors = WeatherChoice.of(null, rig, file, units);
        Drills.Outcome outcome = CheckVerb.drilled(rig, outdoors, EnumSet.allOf(Fault.class));
        Check check = Check.of(rig, outcome.day(), outcome.drills());
        PrintWriter out = spec.commandLine().getOut();
        out.print(Ascii.of(text(rig, range, Spoken.in(check, units), boilsInAnOutage(outcome))));
        out.flush();
        return check.stops() ? CheckVerb.STOP : 0;
    }

    private String yaml() {
        Map<String, String> given = new LinkedHashMap<>();
        for (String a : answers) {
            int is = a.indexOf('=');
            if (is < 1) throw Complaint.usage("\"" + a + "\" is no answer.", "Write KEY=VALUE, such as length=6m.");
            String question = a.substring(0, is).strip();
            if (!FirstFile.questions().contains(question)) {
                throw Complaint.usage(
                        "\"" + question + "\" is not asked here.",
                        "Known: " + String.join(", ", FirstFile.questions()) + ".");
            }
            given.put(question, a.substring(is + 1).strip());
        }
        String walls = given.getOrDefault("walls", "");
        boolean layers = walls.matches(".*\\d.*");
        if (layers) given.remove("walls");
        try {
            String text = FirstFile.of(given, units);
            return layers
                    ? text.replaceFirst("(?m)^  walls: .*$", "  walls: " + Matcher.quoteReplacement(walls))
                    : text;
        } catch (Refusal e) {
            throw Complaint.usage(e.getMessage(), e.remedy());
        }
    }

    private static boolean boilsInAnOutage(Drills.Outcome outcome) {
        Drill outage = outcome.of(Fault.POWER_OUT);
        return outage != null && outage.firstBoil() < Double.POSITIVE_INFINITY;
    }

    private String text(Rig rig, Unmeasured.Range range, Check check, boolean boils) {
        StringBuilder b = new StringBuilder();
        String lead = check.stops()
                ? "STOP: do not light a fire on it. " + check.findings().get(0).what() + " "
                : "";
        CheckVerbPage.wrap(
                b,
                "",
                lead + file + " is written; all that you did not say is guessed. On a night of "
                        + degrees(rig.weather().low())
                        + " the room is at " + degrees(range.lowest()) + " to " + degrees(range.highest())
                        + " at 7:30, likely near " + degrees(range.room()) + ". No closer answer is honest yet.");
        b.append("\nMeasure these first: they narrow it most.\n");
        int n = 0;
        for (Unmeasured.Moved m : range.moved()) {
            if (++n == 4) b.append("Then\n");
            CheckVerbPage.wrap(
                    b,
                    "  " + n + "  ",
                    m.name() + ": " + moves(m) + ". " + cap(m.how().in(units)) + ".");
        }
        b.append("\nA first safe layout stands in the file:\n");
        layout(b, rig, boils);
        CheckVerbPage.wrap(
                b,
                "",
                "The check finds " + check.at(Level.STOP).size() + " to stop for, "
                        + check.at(Level.MEND).size()
                        + " to mend and " + check.at(Level.MIND).size()
                        + " to mind or to answer: flammable vapours and garages first. ./stokewell check " + file);
        b.append("A reckoning, not an approval: local code and a licensed person decide.\n");
        return b.toString();
    }

    private void layout(StringBuilder b, Rig rig, boolean boils) {
        boolean gravity = rig.loop().pump() == null;
        double above = rig.store().elevation() - rig.pickups().get(0).elevation();
        String[] lines = {
            String.format(
                    Locale.ROOT,
                    "open and vented: header at %.1f m, above everything; vent of %.0f mm that rises all the way, no valve between it and "
                            + "the fire",
                    rig.loop().header().level(),
                    1000 * rig.loop().header().vent()),
            gravity
                    ? String.format(
                            Locale.ROOT,
                            "no pump: pipe of %.0f mm that rises to a store %.1f m above the coil; in a power cut %s",
                            1000 * rig.loop().supply().bore(),
                            above,
                            boils ? "it boils all the same: see the drills" : "nothing boils")
                    : "a pump with its own thermostat; in a power cut it needs a gravity radiator or a battery: see the drills",
            "a store that may be filled to the brim and is not closed; nothing of plastic within 2 m of stove and flue"
        };
        for (String line : lines) CheckVerbPage.wrap(b, "  - ", Spoken.in(line, units));
    }

    private String moves(Unmeasured.Moved m) {
        String low = degrees(Math.min(m.low(), m.high()));
        String high = degrees(Math.max(m.low(), m.high()));
        return low.equals(high) ? "hardly moves 7:30" : "7:30 lies between " + low + " and " + high;
    }

    private String degrees(double kelvin) {
        Measure as = Measure.plain(units);
        return Math.round(as.scale(kelvin)) + " " + as.scaleUnit();
    }

    private static String cap(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
