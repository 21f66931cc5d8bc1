package stokewell.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what a verb takes. */
@Command(name = "help", description = "Tell what a verb takes.")
final class HelpVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Parameters(paramLabel = "VERB", arity = "0..1", description = "Which verb; all of them if left out.")
    String verb;

    @Override
    public Integer call() {
        CommandLine root = spec.parent().commandLine();
        if (verb == null) {
            root.usage(root.getOut());
            return 0;
        }
        CommandLine wanted = root.getSubcommands().get(verb);
        if (wanted == null) {
            throw Complaint.usage(
                    "There is no verb \"" + verb + "\".",
                    "Known: " + String.join(", ", root.getSubcommands().keySet()) + ".");
        }
        wanted.usage(root.getOut());
        return 0;
    }
}
