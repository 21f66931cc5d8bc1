package stokewell.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.Keys;
import stokewell.file.RigFile;
import stokewell.file.UnitSystem;
import stokewell.rig.Rig;

/** Prints the table of all keys. */
@Command(
        name = "keys",
        description = "Print every key of a rig file: what it is, its range, and what it is if left out.")
final class KeysVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Option(names = "--units", paramLabel = "si|us", description = "Units of the ranges.", defaultValue = "si")
    UnitSystem units;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(Keys.describe(Rig.class, units, RigFile.LEAVES));
        return 0;
    }
}
