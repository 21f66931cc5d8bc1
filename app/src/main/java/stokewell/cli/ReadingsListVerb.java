package stokewell.cli;

import java.io.PrintWriter;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import stokewell.shop.Extent;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;

/** Which sensors the shop knows. */
@Command(name = "list", description = "List the sensors: what they measure, how many readings, from when to when.")
final class ReadingsListVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Mixin
    ShopChoice choice;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        try (Shop shop = choice.openExisting()) {
            ZoneId zone = ShopChoice.zone(shop);
            List<Sensor> sensors = shop.sensors();
            int wide = 6;
            for (Sensor s : sensors) wide = Math.max(wide, s.name().length());
            String form = "%-" + wide + "s  %-14s %-5s %9s  %-16s  %-16s  %s%n";
            out.printf(Locale.ROOT, form, "sensor", "measures", "unit", "readings", "first", "last", "place");
            for (Sensor s : sensors) {
                Extent e = shop.extent(s);
                out.printf(
                        Locale.ROOT,
                        form,
                        ReadingsVerbPage.clean(s.name()),
                        s.kind().word(),
                        s.unit().symbol(),
                        e.count(),
                        e.count() == 0 ? "-" : ShopChoice.wall(e.first(), zone),
                        e.count() == 0 ? "-" : ShopChoice.wall(e.last(), zone),
                        s.place().isEmpty() ? "-" : ReadingsVerbPage.clean(s.place()));
            }
            out.println("Times as in " + zone + ".");
        }
        return 0;
    }
}
