package stokewell.cli;

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
                    + "3 a check found a stop."
        },
        subcommands = {
            NightVerb.class,
            SeasonVerb.class,
            CheckVerb.class,
            DrillVerb.class,
            DefaultsVerb.class,
            KeysVerb.class,
            SchemaVerb.class,
            HelpVerb.class
        })
final class Stokewell implements Runnable {

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

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
