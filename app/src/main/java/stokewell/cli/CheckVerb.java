package stokewell.cli;

import java.io.PrintWriter;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
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
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.show.Ascii;
import stokewell.show.Spoken;

/** Looks for what is wrong with a rig. */
@Command(
        name = "check",
        description =
                "Is it safe: what is wrong with this rig, why, and how to mend it. Ends with 3 if a fire must not be lit.",
        sortOptions = false)
final class CheckVerb implements Callable<Integer> {

    /** Exit code where a fire must not be lit. */
    static final int STOP = 3;

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Option(
            names = "--weather",
            paramLabel = "WEATHER",
            description = "As for night. Default: what the rig file names.")
    String weather;

    @Option(names = "--all", description = "List what was found in order, too.")
    boolean all;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(names = "--json", description = "Write JSON and nothing else; always in SI.")
    boolean json;

    @Override
    public Integer call() throws Exception {
        Rig rig = choice.read().rig();
        Drills.Outcome outcome =
                drilled(rig, WeatherChoice.of(weather, rig, choice.path, UnitSystem.SI), EnumSet.allOf(Fault.class));
        Check check = Check.of(rig, outcome.day(), outcome.drills());
        PrintWriter out = spec.commandLine().getOut();
        if (json) out.println(CheckVerbJson.of(rig, check));
        else out.print(Ascii.of(CheckVerbPage.text(rig, outcome, Spoken.in(check, units), all)));
        return check.stops() ? STOP : 0;
    }

    /** All that is found on a rig in this weather. */
    static Check checked(Rig rig, WeatherChoice outdoors) {
        Drills.Outcome outcome = drilled(rig, outdoors, EnumSet.allOf(Fault.class));
        return Check.of(rig, outcome.day(), outcome.drills());
    }

    /** The normal day from 8:00 of the weather's own day, and its drills. */
    static Drills.Outcome drilled(Rig rig, WeatherChoice outdoors, Set<Fault> faults) {
        LocalDateTime from = outdoors.day().atTime(8, 0);
        NightRun.Ask ask = new NightRun.Ask(
                from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 120, Simulation.TOLERANCE);
        return Drills.run(rig, outdoors.weather(), ask, faults);
    }
}
