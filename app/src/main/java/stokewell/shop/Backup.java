package stokewell.shop;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import org.sqlite.SQLiteConnection;

/** Copies of a shop, and the way back from them. Every copy is read through before it counts. */
public final class Backup {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);
    private static final String[] BESIDE = {"-wal", "-shm"};

    private Backup() {}

    /**
     * Came of a restore.
     *
     * @param tally what the shop now holds
     * @param kept  where the shop that stood there was put, if one did
     */
    public record Restored(Tally tally, Optional<Path> kept) {}

    /** Writes a copy, while others may go on writing into the shop. */
    public static Tally write(Shop shop, Path copy, boolean force) throws IOException {
        if (Files.exists(copy) && !force) {
            throw new ShopFault(copy + " is there already.", "Name another file, or say --force to replace it.");
        }
        Path draft = beside(copy, "new");
        try {
            shop.database().ask(c -> {
                int code = c.unwrap(SQLiteConnection.class)
                        .getDatabase()
                        .backup("main", draft.toAbsolutePath().toString(), null);
                if (code != 0) throw new SQLException("the copy ended with code " + code);
                return code;
            });
            Tally tally;
            try (Shop made = Shop.openExisting(draft)) {
                tally = Tally.of(made);
                made.database().change(c -> {
                    ContentSum.put(c);
                    return true;
                });
            }
            toDisk(draft);
            Files.move(draft, copy, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            folderToDisk(copy);
            return tally;
        } finally {
            remove(draft);
        }
    }

    /**
     * Puts a copy in the place of a shop. The shop that stands there is kept beside it.
     *
     * @param force whether one may stand there
     * @param now   for the name under which it is kept
     */
    public static Restored restore(Path copy, Path shop, boolean force, LocalDateTime now) throws IOException {
        if (!Files.isRegularFile(copy)) throw new ShopFault("There is no file " + copy + ".", "Name a backup.");
        Database.refuseOthers(copy);
        if (Files.exists(shop) && Files.isSameFile(copy, shop)) {
            throw new ShopFault(copy + " is the shop itself.", "Name a backup.");
        }
        if (Files.exists(shop) && !force) {
            throw new ShopFault(
                    shop + " is there already.", "Say --force: it is then kept beside, under another name.");
        }
        Path draft = beside(shop, "restoring");
        try {
            Files.copy(copy, draft, StandardCopyOption.REPLACE_EXISTING);
            for (String end : BESIDE) {
                Path log = Path.of(copy + end);
                if (Files.exists(log)) Files.copy(log, Path.of(draft + end), StandardCopyOption.REPLACE_EXISTING);
            }
            boolean right = ContentSum.isRight(draft);
            Tally tally;
            try (Shop made = Shop.openExisting(draft)) {
                tally = Tally.of(made);
                if (!right) {
                    throw new ShopFault(copy + " is damaged: a row is not what was copied.", "Take another backup.");
                }
                made.database().change(c -> {
                    ContentSum.remove(c);
                    return true;
                });
            }
            toDisk(draft);
            Optional<Path> kept = Files.exists(shop) ? Optional.of(putAside(shop, now)) : Optional.empty();
            Files.move(draft, shop, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            folderToDisk(shop);
            return new Restored(tally, kept);
        } finally {
            remove(draft);
        }
    }

    /** Gives the shop a second name, so that there is no moment without one under the first. */
    private static Path putAside(Path shop, LocalDateTime now) throws IOException {
        boolean sound = true;
        try (Shop old = Shop.open(shop)) {
            old.database().ask(c -> Database.number(c, "PRAGMA wal_checkpoint(TRUNCATE)"));
        } catch (ShopFault damaged) {
            sound = false;
        }
        Path log = Path.of(shop + "-wal");
        if (sound && Files.exists(log)) {
            throw new ShopFault(shop + " is open in another run.", "Close it first; nothing was changed.");
        }
        Path kept = Path.of(shop + ".before-" + STAMP.format(now));
        if (Files.exists(kept)) throw new FileAlreadyExistsException(kept.toString());
        for (String end : BESIDE) {
            if (Files.exists(Path.of(shop + end))) Files.move(Path.of(shop + end), Path.of(kept + end));
        }
        try {
            Files.createLink(kept, shop);
        } catch (UnsupportedOperationException | IOException e) {
            Files.move(shop, kept);
        }
        return kept;
    }

    private static Path beside(Path file, String end) {
        Path whole = file.toAbsolutePath();
        return whole.resolveSibling(
                whole.getFileName() + "." + ProcessHandle.current().pid() + "." + end);
    }

    private static void remove(Path draft) throws IOException {
        Files.deleteIfExists(draft);
        for (String end : BESIDE) Files.deleteIfExists(Path.of(draft + end));
    }

    private static void toDisk(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    private static void folderToDisk(Path file) {
        try (FileChannel channel = FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // some systems do not let a folder be opened; the name is then written when they please
        }
    }
}
