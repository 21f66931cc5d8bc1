package stokewell.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.Quantity;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.rig.Rig;
import stokewell.run.Night;
import stokewell.run.Season;
import stokewell.run.SeasonRun;
import stokewell.run.Simulation;

/** Runs a season of real hours. */
@Command(name = "season", description = "Run autumn to spring: wood by month, hours below the limit, coldest mornings.")
final class SeasonVerb implements Callable<Integer> {

    private static final double STEP = 1800;
    private static final int BAR = 40;

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Option(names = "--weather", paramLabel = "FILE", description = "An hourly file. Default: what the rig file names.")
    Path weather;

    @Option(names = "--from", paramLabel = "DAY", defaultValue = "1 Oct", description = "Default: ${DEFAULT-VALUE}.")
    String from;

    @Option(names = "--until", paramLabel = "DAY", defaultValue = "30 Apr", description = "Default: ${DEFAULT-VALUE}.")
    String until;

    @Option(
            names = "--limit",
            paramLabel = "TEMPERATURE",
            defaultValue = "10 C",
            description = "Default: ${DEFAULT-VALUE}.")
    String limit;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Override
    public Integer call() throws Exception {
        Rig rig = choice.read().rig();
        WeatherChoice outdoors = WeatherChoice.of(weather == null ? null : weather.toString(), rig, choice.path, units);
        if (outdoors.hourly().isEmpty()) {
            throw Complaint.usage(
                    "A season needs hourly weather.", "Give --weather FILE, or name a file in the rig file.");
        }
        LocalDate earliest = outdoors.hourly().get().start().toLocalDate();
        LocalDateTime begin = Moments.read("--from", from, earliest).or(earliest, LocalTime.MIDNIGHT);
        LocalDateTime end = Moments.read("--until", until, begin.toLocalDate()).or(earliest, LocalTime.MIDNIGHT);
        if (!begin.isBefore(end)) throw Complaint.usage("--until " + end + " is not after --from " + begin + ".", "");
        double low =
                java.time.Duration.between(outdoors.weather().start(), begin).toSeconds();
        double high =
                java.time.Duration.between(outdoors.weather().start(), end).toSeconds();
        if (!outdoors.weather().covers(low, high)) {
            throw Complaint.usage("The weather file does not reach from " + begin + " to " + end + ".", "");
        }
        PrintWriter err = spec.commandLine().getErr();
        boolean progress = Boolean.getBoolean("stokewell.progress");
        Season season = SeasonRun.run(
                rig,
                outdoors.weather(),
                new SeasonRun.Ask(
                        begin,
                        end,
                        LocalTime.of(7, 30),
                        Quantity.parse(limit, Dimension.TEMPERATURE),
                        STEP,
                        Simulation.TOLERANCE),
                done -> {
                    if (progress) bar(err, done);
                    return true;
                });
        if (progress) err.println();
        tell(season, outdoors);
        return 0;
    }

    private static void bar(PrintWriter err, double done) {
        int full = (int) Math.round(BAR * done);
        err.print("\r" + "#".repeat(full) + ".".repeat(BAR - full) + " " + Math.round(100 * done) + " %");
        err.flush();
    }

    private void tell(Season season, WeatherChoice outdoors) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(season.rig() + ", " + outdoors.told());
        double most =
                season.months().stream().mapToDouble(Season.Month::wood).max().orElse(1);
        for (Season.Month m : season.months()) {
            out.println(m.month() + "  " + pad(Quantity.write(m.wood(), Dimension.MASS, units, 3))
                    + "  below the limit "
                    + Math.round(m.hoursBelow()) + " h, room " + temperature(m.meanRoom()) + "  "
                    + "#".repeat((int) Math.round(30 * m.wood() / Math.max(1, most))));
        }
        out.println("wood " + Quantity.write(season.wood(), Dimension.MASS, units, 3) + " in " + season.loads()
                + " loads; hours below " + temperature(season.limit()) + ": " + Math.round(season.hoursBelow()));
        if (Double.isFinite(season.boil().margin())) {
            out.println("least margin to boiling "
                    + Quantity.write(season.boil().margin(), Dimension.TEMPERATURE_DIFFERENCE, units, 3) + " on "
                    + season.at(season.boil().time()) + ", " + season.boil().where() + "; boiling "
                    + Math.round(season.boilingMinutes()) + " min");
        }
        for (Night.Drive d : season.drives())
            out.println(d.name() + ": " + d.starts() + " starts, " + Math.round(d.hours()) + " h");
        out.println("coldest mornings:");
        for (Season.Morning m : season.mornings()) {
            out.println("  " + season.at(m.time()).toLocalDate() + "  room " + temperature(m.room()) + ", outdoors "
                    + temperature(m.outdoors()));
        }
        out.println("Steam, fire and carbon monoxide kill. Local code and a licensed person decide what may be built.");
    }

    private static String pad(String text) {
        return " ".repeat(Math.max(0, 9 - text.length())) + text;
    }

    private String temperature(double kelvin) {
        return Quantity.write(kelvin, Dimension.TEMPERATURE, units, 3);
    }
}
