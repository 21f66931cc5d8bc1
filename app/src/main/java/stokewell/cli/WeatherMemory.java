package stokewell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.WeatherFault;
import stokewell.file.WeatherFile;
import stokewell.weather.Site;
import stokewell.weather.Surface;
import stokewell.weather.Weather;

/** Weather files as they were last read, so that who asks for many nights reads them once. A file that has changed is read again. */
class WeatherMemory {

    /** Remembers nothing. */
    static final WeatherMemory NONE = new WeatherMemory() {
        @Override
        WeatherFile.Reading reading(Path file, Site home) {
            return read(file, home);
        }

        @Override
        Weather weather(WeatherFile.Reading reading, Site site, List<Surface> surfaces) {
            return Weather.of(reading.hourly(), site, surfaces);
        }
    };

    private static final int MOST = 6;

    private record FileKey(Path file, long size, long time, Site home) {}

    private record WeatherKey(WeatherFile.Reading reading, Site site, List<Surface> surfaces) {
        @Override
        public boolean equals(Object other) {
            return other instanceof WeatherKey key
                    && key.reading == reading
                    && key.site.equals(site)
                    && key.surfaces.equals(surfaces);
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(reading) + surfaces.hashCode();
        }
    }

    private static final class Few<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1;

        Few() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > MOST;
        }
    }

    private final Map<FileKey, WeatherFile.Reading> readings = new Few<>();
    private final Map<WeatherKey, Weather> weathers = new Few<>();

    /** What a file says. @param home where it stands, if it does not say itself */
    WeatherFile.Reading reading(Path file, Site home) {
        FileKey key;
        try {
            key = new FileKey(
                    file.toAbsolutePath(),
                    Files.size(file),
                    Files.getLastModifiedTime(file).toMillis(),
                    home);
        } catch (IOException e) {
            return read(file, home);
        }
        synchronized (readings) {
            return readings.computeIfAbsent(key, k -> read(file, home));
        }
    }

    /** Its weather on the outsides of a building. */
    Weather weather(WeatherFile.Reading reading, Site site, List<Surface> surfaces) {
        synchronized (weathers) {
            WeatherKey key = new WeatherKey(reading, site, List.copyOf(surfaces));
            return weathers.computeIfAbsent(key, k -> Weather.of(reading.hourly(), site, surfaces));
        }
    }

    private static WeatherFile.Reading read(Path file, Site home) {
        try {
            // what the file says of its place goes first: its sun belongs to its own clock
            return WeatherFile.read(file);
        } catch (WeatherFault placeless) {
            return WeatherFile.read(file, home);
        }
    }
}
