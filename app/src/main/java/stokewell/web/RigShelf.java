package stokewell.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import stokewell.file.RigFile;
import stokewell.file.RigFileFault;
import stokewell.file.RigPart;
import stokewell.file.RigText;

/** Changes rig files: one at a time, only by who has seen what stands there now, and with the old text kept. */
final class RigShelf {

    /** The text of an edit of one entry. */
    interface Edit {
        String in(String text) throws RigFileFault;
    }

    private static final String HIDDEN = ".stokewell";

    private final RigFolder folder;
    private final Versions versions;
    private final Clock clock;

    RigShelf(RigFolder folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
        versions = new Versions(folder.folder().resolve(HIDDEN));
    }

    /** One edit as a request tells it. */
    static Edit edit(Body body) {
        String set = body.text("set");
        String remove = body.text("remove");
        String add = body.text("add");
        int kinds = (set == null ? 0 : 1) + (remove == null ? 0 : 1) + (add == null ? 0 : 1);
        if (kinds != 1) throw Refusal.request("An edit is one of set, remove and add.", "Write {set: KEY, value: …}.");
        if (remove != null) return text -> RigPart.remove(text, remove);
        String value = body.need("value");
        return set != null ? text -> RigText.set(text, set, value) : text -> RigPart.add(text, add, value);
    }

    /** All edits or none. What they come to must be a sound rig, unless it was none before. */
    Filed edit(String id, String seen, List<Edit> edits) {
        return change(id, seen, before -> {
            String text = before.text();
            for (Edit edit : edits) text = edit.in(text);
            boolean sound =
                    RigFile.reading(before.fileName(), before.text()).faults().isEmpty();
            if (sound) RigFile.parse(before.fileName(), text, List.of());
            return text;
        });
    }

    /** The whole text. */
    Filed put(String id, String seen, String text) {
        return change(id, seen, before -> text);
    }

    /** What it was. */
    Filed restore(String id, String seen, int number) {
        return change(id, seen, before -> version(before, number).text());
    }

    List<Versions.Kept> versions(Filed filed) {
        return versions.of(filed);
    }

    Versions.Kept version(Filed filed, int number) {
        for (Versions.Kept kept : versions.of(filed)) if (kept.number() == number) return kept;
        throw Refusal.unknown("There is no such version.");
    }

    private interface Change {
        String of(Filed before) throws RigFileFault;
    }

    private synchronized Filed change(String id, String seen, Change change) {
        Filed found = folder.read(id);
        if (found.example()) {
            throw Refusal.request("An example is not changed.", "Make a rig of it first: POST /api/rigs {example}.");
        }
        try (FileChannel gate = lock()) {
            gate.lock();
            Filed before = RigFolder.read(id, found.path());
            if (!before.version().equals(seen)) {
                throw Refusal.conflict(
                        before.fileName() + " has been changed since you looked at it, by another page or an editor.",
                        before.version());
            }
            String text = change.of(before);
            if (text.length() > RigFolder.LARGEST) throw Refusal.request("The text is too large.", "Make it smaller.");
            Filed after = new Filed(id, before.path(), text, RigFolder.version(text));
            versions.keep(before, clock.instant());
            versions.keep(after, clock.instant());
            if (!text.equals(before.text())) DiskFile.write(before.path(), Body.utf8(text));
            return after;
        } catch (RigFileFault e) {
            throw Refusal.rig(e.faults());
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }

    /** Two programs on one folder write one after the other. */
    private FileChannel lock() throws IOException {
        Path hidden = folder.folder().resolve(HIDDEN);
        Files.createDirectories(hidden);
        return FileChannel.open(hidden.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    /** A new rig. @param name to go by; null for what the text says */
    synchronized Filed create(String text, String name) {
        try {
            String named = name == null ? text : RigText.set(text, "name", quoted(name));
            RigFile.Reading read = RigFile.reading("text", named);
            String called = read.rig() == null ? "rig" : read.rig().name();
            Files.createDirectories(folder.folder());
            try (FileChannel gate = lock()) {
                gate.lock();
                Path file = free(slug(called));
                Filed made = new Filed(RigFolder.id(file), file, named, RigFolder.version(named));
                versions.keep(made, clock.instant());
                DiskFile.write(file, Body.utf8(named));
                return made;
            }
        } catch (RigFileFault e) {
            throw Refusal.rig(e.faults());
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }

    private static String quoted(String name) {
        return '"' + name.replaceAll("[\\p{Cntrl}\"\\\\]", " ").strip() + '"';
    }

    private Path free(String slug) {
        for (int i = 1; ; i++) {
            Path file = folder.folder().resolve(slug + (i == 1 ? "" : "-" + i) + ".yaml");
            if (!Files.exists(file)) return file;
        }
    }

    /** A name that every file system takes. */
    static String slug(String name) {
        String plain = java.text.Normalizer.normalize(name, java.text.Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        if (plain.isEmpty()) return "rig";
        return plain.length() > 60 ? plain.substring(0, 60).replaceAll("-$", "") : plain;
    }

    /** Brings a weather file that an example names along with it. */
    void bring(Path from, String named) {
        if (named.isEmpty()) return;
        Path to = folder.folder().resolve(named);
        try {
            if (Files.exists(to)) return;
            Files.createDirectories(to.getParent());
            DiskFile.write(to, Files.readAllBytes(from.resolveSibling(named)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
