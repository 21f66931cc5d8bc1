package stokewell.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.check.Check;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;
import stokewell.show.Ascii;
import stokewell.show.DrillPage;
import stokewell.show.DrillPicture;
import stokewell.show.Spoken;

/** Lets things fail. */
@Command(
        name = "drill",
        description =
                "What happens when something fails at the worst moment of a normal day, how long there is, what to do. Ends with 3 if "
                        + "a fire must not be lit.",
        sortOptions = false)
final class DrillVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Option(
            names = "--fault",
            paramLabel = "NAME|all",
            defaultValue = "all",
            description =
                    "power-out, pump-dead, air-lock, valve-shut, check-stuck, fan-dead, sensor-out, stuck-on, stuck-off, store-full, over-fire, "
                            + "double-load, low-water, dry-refilled, frozen-run, leak, vent-narrow, vent-blocked, relief-fails, fouled, "
                            + "reverse-flow, chimney-fire, cap-blocked, backdraft. Default: all.")
    String fault;

    @Option(
            names = "--weather",
            paramLabel = "WEATHER",
            description = "As for night. Default: what the rig file names.")
    String weather;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(names = "--json", description = "Write JSON and nothing else; always in SI.")
    boolean json;

    @Option(names = "--html", paramLabel = "FILE", description = "Write a page of all drills, too.")
    Path html;

    @Option(names = "--png", paramLabel = "FILE", description = "Write the picture, too.")
    Path png;

    @Override
    public Integer call() throws Exception {
        Set<Fault> faults = faults(fault);
        OutFile.check("--html", html);
        OutFile.check("--png", png);
        Rig rig = choice.read().rig();
        WeatherChoice outdoors = WeatherChoice.of(weather, rig, choice.path, UnitSystem.SI);
        Set<Fault> run = EnumSet.copyOf(faults);
        run.addAll(Drills.deciding(rig));
        Drills.Outcome all = CheckVerb.drilled(rig, outdoors, run);
        Drills.Outcome outcome = all.only(faults);
        PrintWriter out = spec.commandLine().getOut();
        // no output shows a rig that must not be lit as fine
        Check check = Check.of(rig, all.day(), all.drills());
        Check heard = Spoken.in(check, units);
        Drills.Outcome told = Spoken.in(outcome, units);
        if (json) out.println(DrillVerbJson.of(rig, outcome, check));
        else out.print(Ascii.of(new DrillVerbPage(units).text(rig, told, heard)));
        if (html != null) OutFile.write(html, DrillPage.html(rig.name(), told, heard, units));
        OutFile.write(png, to -> DrillPicture.png(rig.name(), told, heard, units, to));
        return check.stops() ? CheckVerb.STOP : 0;
    }

    static String name(Fault fault) {
        return fault.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Set<Fault> faults(String asked) {
        String plain = asked.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
        if (plain.equals("all")) return EnumSet.allOf(Fault.class);
        for (Fault f : Fault.values()) {
            if (name(f).equals(plain) || f.title().replace(' ', '-').equals(plain)) return EnumSet.of(f);
        }
        List<String> names = Arrays.stream(Fault.values()).map(DrillVerb::name).toList();
        throw Complaint.usage("--fault " + asked + " is not a fault.", "Known: all, " + String.join(", ", names) + ".");
    }
}
