package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.Quantity;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.UnitSystem;
import stokewell.fit.Saving;
import stokewell.rig.Dimension;
import stokewell.rig.Rig;
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

    @Option(
            names = "--model",
            paramLabel = "RIG",
            description =
                    "The rig file of how it was before: fitted to the days before and run through the days after, "
                            + "too. Takes a minute.")
    Path model;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(names = "--json", description = "Write JSON and nothing else.")
    boolean json;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page to look at and to print, too.")
    Path html;

    /** Outdoors, below which heat is needed, K: degree days count from some 10 to 20 °C; common practice. */
    private static final double COLDEST_BASE = 273.15;

    private static final double WARMEST_BASE = 303.15;

    @Override
    public Integer call() throws IOException {
        OutFile.check("--html", html);
        if (model != null) InFile.check("--model", model);
        double kelvin = base == null ? Double.NaN : Quantity.parse(base, Dimension.TEMPERATURE);
        if (kelvin < COLDEST_BASE || kelvin > WARMEST_BASE) {
            throw Complaint.usage(
                    "--base \"" + base + "\": no shop is heated below such a temperature outdoors only.",
                    "Give one between 0 C and 30 C.");
        }
        Winters.Found found = winters.read();
        PrintWriter err = spec.commandLine().getErr();
        for (String note : found.told()) err.println("readings: " + note);
        err.flush();
        boolean comfort = found.room() && base == null && !weatherOnly;
        Saving saving = found.compared(comfort, kelvin);
        SavedFacts facts = new SavedFacts(saving, found.source(), found.room(), model(found));
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

    /** What the model says; empty where nobody asked. */
    private Optional<SavedFacts.Model> model(Winters.Found found) throws IOException {
        if (model == null) return Optional.empty();
        PrintWriter err = spec.commandLine().getErr();
        try (Interrupt interrupt = new Interrupt(err)) {
            Rig rig = RigFile.read(model, List.of()).rig();
            return Optional.of(winters.modelled(found, rig, model, units, done -> !interrupt.asked()));
        } catch (RigFileFault fault) {
            throw Complaint.usage(fault.getMessage(), "Mend the rig file.");
        }
    }
}
