package stokewell.web;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

/** A file put down whole or not at all: whoever reads it, and whenever the power goes, finds the old one or the new one. */
final class DiskFile {

    private static final String BEGUN = ".stokewell-";

    private DiskFile() {}

    /** Writes beside it, makes sure that it is on the disk, and puts it in the old one's place. */
    static void write(Path file, byte[] bytes) throws IOException {
        Path place = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path begun = place.resolveSibling(BEGUN + UUID.randomUUID() + ".tmp");
        try {
            try (FileChannel out = FileChannel.open(begun, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) out.write(rest);
                out.force(true);
            }
            if (Files.exists(place)) keepPermissions(place, begun);
            Files.move(begun, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(begun);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (view != null)
            Files.setPosixFilePermissions(to, view.readAttributes().permissions());
    }
}
