package stokewell.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** A file to write: whether it can be is found out before a run, and it is there whole or not at all. */
final class OutFile {

    /** Writes what the file shall hold. */
    interface Filling {
        void to(OutputStream out) throws IOException;
    }

    private OutFile() {}

    /** Complains where an option names a place that cannot hold a file. Null is none. */
    static void check(String option, Path file) {
        if (file == null) return;
        if (file.toString().equals("-")) {
            throw Complaint.usage(option + " -: here - is no file name.", "Name a file.");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (Files.isDirectory(file) || folder == null) {
            throw Complaint.usage(option + " " + file + " is a folder.", "Name a file in it.");
        }
        if (!Files.isDirectory(folder)) {
            throw Complaint.usage(option + " " + file + ": there is no folder " + folder + ".", "Make it first.");
        }
        if (!Files.isWritable(Files.exists(file) ? file : folder)) {
            throw Complaint.usage(option + " " + file + " may not be written.", "Name another place.");
        }
    }

    /** Writes a text. Nothing happens for null. */
    static void write(Path file, String text) throws IOException {
        write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Writes. Nothing happens for null. */
    static void write(Path file, Filling filling) throws IOException {
        if (file == null) return;
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                filling.to(out);
            }
            return;
        }
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path draft = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(draft))) {
                filling.to(out);
            }
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            Files.deleteIfExists(draft);
            throw Complaint.failed(file + " could not be written: " + e.getMessage() + ".", "The run itself was good.");
        }
    }
}
