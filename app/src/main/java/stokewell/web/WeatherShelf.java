package stokewell.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import stokewell.file.WeatherFault;
import stokewell.file.WeatherFile;
import stokewell.rig.Rig;
import stokewell.weather.Site;

/** The weather files that a rig of the folder may use: those in its weather folder, and the examples'. */
final class WeatherShelf {

    /** No year of hours is larger, bytes. */
    static final int MOST = 8 << 20;

    private static final int MOST_FILES = 200;
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 _.-]{0,80}\\.(csv|txt)");
    private static final String FOLDER = "weather";
    private static final String EXAMPLE = "example:";

    /** A place for the trial reading of a file that names none: only whether it can be read counts. */
    private static final Site NOWHERE = new Site(0.78, 0, 0, 100);

    private final RigFolder folder;

    WeatherShelf(RigFolder folder) {
        this.folder = folder;
    }

    Path own() {
        return folder.folder().resolve(FOLDER);
    }

    private List<Path> files() {
        List<Path> files = new ArrayList<>();
        if (!Files.isDirectory(own())) return files;
        try (DirectoryStream<Path> all = Files.newDirectoryStream(own())) {
            for (Path file : all) {
                boolean hidden = file.getFileName().toString().startsWith(".");
                if (!hidden && Files.isRegularFile(file) && RigFolder.inside(file, folder.folder())) files.add(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        files.sort(null);
        return files;
    }

    /** The file that words name, or null where they name none. */
    Path file(String said) {
        if (said.startsWith(EXAMPLE)) {
            String name = said.substring(EXAMPLE.length());
            if (!Examples.WEATHER.contains(name)) {
                throw Refusal.weather("There is no such example of weather.", "GET /api/weather lists them.");
            }
            return folder.examples.folder().resolve(FOLDER).resolve(name);
        }
        for (Path file : files()) if (said.equals(FOLDER + "/" + file.getFileName())) return file;
        return null;
    }

    /** Refuses a rig that names a weather file outside the folder that it lies in. */
    static void mayRead(Rig rig, Path beside) {
        String named = rig.weather().file();
        if (named.isEmpty()) return;
        Path folder = beside.toAbsolutePath().getParent();
        Path file;
        try {
            file = beside.toAbsolutePath().resolveSibling(named);
        } catch (java.nio.file.InvalidPathException e) {
            throw Refusal.weather("weather.file is no name of a file.", "Mend the name.");
        }
        if (Files.exists(file) && !RigFolder.inside(file, folder)) {
            throw Refusal.weather(
                    "The weather file lies outside the rig's folder.", "Put it into " + FOLDER + " beside the rig.");
        }
    }

    /** Keeps a file that can be read; one of the same name is not written over. */
    String keep(String name, byte[] bytes) {
        if (!NAME.matcher(name).matches()) {
            throw Refusal.request(
                    "That is no name for a weather file.", "Letters, digits, - and _, then .csv or .txt.");
        }
        if (files().size() >= MOST_FILES) throw Refusal.request("The folder is full.", "Take old weather files out.");
        Path file = own().resolve(name);
        if (Files.exists(file)) throw Refusal.conflict("There is a weather file of that name.", "");
        try {
            Path trial = Files.createTempFile("stokewell-weather", name.substring(name.lastIndexOf('.')));
            try {
                Files.write(trial, bytes);
                WeatherFile.read(trial, NOWHERE);
            } catch (WeatherFault e) {
                String row = e.row > 0 ? "Row " + e.row + ": " : "";
                throw Refusal.weather(row + e.what + ".", e.remedy + ".");
            } finally {
                Files.deleteIfExists(trial);
            }
            Files.createDirectories(own());
            DiskFile.write(file, bytes);
            return FOLDER + "/" + name;
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }

    /** All of them, for the page. */
    List<Map<String, Object>> list() {
        List<Map<String, Object>> all = new ArrayList<>();
        for (Path file : files()) all.add(line(FOLDER + "/" + file.getFileName(), file, false));
        Path examples = folder.examples.folder().resolve(FOLDER);
        for (String name : Examples.WEATHER) all.add(line(EXAMPLE + name, examples.resolve(name), true));
        return all;
    }

    private static Map<String, Object> line(String name, Path file, boolean example) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("file", name);
        try {
            one.put("bytes", Files.size(file));
        } catch (IOException e) {
            one.put("bytes", null);
        }
        one.put("example", example);
        return one;
    }
}
