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
import stokewell.rig.Rig;

/** The weather files that a rig of the folder may use: those in its weather folder, and the examples'. */
final class WeatherShelf {

    private static final String FOLDER = "weather";
    private static final String EXAMPLE = "example:";

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
    void mayRead(Rig rig, Path beside) {
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
