package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.Quantity;
import stokewell.file.UnitSystem;
import stokewell.fit.Saving;
import stokewell.rig.Dimension;
import stokewell.show.SavedCard;
import stokewell.show.SavedFacts;
import stokewell.show.SavedJson;
import stokewell.show.SavedPage;

/** Compares the wood of two periods. */
@Command(
        name = "saved",
        description = "Whether you burn less wood than before, for the same weather and the same warmth.",
        sortOptions = false)
final class SavedVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    Winters winters;

    @Option(
            names = "--base",
            paramLabel = "TEMPERATURE",
            description = "Count degree-days below this, such as \"15 C\". Default: the room's own temperature where "
                    + "it was measured, else the base that fits best.")
    String base;

    @Option(names = "--weather-only", description = "Leave the room's temperature out, though it was measured.")
    boolean weatherOnly;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(names = "--json", description = "Write JSON and nothing else.")
    boolean json;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page to look at and to print, too.")
    Path html;

    @Override
    public Integer call() throws IOException {
        OutFile.check("--html", html);
        double kelvin = base == null ? Double.NaN : Quantity.parse(base, Dimension.TEMPERATURE);
        Winters.Found found = winters.read();
        PrintWriter err = spec.commandLine().getErr();
        for (String note : found.told()) err.println("readings: " + note);
        err.flush();
        boolean comfort = found.room() && base == null && !weatherOnly;
        Saving saving;
        try {
            saving = Saving.of(found.before(), found.after(), comfort, kelvin);
        } catch (IllegalArgumentException few) {
            throw Complaint.usage(
                    "Nothing can be compared: " + few.getMessage() + ".",
                    "A day counts with 18 hours of temperatures and all its loads noted.");
        }
        SavedFacts facts = new SavedFacts(saving, found.source(), found.room());
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            SavedJson.write(facts, out);
            out.println();
        } else {
            out.print(SavedCard.text(facts, units));
        }
        if (html != null) OutFile.write(html, SavedPage.html(facts, units));
        return 0;
    }
}
