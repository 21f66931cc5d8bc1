package stokewell.cli;

import java.util.ArrayList;
import java.util.List;
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

    @Parameters(
            paramLabel = "VERB",
            arity = "0..2",
            description = "Which verb, and which of its own; all of them if left out.")
    List<String> verbs = new ArrayList<>();

    @Override
    public Integer call() {
        CommandLine root = spec.parent().commandLine();
        CommandLine wanted = root;
        for (String verb : verbs) {
            CommandLine found = wanted.getSubcommands().get(verb);
            if (found == null) {
                throw Complaint.usage(
                        "There is no verb \"" + verb + "\".",
                        "Known: " + String.join(", ", wanted.getSubcommands().keySet()) + ".");
            }
            wanted = found;
        }
        wanted.usage(root.getOut());
        return 0;
    }
}
