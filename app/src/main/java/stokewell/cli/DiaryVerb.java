package stokewell.cli;

import java.io.PrintWriter;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.file.Quantity;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.shop.Event;
import stokewell.shop.Load;
import stokewell.shop.Shop;

/** What the person did. */
@Command(
        name = "diary",
        description = "Write down what you did: loads of wood, ash, sweeping, water tests, changes, notes.",
        synopsisSubcommandLabel = "load|ash|sweep|water|change|note|list|strike",
        commandListHeading = "%nVerbs:%n")
final class DiaryVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return 0;
    }

    @Command(name = "load", description = "A load of wood that went on.", sortOptions = false)
    int load(
            @Mixin ShopChoice shopChoice,
            @Parameters(paramLabel = "MASS", description = "As fired: \"12 kg\", \"25 lb\".") String mass,
            @Option(names = "--at", paramLabel = "MOMENT", description = "15 Jan 18:00, 18:00. Default: now.")
                    String at,
            @Option(names = "--moisture", paramLabel = "SHARE", description = "Water over all the wood: \"18 %%\".")
                    String moisture,
            @Option(names = "--dry-basis", description = "The moisture is over dry wood, as a pin meter reads it.")
                    boolean dryBasis,
            @Option(names = "--wood", paramLabel = "SPECIES", defaultValue = "", description = "Such as birch.")
                    String wood,
            @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "In your words.")
                    String note) {
        double kg = Quantity.parse(mass, Dimension.MASS);
        double wet = moisture == null ? Double.NaN : Quantity.parse(moisture, Dimension.SHARE);
        if (dryBasis) wet = wet / (1 + wet);
        try (Shop shop = shopChoice.open()) {
            ZoneId zone = ShopChoice.zone(shop);
            Load load = new Load(0, when(at, zone), kg, wet, wood.strip(), note.strip());
            told(shop.add(load), line(load, zone, UnitSystem.SI));
        }
        return 0;
    }

    @Command(name = "ash", description = "Ash was taken out.")
    int ash(@Mixin ShopChoice shopChoice, @Mixin Words words) {
        return event(shopChoice, "ash", words);
    }

    @Command(name = "sweep", description = "Chimney, pipe or pickup was swept.")
    int sweep(@Mixin ShopChoice shopChoice, @Mixin Words words) {
        return event(shopChoice, "sweep", words);
    }

    @Command(name = "water", description = "Water was tested, treated or filled up.")
    int water(@Mixin ShopChoice shopChoice, @Mixin Words words) {
        return event(shopChoice, "water", words);
    }

    @Command(
            name = "change",
            description = "Something of the rig was changed; shop rig keeps the file of how it now is.")
    int change(@Mixin ShopChoice shopChoice, @Mixin Words words) {
        return event(shopChoice, "change", words);
    }

    @Command(name = "note", description = "Anything else.")
    int note(@Mixin ShopChoice shopChoice, @Mixin Words words) {
        return event(shopChoice, "note", words);
    }

    @Command(name = "list", description = "List the diary.", sortOptions = false)
    int list(
            @Mixin ShopChoice shopChoice,
            @Option(names = "--from", paramLabel = "MOMENT", description = "Default: the first.") String from,
            @Option(names = "--until", paramLabel = "MOMENT", description = "Default: the last.") String until,
            @Option(
                            names = "--units",
                            paramLabel = "si|us",
                            defaultValue = "si",
                            description = "Default: ${DEFAULT-VALUE}.")
                    UnitSystem units) {
        PrintWriter out = spec.commandLine().getOut();
        try (Shop shop = shopChoice.openExisting()) {
            ZoneId zone = ShopChoice.zone(shop);
            long first = from == null ? Long.MIN_VALUE : ShopChoice.moment("--from", from, zone);
            long last = until == null ? Long.MAX_VALUE : ShopChoice.moment("--until", until, zone);
            record Entry(long time, String text) {}
            List<Entry> all = new ArrayList<>();
            double mass = 0;
            List<Load> loads = shop.loads(first, last);
            for (Load l : loads) {
                all.add(new Entry(l.time(), line(l, zone, units)));
                mass += l.mass();
            }
            for (Event e : shop.events(first, last)) all.add(new Entry(e.time(), line(e, zone)));
            all.sort((a, b) -> Long.compare(a.time, b.time));
            for (Entry e : all) out.println(e.text);
            out.println(ReadingsVerbPage.count(loads.size(), "load") + ", "
                    + Quantity.write(mass, Dimension.MASS, units, 3) + " of wood.");
        }
        return 0;
    }

    @Command(name = "strike", description = "Strike an entry out that is wrong.")
    int strike(
            @Mixin ShopChoice shopChoice,
            @Parameters(paramLabel = "ENTRY", description = "As diary list tells it: L3 for a load, E3 for the others.")
                    String entry) {
        if (!entry.matches("[LlEe]\\d{1,9}")) {
            throw Complaint.usage("\"" + entry + "\" is no entry.", "Write L3 or E3, as diary list tells it.");
        }
        long number = Long.parseLong(entry.substring(1));
        try (Shop shop = shopChoice.openExisting()) {
            boolean load = Character.toLowerCase(entry.charAt(0)) == 'l';
            boolean struck = load ? shop.strikeLoad(number) : shop.strikeEvent(number);
            if (!struck)
                throw Complaint.usage("There is no entry " + entry + ".", "./stokewell diary list tells them.");
            spec.commandLine().getOut().println("struck out: " + entry.toUpperCase(Locale.ROOT));
        }
        return 0;
    }

    /** What all plain entries take. */
    static final class Words {

        @Parameters(paramLabel = "TEXT", arity = "0..*", description = "In your words.")
        List<String> text = new ArrayList<>();

        @Option(names = "--at", paramLabel = "MOMENT", description = "15 Jan 18:00, 18:00. Default: now.")
        String at;
    }

    private int event(ShopChoice shopChoice, String kind, Words words) {
        try (Shop shop = shopChoice.open()) {
            ZoneId zone = ShopChoice.zone(shop);
            String text = String.join(" ", words.text).strip();
            if (kind.equals("note") && text.isEmpty()) {
                throw Complaint.usage(
                        "A note needs words.", "Write ./stokewell diary note \"new gasket on the door\".");
            }
            Event event = new Event(0, when(words.at, zone), kind, text);
            told(shop.add(event), line(event, zone));
        }
        return 0;
    }

    private void told(boolean written, String line) {
        spec.commandLine().getOut().println((written ? "written: " : "stands there already: ") + line.strip());
    }

    private static long when(String at, ZoneId zone) {
        return at == null ? Instant.now().getEpochSecond() / 60 * 60 : ShopChoice.moment("--at", at, zone);
    }

    private static String line(Load l, ZoneId zone, UnitSystem units) {
        StringBuilder b = new StringBuilder();
        b.append(l.id() == 0 ? "" : String.format(Locale.ROOT, "%-5s ", "L" + l.id()));
        b.append(ShopChoice.wall(l.time(), zone)).append("  load    ");
        b.append(Quantity.write(l.mass(), Dimension.MASS, units, 3));
        if (!l.wood().isEmpty()) b.append(", ").append(ReadingsVerbPage.clean(l.wood()));
        if (!Double.isNaN(l.moisture())) {
            b.append(", ")
                    .append(Quantity.write(l.moisture(), Dimension.SHARE, units, 3))
                    .append(" water (wet basis)");
        }
        if (!l.note().isEmpty()) b.append("; ").append(ReadingsVerbPage.clean(l.note()));
        return b.toString();
    }

    private static String line(Event e, ZoneId zone) {
        String id = e.id() == 0 ? "" : String.format(Locale.ROOT, "%-5s ", "E" + e.id());
        return id
                + ShopChoice.wall(e.time(), zone)
                + String.format(Locale.ROOT, "  %-7s %s", e.kind(), ReadingsVerbPage.clean(e.note()));
    }
}
