package stokewell.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import stokewell.file.RigSchema;

/** Prints the JSON Schema of rig files. */
@Command(name = "schema", description = "Print the JSON Schema of rig files: editors complete and check by it.")
final class SchemaVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(RigSchema.json());
        return 0;
    }
}
