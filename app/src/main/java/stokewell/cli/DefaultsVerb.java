package stokewell.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import stokewell.file.DefaultUsed;

/** Lists the defaults that a rig file leans on. */
@Command(name = "defaults", description = "List every default that stands in for an entry the rig file leaves out.")
final class DefaultsVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    RigChoice choice;

    @Override
    public Integer call() throws Exception {
        print(choice.read().defaultsUsed(), spec.commandLine().getOut());
        return 0;
    }

    static void print(List<DefaultUsed> defaults, PrintWriter out) {
        int key = 0;
        int text = 0;
        for (DefaultUsed d : defaults) {
            key = Math.max(key, d.key().length());
            text = Math.max(text, Math.min(24, shown(d).length()));
        }
        for (DefaultUsed d : defaults) out.printf("%-" + key + "s  %-" + text + "s  %s%n", d.key(), shown(d), d.says());
        out.println(defaults.size() + " defaults. Measure or ask after those that matter to you.");
    }

    private static String shown(DefaultUsed d) {
        return d.text().isEmpty() ? "none" : d.text();
    }
}
