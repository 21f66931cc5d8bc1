package stokewell.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the files of a folder were: plain copies in the hidden folder {@code .stokewell/versions/FILE/}, named by number, time
 * and version, so that they can be read without this program and go where the folder goes.
 */
final class Versions {

    /** So many are kept of a file; the oldest go first. */
    private static final int MOST = 1000;

    private static final Pattern NAME = Pattern.compile("(\\d{4,9})-(\\d{8}T\\d{6}Z)-([0-9a-f]{16})\\.yaml");
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

    /** One of them. */
    record Kept(int number, Instant time, String version, Path path) {

        String text() {
            try {
                return Files.readString(path, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private final Path folder;

    /** @param hidden the folder {@code .stokewell} beside the rigs */
    Versions(Path hidden) {
        folder = hidden.resolve("versions");
    }

    /** All of a file, oldest first. */
    List<Kept> of(Filed filed) {
        List<Kept> all = new ArrayList<>();
        Path own = folder.resolve(filed.fileName());
        if (!Files.isDirectory(own)) return all;
        try (DirectoryStream<Path> files = Files.newDirectoryStream(own)) {
            for (Path file : files) {
                Matcher m = NAME.matcher(file.getFileName().toString());
                if (!m.matches()) continue;
                Instant time = TIME.parse(m.group(2), Instant::from);
                all.add(new Kept(Integer.parseInt(m.group(1)), time, m.group(3), file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        all.sort(Comparator.comparingInt(Kept::number));
        return all;
    }

    /** Keeps a text, unless it is the last that was kept. */
    void keep(Filed filed, Instant now) throws IOException {
        List<Kept> all = of(filed);
        if (!all.isEmpty() && all.get(all.size() - 1).version().equals(filed.version())) return;
        Path own = folder.resolve(filed.fileName());
        Files.createDirectories(own);
        int number = all.isEmpty() ? 1 : all.get(all.size() - 1).number() + 1;
        String name = String.format("%04d-%s-%s.yaml", number, TIME.format(now), filed.version());
        DiskFile.write(own.resolve(name), Body.utf8(filed.text()));
        for (int i = 0; i < all.size() - MOST + 1; i++)
            Files.deleteIfExists(all.get(i).path());
    }
}
