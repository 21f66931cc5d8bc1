package stokewell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file to read: a name that leads to none is told before anything is done, in the same words everywhere. */
final class InFile {

    private InFile() {}

    /** The file, where it is one that can be read. @param called what names it: an option, or empty */
    static Path check(String called, Path file) {
        String name = called.isEmpty() ? file.toString() : called + " " + file;
        if (Files.isDirectory(file)) throw Complaint.usage(name + " is a folder.", "Name a file in it.");
        if (!Files.exists(file)) throw Complaint.usage(name + ": there is no such file.", "Mend the name.");
        if (!Files.isReadable(file)) throw Complaint.usage(name + " may not be read.", "Mend its rights.");
        if (empty(file)) throw Complaint.usage(name + " is empty.", "Name another file.");
        return file;
    }

    /** What is no plain file, such as a pipe, has no size to ask for. */
    private static boolean empty(Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
