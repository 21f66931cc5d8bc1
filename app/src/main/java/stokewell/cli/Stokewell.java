package stokewell.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** All verbs. */
@Command(
        name = "stokewell",
        description = "What a wood-fired heat store will do: tonight, and this winter.",
        synopsisSubcommandLabel = "VERB",
        commandListHeading = "%nVerbs:%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "./stokewell help VERB tells what a verb takes.",
            "Exit codes: 0 done, 1 the run failed, 2 something was asked wrongly and nothing was run, "
                    + "3 done, and a fire must not be lit on this rig, 130 interrupted."
        })
final class Stokewell implements Runnable {

    /** Every verb, in the order that help tells them. */
    private static final Map<String, Supplier<Object>> VERBS = verbs();

    @Spec
    CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Show this and do nothing.")
    boolean help;

    @Option(names = "--debug", scope = ScopeType.INHERIT, description = "Show the stack trace of a failure.")
    boolean debug;

    private static Map<String, Supplier<Object>> verbs() {
        Map<String, Supplier<Object>> verbs = new LinkedHashMap<>();
        verbs.put("begin", BeginVerb::new);
        verbs.put("night", NightVerb::new);
        verbs.put("compare", CompareVerb::new);
        verbs.put("season", SeasonVerb::new);
        verbs.put("fit", FitVerb::new);
        verbs.put("saved", SavedVerb::new);
        verbs.put("check", CheckVerb::new);
        verbs.put("drill", DrillVerb::new);
        verbs.put("sheet", SheetVerb::new);
        verbs.put("open", OpenVerb::new);
        verbs.put("readings", ReadingsVerb::new);
        verbs.put("diary", DiaryVerb::new);
        verbs.put("shop", ShopVerb::new);
        verbs.put("defaults", DefaultsVerb::new);
        verbs.put("keys", KeysVerb::new);
        verbs.put("schema", SchemaVerb::new);
        verbs.put("help", HelpVerb::new);
        return verbs;
    }

    /** The command line; a verb that is named first is made alone, for a quicker start. */
    static CommandLine line(String... args) {
        CommandLine line = new CommandLine(new Stokewell());
        boolean alone = args.length > 0 && !args[0].equals("help") && VERBS.containsKey(args[0]);
        VERBS.forEach((name, verb) -> {
            if (!alone || name.equals(args[0])) line.addSubcommand(name, verb.get());
        });
        return line;
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
