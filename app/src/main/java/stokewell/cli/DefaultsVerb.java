package stokewell.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import stokewell.file.DefaultUsed;
import stokewell.file.UnitSystem;

/** Lists the defaults that a rig file leans on. */
@Command(name = "defaults", description = "List every default that stands in for an entry the rig file leaves out.")
final class DefaultsVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Option(names = "--units", paramLabel = "si|us", defaultValue = "si", description = "Default: ${DEFAULT-VALUE}.")
    UnitSystem units;

    @Override
    public Integer call() throws Exception {
        print(choice.read().defaultsUsed(), units, spec.commandLine().getOut());
        return 0;
    }

    static void print(List<DefaultUsed> defaults, UnitSystem units, PrintWriter out) {
        int key = 0;
        int text = 0;
        for (DefaultUsed d : defaults) {
            key = Math.max(key, d.key().length());
            text = Math.max(text, Math.min(24, shown(d, units).length()));
        }
        for (DefaultUsed d : defaults)
            out.printf("%-" + key + "s  %-" + text + "s  %s%n", d.key(), shown(d, units), d.says());
        out.println(defaults.size() + " defaults. Measure or ask after those that matter to you.");
    }

    private static String shown(DefaultUsed d, UnitSystem units) {
        return d.text().isEmpty() ? "none" : d.in(units);
    }
}
