package stokewell.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.shop.Backup;
import stokewell.shop.Export;
import stokewell.shop.Intake;
import stokewell.shop.RigVersion;
import stokewell.shop.Shop;
import stokewell.shop.Tally;

/** The shop's file as a whole. */
@Command(
        name = "shop",
        description = "The shop's file as a whole: copy it, look it through, take everything out or in, keep rigs.",
        synopsisSubcommandLabel = "backup|restore|look|export|import|rig|zone",
        commandListHeading = "%nVerbs:%n")
final class ShopVerb implements Callable<Integer> {

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().usage(spec.commandLine().getOut());
        return 0;
    }

    @Command(name = "backup", description = "Write a copy of the shop and read it through.")
    int backup(
            @Mixin ShopChoice choice,
            @Parameters(paramLabel = "FILE", description = "Where to.") Path copy,
            @Option(names = "--force", description = "Replace the file if it is there.") boolean force)
            throws IOException {
        OutFile.check("backup", copy);
        try (Shop shop = choice.openExisting()) {
            say(copy + ": " + Backup.write(shop, copy, force) + ".");
        }
        return 0;
    }

    @Command(name = "restore", description = "Put a copy in the shop's place, once it was read through.")
    int restore(
            @Mixin ShopChoice choice,
            @Parameters(paramLabel = "FILE", description = "A copy that shop backup wrote.") Path copy,
            @Option(names = "--force", description = "Even if there is a shop; it is kept beside under another name.")
                    boolean force)
            throws IOException {
        Backup.Restored done = Backup.restore(copy, choice.file, force, LocalDateTime.now(ZoneId.systemDefault()));
        say(choice.file + ": " + done.tally() + ".");
        done.kept().ifPresent(kept -> say("What stood there is now " + kept + "."));
        return 0;
    }

    @Command(name = "look", description = "Read all of the shop through: is every reading still what was written?")
    int look(@Mixin ShopChoice choice) {
        try (Shop shop = choice.openExisting()) {
            say(choice.file + ": " + Tally.of(shop) + ". All sound.");
        }
        return 0;
    }

    @Command(name = "export", description = "Write everything as tables and rig files into a new folder.")
    int export(@Mixin ShopChoice choice, @Parameters(paramLabel = "FOLDER", description = "Where to.") Path folder)
            throws IOException {
        try (Shop shop = choice.openExisting()) {
            Export.write(shop, folder);
            say(folder + ": " + Tally.of(shop) + ".");
        }
        return 0;
    }

    @Command(name = "import", description = "Take a folder in that shop export wrote. Twice does no harm.")
    int intake(@Mixin ShopChoice choice, @Parameters(paramLabel = "FOLDER", description = "Where from.") Path folder)
            throws IOException {
        boolean there = Files.exists(choice.file);
        try (Shop shop = choice.open()) {
            Intake.of(shop, folder);
            say(choice.file + ": " + Tally.of(shop) + (there ? "." : ". It is new."));
        }
        return 0;
    }

    @Command(name = "rig", description = "Keep a rig file as the version that holds from a day on, or list those kept.")
    int rig(
            @Mixin ShopChoice choice,
            @Parameters(paramLabel = "RIG", arity = "0..1", description = "The rig file; the list if left out.")
                    Path file,
            @Option(names = "--from", paramLabel = "MOMENT", description = "From when it is so. Default: now.")
                    String from)
            throws IOException, RigFileFault {
        if (file == null) return rigs(choice);
        String name = RigFile.read(InFile.check("", file), List.of()).rig().name();
        String text = Files.readString(file, StandardCharsets.UTF_8);
        try (Shop shop = choice.open()) {
            ZoneId zone = ShopChoice.zone(shop);
            long since =
                    from == null ? Instant.now().getEpochSecond() / 60 * 60 : ShopChoice.moment("--from", from, zone);
            Optional<RigVersion> same = shop.rigs().stream()
                    .filter(r -> r.text().equals(text) && (from == null || r.since() == since))
                    .findFirst();
            RigVersion kept = same.orElseGet(() -> shop.keepRig(since, name, text));
            say(ReadingsVerbPage.clean(name) + ", as from " + ShopChoice.wall(kept.since(), zone)
                    + (same.isPresent() ? ": stands there already." : ": kept."));
        }
        return 0;
    }

    private int rigs(ShopChoice choice) {
        try (Shop shop = choice.openExisting()) {
            ZoneId zone = ShopChoice.zone(shop);
            for (RigVersion r : shop.rigs()) {
                say(ShopChoice.wall(r.since(), zone) + "  " + ReadingsVerbPage.clean(r.name()));
            }
            if (shop.rigs().isEmpty()) say("No rig is kept yet: ./stokewell shop rig FILE.");
        }
        return 0;
    }

    @Command(name = "zone", description = "Tell the shop's time zone, or set it.")
    int zone(
            @Mixin ShopChoice choice,
            @Parameters(paramLabel = "ZONE", arity = "0..1", description = "Such as Europe/Oslo or +01:00.")
                    String zone) {
        try (Shop shop = choice.open()) {
            if (zone != null) shop.setZone(ShopChoice.zone(zone));
            say(ShopChoice.zone(shop).getId());
        }
        return 0;
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
    }
}
