package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.check.Looked;
import stokewell.file.RigFile;
import stokewell.rig.Rig;
import stokewell.run.Beside;
import stokewell.run.Given;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.show.CardFacts;
import stokewell.show.NightCard;
import stokewell.show.NightJson;
import stokewell.show.NightPage;
import stokewell.show.NightPicture;
import stokewell.show.TerminalPlot;
import stokewell.show.TraceCsv;

/** Runs one night. */
@Command(
        name = "night",
        description = "Run a day and a night: will it carry, is it safe, where does the heat go? "
                + "Ends with 3 if a fire must not be lit.",
        sortOptions = false)
final class NightVerb implements Callable<Integer> {

    /** What can be taken away to see what it does. */
    enum Part {
        STORE,
        WATER,
        FAN
    }

    private static final int HEIGHT = 16;

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Mixin
    AnswerChoice answer;

    @Option(
            names = "--weather",
            paramLabel = "WEATHER",
            description = "An hourly file, or low / high such as \"-12 C / -3 C\", "
                    + "or \"snap: -25 C / -16 C for 3 days\". Default: what the rig file names.")
    String weather;

    @Option(
            names = "--from",
            paramLabel = "MOMENT",
            description = "When the run begins: 15 Jan, 2016-01-15 18:00, 18:00. "
                    + "Default: 8:00, of the coldest day in an hourly file.")
    String from;

    @Option(
            names = "--until",
            paramLabel = "MOMENT",
            description = "When it ends, or how long it lasts: 36 h. Default: 8:00 on the next day.")
    String until;

    @Option(
            names = "--start",
            paramLabel = "START",
            description = "What stands at the beginning, as you measured it: \"room=8 C, store=20 C\" or a file. "
                    + "Default: what this weather and habit settle to.")
    String start;

    @Option(
            names = "--without",
            paramLabel = "store|water|fan",
            description =
                    "Take a part away to see what it does: the store with all its water, or the fans and emitter pumps.")
    List<Part> without = new ArrayList<>();

    @Option(names = "--against", description = "Run the rig as its file tells it too, and show what the change does.")
    boolean against;

    @Option(names = "--defaults", description = "List the defaults that the rig file leans on, too.")
    boolean defaults;

    @Override
    public Integer call() throws Exception {
        if (against && choice.settings.isEmpty() && without.isEmpty()) {
            throw Complaint.usage(
                    "--against compares with the file, and nothing is changed.", "Add --set or --without.");
        }
        answer.check();
        Given given = start == null ? Given.NOTHING : StartChoice.read(start);
        RigFile<Rig> read = choice.read();
        Planned now = planned(lessened(read.rig()));
        Planned own = against ? planned(choice.asFiled().rig()) : null;
        now.outdoors.remark(spec.commandLine().getErr());
        Beside<Looked> other = own == null ? null : Beside.begin(() -> own.run(given));
        Looked looked = now.run(given);
        CardFacts facts = CardFacts.of(now.rig, answer.units).in(now.outdoors.told());
        CardFacts before = null;
        if (other != null) {
            Looked filed = other.done();
            before = facts.checked(filed.check());
            facts = facts.against(filed.night(), "as filed");
        }
        tell(looked.night(), facts.checked(looked.check()), before, read);
        return looked.check().stops() ? CheckVerb.STOP : 0;
    }

    /** A rig in its weather, and what is asked of it. */
    private record Planned(Rig rig, WeatherChoice outdoors, NightRun.Ask ask) {

        Looked run(Given given) {
            long begun = System.nanoTime();
            return Looked.run(
                    rig, outdoors.weather(), ask, given, night -> night.timed((System.nanoTime() - begun) * 1e-6));
        }
    }

    private Planned planned(Rig rig) {
        WeatherChoice outdoors = WeatherChoice.of(weather, rig, choice.path, answer.units);
        return new Planned(rig, outdoors, Hours.night(outdoors, from, until, answer.hour, answer.limit));
    }

    private void tell(Night night, CardFacts facts, CardFacts before, RigFile<Rig> read) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (answer.json) {
            if (facts.before() != null) out.print("{\"asFiled\":");
            if (facts.before() != null) NightJson.write(facts.before(), before, out);
            if (facts.before() != null) out.print(",\"now\":");
            NightJson.write(night, facts, out);
            out.println(facts.before() != null ? "}" : "");
        } else if (!answer.csvAlone()) {
            out.print(NightCard.text(night, facts, answer.units));
            if (!answer.noPlot) {
                out.println();
                out.print(TerminalPlot.night(night, answer.units, answer.columns(), HEIGHT));
            }
            if (defaults) {
                out.println();
                DefaultsVerb.print(read.defaultsUsed(), answer.units, out);
            }
        }
        if (answer.html != null) OutFile.write(answer.html, NightPage.html(night, facts, answer.units));
        OutFile.write(answer.png, to -> NightPicture.png(night, facts, answer.units, to));
        answer.writeTable(out, to -> TraceCsv.write(night, facts, answer.units, to));
    }

    private Rig lessened(Rig rig) {
        Rig left = rig;
        for (Part part : without) left = part == Part.FAN ? left.withoutFan() : left.withoutWater();
        return left;
    }
}
