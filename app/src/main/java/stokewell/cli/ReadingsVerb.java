package stokewell.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What the sensors said. */
@Command(
        name = "readings",
        description = "Readings of your sensors: take a logger's file in, list, show.",
        subcommands = {
            ReadingsImportVerb.class,
            ReadingsListVerb.class,
            ReadingsShowVerb.class,
            ReadingsPlaceVerb.class,
        },
        synopsisSubcommandLabel = "import|list|show|place",
        commandListHeading = "%nVerbs:%n")
final class ReadingsVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return 0;
    }
}
