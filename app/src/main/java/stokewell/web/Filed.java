package stokewell.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.temporal.ChronoUnit;

/**
 * A rig as its file holds it.
 *
 * @param id      of the rig in this server
 * @param path    of its file; its weather files lie beside it
 * @param text    all of the file
 * @param version made of the text: equal for equal texts
 */
record Filed(String id, Path path, String text, String version) {

    static final String EXAMPLE = "example:";

    boolean example() {
        return id.startsWith(EXAMPLE);
    }

    /** What messages call the file. */
    String fileName() {
        Path name = path.getFileName();
        return name == null ? id : name.toString();
    }

    /** When the file was last written, UTC; empty where that cannot be told. */
    String changed() {
        try {
            return Files.getLastModifiedTime(path)
                    .toInstant()
                    .truncatedTo(ChronoUnit.SECONDS)
                    .toString();
        } catch (IOException e) {
            return "";
        }
    }
}
