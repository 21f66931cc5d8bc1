package stokewell.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.check.Check;
import stokewell.file.RigFileFault;
import stokewell.rig.Rig;
import stokewell.run.Beside;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.show.CardFacts;
import stokewell.show.Lineup;

/** Puts several rigs, or one with changes, under each other. */
@Command(
        name = "compare",
        description =
                "Which of them: a row for each rig, or for each change of it, with its night and the worst that the "
                        + "check finds. Ends with 3 if a fire must not be lit on one of them.",
        sortOptions = false)
final class CompareVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Parameters(paramLabel = "RIG", arity = "1..*", description = "The rig files.")
    List<Path> paths = new ArrayList<>();

    @Option(
            names = "--try",
            paramLabel = "CHANGE",
            description = "One more row for each rig, with this set over what its file says, such as "
                    + "--try 'store.jacket=12 in mineral wool'; several at once with a semicolon between. Repeatable.")
    List<String> tries = new ArrayList<>();

    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Set an entry in every row, those as filed, too. Repeatable.")
    List<String> settings = new ArrayList<>();

    @Option(
            names = "--weather",
            paramLabel = "WEATHER",
            description = "As for night, the same for all. Default: what each rig file names.")
    String weather;

    @Option(names = "--from", paramLabel = "MOMENT", description = "As for night.")
    String from;

    @Option(names = "--until", paramLabel = "MOMENT", description = "As for night.")
    String until;

    @Mixin
    TableChoice answer;

    /** A rig in its weather, and what is asked of it. */
    private record Asked(Path path, List<String> changes, Rig rig, WeatherChoice outdoors, NightRun.Ask ask) {}

    @Override
    public Integer call() throws Exception {
        answer.check();
        List<Asked> all = asked();
        remark(all);
        List<Lineup.Row> rows = all.parallelStream().map(this::row).toList();
        Lineup lineup = new Lineup(rows, answer.units);
        PrintWriter out = spec.commandLine().getOut();
        if (answer.json) {
            lineup.json(out);
            out.println();
        } else if (!answer.csvAlone()) {
            out.print(lineup.text());
        }
        answer.writeTable(out, lineup::csv);
        return rows.stream().anyMatch(r -> r.facts().check().stops()) ? CheckVerb.STOP : 0;
    }

    /** Every row, in the order in which it was asked for; nothing is run where one of the files has a fault. */
    private List<Asked> asked() throws IOException, RigFileFault {
        List<List<String>> changes = new ArrayList<>(List.of(List.of()));
        for (String each : tries) {
            changes.add(Arrays.stream(each.split(";"))
                    .map(String::strip)
                    .filter(s -> !s.isEmpty())
                    .toList());
        }
        WeatherMemory read = new WeatherMemory();
        List<Asked> all = new ArrayList<>();
        for (Path path : paths) {
            for (List<String> change : changes) {
                List<String> over = new ArrayList<>(settings);
                over.addAll(change);
                Rig rig = RigChoice.read(path, over).rig();
                WeatherChoice outdoors = WeatherChoice.of(weather, rig, path, answer.units, read);
                all.add(new Asked(
                        path, change, rig, outdoors, Hours.night(outdoors, from, until, answer.hour, answer.limit)));
            }
        }
        return all;
    }

    /** Once for each weather. */
    private void remark(List<Asked> all) {
        Set<String> told = new HashSet<>();
        for (Asked each : all) {
            if (told.add(each.outdoors.told()))
                each.outdoors.remark(spec.commandLine().getErr());
        }
    }

    /** Settled as night does it, whoever stands beside it. */
    private Lineup.Row row(Asked a) {
        Beside<Check> check = Beside.begin(() -> CheckVerb.checked(a.rig, a.outdoors));
        Night night = NightRun.run(a.rig, a.outdoors.weather(), a.ask);
        CardFacts facts =
                CardFacts.of(a.rig, answer.units).in(a.outdoors.told()).checked(check.done());
        return new Lineup.Row(a.path.toString(), a.changes, night, facts);
    }
}
