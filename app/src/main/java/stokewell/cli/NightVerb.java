package stokewell.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.matter.Wood;
import stokewell.rig.Dimension;
import stokewell.rig.Rig;
import stokewell.run.Given;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.show.NightCard;
import stokewell.show.NightJson;
import stokewell.show.TraceCsv;

/** Runs one night. */
@Command(
        name = "night",
        description = "Run a day and a night: will it carry, is it safe, where does the heat go?",
        sortOptions = false)
final class NightVerb implements Callable<Integer> {

    /** Samples of the trace, s. */
    private static final double STEP = 300;
    /** From when on the lowest room of the night counts. */
    private static final LocalTime EVENING = LocalTime.of(16, 0);

    private static final LocalTime MORNING = LocalTime.of(8, 0);

    /** What can be taken away to see what it does. */
    enum Part {
        STORE,
        WATER,
        FAN
    }

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

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
            names = "--hour",
            paramLabel = "CLOCK",
            defaultValue = "7:30",
            description = "The hour of the morning that counts. Default: ${DEFAULT-VALUE}.")
    String hour;

    @Option(
            names = "--limit",
            paramLabel = "TEMPERATURE",
            defaultValue = "10 C",
            description = "The room temperature that hours are counted against. Default: ${DEFAULT-VALUE}.")
    String limit;

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

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Option(names = "--defaults", description = "List the defaults that the rig file leans on, too.")
    boolean defaults;

    @Option(names = "--json", description = "Write JSON and nothing else.")
    boolean json;

    @Option(names = "--csv", paramLabel = "FILE", description = "Write every sample of the run.")
    Path csv;

    @Override
    public Integer call() throws Exception {
        if (against && choice.settings.isEmpty() && without.isEmpty()) {
            throw Complaint.usage(
                    "--against compares with the file, and nothing is changed.", "Add --set or --without.");
        }
        RigFile<Rig> read = choice.read();
        Rig rig = lessened(read.rig());
        Given given = start == null ? Given.NOTHING : StartChoice.read(start);
        WeatherChoice outdoors = WeatherChoice.of(weather, rig, choice.path, units);
        NightRun.Ask ask = ask(outdoors);
        for (String note : outdoors.notes()) spec.commandLine().getErr().println("weather: " + note);
        long begun = System.nanoTime();
        Night night = NightRun.run(rig, outdoors.weather(), ask, given);
        night = night.timed((System.nanoTime() - begun) * 1e-6);
        double density = stacked(rig);
        if (csv != null) {
            try (Writer file = Files.newBufferedWriter(csv)) {
                TraceCsv.write(night.trace(), night.weatherStart(), file);
            }
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            StringWriter text = new StringWriter();
            NightJson.write(night, density, text);
            out.println(text);
            return 0;
        }
        out.println(outdoors.told());
        out.print(NightCard.text(night, density, units));
        if (against) {
            Rig own = RigFile.read(choice.path, List.of()).rig();
            Night before = NightRun.run(own, outdoors.weather(), ask, given);
            out.println();
            out.print(SideBySide.table(before, night, "as filed", "changed", units));
        }
        if (defaults) {
            out.println();
            read.defaultsUsed().forEach(d -> out.println(d.key() + ": " + d.text()));
        }
        return 0;
    }

    /** Weight of a stacked cubic metre of this rig's wood, kg. */
    private static double stacked(Rig rig) {
        Wood wood = Wood.named(rig.fuel().species()).orElse(Wood.values()[0]);
        return wood.stackedDensity(rig.fuel().wetBasis(), rig.fuel().stackSolid());
    }

    private Rig lessened(Rig rig) {
        Rig left = rig;
        for (Part part : without) left = part == Part.FAN ? left.withoutFan() : left.withoutWater();
        return left;
    }

    private NightRun.Ask ask(WeatherChoice outdoors) {
        LocalDate earliest = outdoors.hourly()
                .map(h -> h.start().toLocalDate())
                .orElse(LocalDate.of(outdoors.day().getYear(), 1, 1));
        LocalDateTime begin = from == null
                ? outdoors.day().atTime(MORNING)
                : Moments.read("--from", from, earliest).or(outdoors.day(), MORNING);
        LocalDateTime end = end(begin);
        if (!begin.isBefore(end)) throw Complaint.usage("--until " + end + " is not after --from " + begin + ".", "");
        double a = seconds(outdoors, begin);
        double b = seconds(outdoors, end);
        if (!outdoors.weather().covers(a, b)) {
            throw Complaint.usage(
                    "The weather file does not reach from " + begin + " to " + end + ".",
                    "It holds "
                            + outdoors.hourly()
                                    .map(h -> h.start() + " to " + h.end())
                                    .orElse("less") + ".");
        }
        return new NightRun.Ask(
                begin, end, Moments.clock(hour), EVENING, kelvin("--limit", limit), STEP, Simulation.TOLERANCE);
    }

    private static double seconds(WeatherChoice outdoors, LocalDateTime at) {
        return java.time.Duration.between(outdoors.weather().start(), at).toMillis() / 1000.0;
    }

    private LocalDateTime end(LocalDateTime begin) {
        if (until == null) return begin.toLocalDate().plusDays(1).atTime(MORNING);
        if (until.indexOf(':') < 0 && until.strip().matches("[\\d.,]+\\s*(h|d|day|days|min|hours?)")) {
            return begin.plusSeconds(Math.round(Quantity.parse(until, Dimension.TIME)));
        }
        Moments m = Moments.read("--until", until, begin.toLocalDate());
        LocalDateTime end = m.or(begin.toLocalDate(), MORNING);
        return m.day() == null && !end.isAfter(begin) ? end.plusDays(1) : end;
    }

    private static double kelvin(String option, String text) {
        try {
            return Quantity.parse(text, Dimension.TEMPERATURE);
        } catch (QuantityFault e) {
            throw Complaint.usage(option + ": " + e.what, e.right);
        }
    }
}
