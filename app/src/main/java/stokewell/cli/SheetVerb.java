package stokewell.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.check.Finding;
import stokewell.check.Level;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.sheet.SheetFacts;
import stokewell.show.Paper;
import stokewell.show.Sheet;
import stokewell.show.Spoken;

/** Prints the sheet for the bench. */
@Command(
        name = "sheet",
        description = "What to build and what to test, on two to four pages for the bench. "
                + "Ends with 3 if a fire must not be lit; every page then says so.",
        sortOptions = false)
final class SheetVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the sheet as PDF.")
    Path pdf;

    @Option(names = "--html", paramLabel = "FILE", description = "Write the sheet as one HTML file.")
    Path html;

    @Option(names = "--paper", paramLabel = "a4|letter", description = "Default: letter with US units, else a4.")
    Paper paper;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(
            names = "--weather",
            paramLabel = "WEATHER",
            description = "As for night. Default: what the rig file names.")
    String weather;

    @Override
    public Integer call() throws Exception {
        if (pdf == null && html == null) {
            throw Complaint.usage("sheet needs a file to write.", "Write --pdf FILE or --html FILE.");
        }
        OutFile.check("--pdf", pdf);
        OutFile.check("--html", html);
        Rig rig = choice.read().rig();
        Paper on = paper != null ? paper : units == UnitSystem.US ? Paper.LETTER : Paper.A4;
        WeatherChoice outdoors = WeatherChoice.of(weather, rig, choice.path, units);
        Drills.Outcome outcome = CheckVerb.drilled(rig, outdoors, EnumSet.allOf(Fault.class));
        SheetFacts facts = Spoken.in(SheetFacts.of(rig, outdoors.weather(), outcome), units);
        OutFile.write(pdf, pdf == null ? null : to -> Sheet.pdf(facts, units, on, to));
        OutFile.write(html, html == null ? null : Sheet.html(facts, units, on));
        return tell(facts);
    }

    private int tell(SheetFacts facts) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(facts.rig().name() + ": " + CheckVerbPage.verdict(facts.check()));
        for (Finding f : facts.check().at(Level.STOP)) out.println("STOP " + f.what() + "  [" + f.id() + "]");
        for (Path p : new Path[] {pdf, html}) {
            if (p != null) out.println(p + " is written.");
        }
        return facts.check().stops() ? CheckVerb.STOP : 0;
    }
}
