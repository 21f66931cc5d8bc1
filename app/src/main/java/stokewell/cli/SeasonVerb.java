package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.check.Check;
import stokewell.rig.Rig;
import stokewell.run.Beside;
import stokewell.run.Season;
import stokewell.run.SeasonRun;
import stokewell.show.CardFacts;
import stokewell.show.SeasonCard;
import stokewell.show.SeasonJson;
import stokewell.show.SeasonPage;
import stokewell.show.SeasonPicture;
import stokewell.show.TerminalPlot;
import stokewell.show.TraceCsv;

/** Runs a season of real hours. */
@Command(
        name = "season",
        description = "Run autumn to spring: wood by month, hours below the limit, coldest mornings. "
                + "Ends with 3 if a fire must not be lit.",
        sortOptions = false)
final class SeasonVerb implements Callable<Integer> {

    private static final int BAR = 40;
    private static final int HEIGHT = 16;

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Mixin
    AnswerChoice answer;

    @Option(names = "--weather", paramLabel = "FILE", description = "An hourly file. Default: what the rig file names.")
    String weather;

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "Default: 1 Oct, or where the file begins if it holds no whole winter.")
    String from;

    @Option(
            names = "--until",
            paramLabel = "DAY",
            description = "Default: 30 Apr, or where the file ends if it holds no whole winter.")
    String until;

    @Override
    public Integer call() throws Exception {
        answer.check();
        Rig rig = choice.read().rig();
        WeatherChoice outdoors = WeatherChoice.of(weather, rig, choice.path, answer.units);
        SeasonRun.Ask ask = Hours.season(outdoors, from, until, answer.hour, answer.limit);
        PrintWriter err = spec.commandLine().getErr();
        outdoors.remark(err);
        try (Interrupt interrupt = new Interrupt(err)) {
            return run(rig, outdoors, ask, interrupt, err);
        }
    }

    private int run(Rig rig, WeatherChoice outdoors, SeasonRun.Ask ask, Interrupt interrupt, PrintWriter err)
            throws IOException {
        boolean progress = Boolean.getBoolean("stokewell.progress");
        Beside<Check> check = Beside.begin(() -> CheckVerb.checked(rig, outdoors));
        try {
            Season season = SeasonRun.run(rig, outdoors.weather(), ask, done -> {
                if (progress) bar(err, done);
                return !interrupt.asked();
            });
            if (progress) clear(err);
            tell(season, CardFacts.of(rig, answer.units).in(outdoors.told()).checked(check.done()));
            return check.done().stops() ? CheckVerb.STOP : 0;
        } catch (CancellationException e) {
            if (progress) clear(err);
            err.println(e.getMessage() + "; nothing is told of part of one");
            err.flush();
            return Complaints.STOPPED;
        }
    }

    private static void bar(PrintWriter err, double done) {
        int full = (int) Math.round(BAR * done);
        err.print("\r" + "#".repeat(full) + ".".repeat(BAR - full) + " " + Math.round(100 * done) + " %");
        err.flush();
    }

    private static void clear(PrintWriter err) {
        err.print("\r" + " ".repeat(BAR + 7) + "\r");
        err.flush();
    }

    private void tell(Season season, CardFacts facts) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (answer.json) {
            SeasonJson.write(season, facts, out);
            out.println();
        } else if (!answer.csvAlone()) {
            out.print(SeasonCard.text(season, facts, answer.units));
            if (!answer.noPlot) {
                out.println();
                out.print(TerminalPlot.season(season, answer.units, answer.columns(), HEIGHT));
            }
        }
        if (answer.html != null) OutFile.write(answer.html, SeasonPage.html(season, facts, answer.units));
        OutFile.write(answer.png, to -> SeasonPicture.png(season, facts, answer.units, to));
        answer.writeTable(out, to -> TraceCsv.write(season, facts, answer.units, to));
    }
}
