package stokewell.web;

import java.nio.file.Path;

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
}
