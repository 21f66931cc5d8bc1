package stokewell.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;

/** The folder of a person's rig files, and the examples. No path is ever made of what a request says: names are looked up. */
final class RigFolder {

    /** Larger than this is no rig file, bytes. */
    static final long LARGEST = 1 << 20;

    private static final int MOST_RIGS = 1000;

    private final Path folder;
    final Examples examples;

    RigFolder(Path folder, Examples examples) {
        this.folder = folder.toAbsolutePath().normalize();
        this.examples = examples;
    }

    Path folder() {
        return folder;
    }

    /** Ids of the person's rigs, in the order of the alphabet. */
    List<String> ids() {
        List<String> ids = new ArrayList<>();
        for (Path file : files()) ids.add(id(file));
        return ids;
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(folder)) return files;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path file : all) {
                if (isRig(file) && files.size() < MOST_RIGS) files.add(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        files.sort(null);
        return files;
    }

    /** A plain file of the folder itself: a link that leads out of it is none. */
    private boolean isRig(Path file) {
        String name = file.getFileName().toString();
        if (name.startsWith(".") || !(name.endsWith(".yaml") || name.endsWith(".yml"))) return false;
        return Files.isRegularFile(file) && inside(file, folder);
    }

    static boolean inside(Path file, Path folder) {
        try {
            return file.toRealPath().startsWith(folder.toRealPath());
        } catch (IOException e) {
            return false;
        }
    }

    static String id(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
    }

    /** The rig of that id. */
    Filed read(String id) {
        if (id.startsWith(Filed.EXAMPLE)) {
            String name = id.substring(Filed.EXAMPLE.length());
            if (!Examples.RIGS.contains(name)) throw Refusal.unknown("There is no such example.");
            return read(id, examples.folder().resolve(name + ".yaml"));
        }
        for (Path file : files()) if (id(file).equals(id)) return read(id, file);
        throw Refusal.unknown("There is no such rig in the folder.");
    }

    static Filed read(String id, Path file) {
        try {
            if (Files.size(file) > LARGEST) throw Refusal.request("The file is larger than 1 MiB.", "Make it smaller.");
            byte[] bytes = Files.readAllBytes(file);
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Filed(id, file, text, version(text));
        } catch (CharacterCodingException e) {
            throw Refusal.request("The file is not UTF-8 text.", "Save it as plain UTF-8 text.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Equal for equal texts, different for different ones (SHA-256, cut to 64 bits). */
    static String version(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
