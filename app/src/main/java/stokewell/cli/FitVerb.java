package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.UnitSystem;
import stokewell.fit.Fit;
import stokewell.fit.Fitting;
import stokewell.fit.Knob;
import stokewell.rig.Rig;
import stokewell.shop.SavedFit;
import stokewell.shop.Shop;
import stokewell.show.FitCard;
import stokewell.show.FitJson;
import stokewell.show.FitPage;
import stokewell.show.ToldJson;

/** Holds a rig against the readings of its sensors. */
@Command(
        name = "fit",
        description = "Learn from readings what your rig really does: losses, strengths, what to mend.",
        sortOptions = false)
final class FitVerb implements Callable<Integer> {

    private static final int BAR = 40;

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Mixin
    FitReadings readings;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(
            names = "--profile",
            paramLabel = "NAME",
            split = ",",
            description = "Numbers to look at closely: how badly the readings take it if they are held elsewhere. "
                    + "Default: two that the readings tell least.")
    List<String> profile;

    @Option(names = "--json", description = "Write JSON and nothing else.")
    boolean json;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page to look at and to print, too.")
    Path html;

    @Override
    public Integer call() throws Exception {
        OutFile.check("--html", html);
        Rig rig = choice.read().rig();
        PrintWriter err = spec.commandLine().getErr();
        FitReadings.Found found = readings.read(rig, choice.path, units);
        for (String note : found.told()) err.println("readings: " + note);
        err.flush();
        boolean progress = Boolean.getBoolean("stokewell.progress");
        try (Interrupt interrupt = new Interrupt(err)) {
            Fit fit = Fitting.fit(rig, found.weather(), found.readings(), Knob.of(rig), closely(rig), done -> {
                if (progress) bar(err, done);
                return !interrupt.asked();
            });
            if (progress) clear(err);
            tell(fit, found);
            if (readings.ofShop()) keep(fit, found, err);
            return 0;
        } catch (CancellationException e) {
            if (progress) clear(err);
            err.println(e.getMessage() + "; nothing is told of part of one");
            err.flush();
            return Complaints.STOPPED;
        } catch (IllegalStateException e) {
            throw Complaint.failed(
                    String.format(Locale.ROOT, "The fit failed: %s.", e.getMessage()),
                    "Look whether the sensors sit where it says, and whether the loads are noted.");
        }
    }

    private List<Knob> closely(Rig rig) {
        if (profile == null) return null;
        List<Knob> knobs = new ArrayList<>();
        for (String name : profile) {
            Knob found = null;
            for (Knob k : Knob.of(rig)) if (k.name().equalsIgnoreCase(name.strip())) found = k;
            if (found == null) {
                throw Complaint.usage(
                        "--profile: \"" + name + "\" is no number of this rig.",
                        "There are: "
                                + Knob.of(rig).stream()
                                        .map(k -> k.name().toLowerCase(Locale.ROOT))
                                        .collect(Collectors.joining(", "))
                                + ".");
            }
            knobs.add(found);
        }
        return knobs;
    }

    private void tell(Fit fit, FitReadings.Found found) throws IOException {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            FitJson.write(fit, found.placing(), out);
            out.println();
        } else {
            out.print(FitCard.text(fit, found.placing(), units));
        }
        if (html != null) OutFile.write(html, FitPage.html(fit, found.placing(), units));
    }

    /** In the shop's own file, where its readings came from. */
    private void keep(Fit fit, FitReadings.Found found, PrintWriter err) throws IOException {
        String text = Files.readString(choice.path);
        try (Shop shop = Shop.openExisting(readings.shop)) {
            String body = ToldJson.kept(fit, found.placing(), text);
            SavedFit kept = shop.saveFit(Instant.now().getEpochSecond(), shop.versionOf(text), body);
            err.println("kept in " + readings.shop + " as fit " + kept.id());
            err.flush();
        }
    }

    private static synchronized void bar(PrintWriter err, double done) {
        int full = (int) Math.round(BAR * done);
        err.print("\r" + "#".repeat(full) + ".".repeat(BAR - full) + " " + Math.round(100 * done) + " %");
        err.flush();
    }

    private static void clear(PrintWriter err) {
        err.print("\r" + " ".repeat(BAR + 7) + "\r");
        err.flush();
    }
}
