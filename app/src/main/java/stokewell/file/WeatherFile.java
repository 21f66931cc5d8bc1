package stokewell.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stokewell.weather.Hourly;
import stokewell.weather.Site;

/**
 * Reads hourly weather files: TMY3, NSRDB (PSM3), PVGIS, ISD-Lite and plain CSV with named columns. The format is found
 * from the content.
 *
 * <p>Every value that was missing, out of range, repeated or filled in is told in the notes. Gaps of up to six hours
 * are filled by straight lines; a longer one is a fault, except in radiation, which is then modelled, and in moisture
 * and sky infrared, which are then left out.
 */
public final class WeatherFile {

    private static final long LARGEST = 64L << 20;

    /**
     * What a file held.
     *
     * @param hourly complete hours in local standard time; a typical year is {@link Hourly#wrapped() wrapped}
     * @param site empty if neither the file nor the caller says where it is
     * @param source the format and the file's name
     * @param notes everything that was not taken as written
     */
    public record Reading(Hourly hourly, Optional<Site> site, String source, List<Note> notes) {}

    /**
     * A remark on a file.
     *
     * @param row line of the file from 1, or 0 for the whole file
     */
    public record Note(int row, String what) {}

    private WeatherFile() {}

    /**
     * @throws WeatherFault if the file cannot be used; nothing else is thrown for any content
     */
    public static Reading read(Path file) {
        return read(file, Optional.empty());
    }

    /**
     * @param site where the weather is; goes before what the file says, and is needed where times are UTC and the file
     *     does not say where it is
     */
    public static Reading read(Path file, Site site) {
        return read(file, Optional.of(site));
    }

    private static Reading read(Path file, Optional<Site> site) {
        String name = String.valueOf(file.getFileName());
        List<String> lines = text(file, name).lines().toList();
        var notes = new WeatherNotes();
        WeatherTable table = WeatherIsdLite.looksLike(lines)
                ? WeatherIsdLite.read(lines, notes)
                : WeatherCsv.read(name, lines, notes);
        return new WeatherRepair(name, table, site, notes).reading();
    }

    private static String text(Path file, String name) {
        byte[] bytes;
        try {
            long size = Files.size(file);
            if (size > LARGEST) {
                throw new WeatherFault(name, 0, "the file is " + (size >> 20) + " MB", "An hourly year is about 1 MB");
            }
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw new WeatherFault(
                    name,
                    0,
                    "the file cannot be read (" + e.getClass().getSimpleName() + ")",
                    "Check its path and rights");
        }
        String text = decoded(bytes);
        if (text.indexOf('\0') >= 0) {
            throw new WeatherFault(name, 0, "this is not a text file", "Save it as CSV text, UTF-8");
        }
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** UTF-8, or Latin-1 where it is not: older files write the degree sign so. */
    private static String decoded(byte[] bytes) {
        if (ascii(bytes)) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    private static boolean ascii(byte[] bytes) {
        for (byte b : bytes) {
            if (b < 0) {
                return false;
            }
        }
        return true;
    }
}
