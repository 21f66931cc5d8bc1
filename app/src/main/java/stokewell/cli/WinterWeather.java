package stokewell.cli;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import stokewell.file.WeatherFault;
import stokewell.file.WeatherFile;
import stokewell.fit.Series;
import stokewell.weather.Hourly;
import stokewell.weather.Site;

/** How cold it was outdoors in a period. */
final class WinterWeather {

    private WinterWeather() {}

    /**
     * The sensor outdoors, else the weather files one after the other.
     *
     * @param sensor null without one
     * @param offset standard time of the place less UTC, s
     */
    static Series outdoors(String which, Series sensor, List<Path> weather, long offset) {
        if (sensor != null) return sensor;
        Series found = joined("weather", files(weather, offset), Hourly::temperature);
        if (found == null) {
            throw Complaint.usage(
                    "No sensor was outdoors in the period " + which + ", and there is no weather of those days.",
                    "Give --weather FILE, or say with --sensor NAME=outdoor which sensor it is.");
        }
        return found;
    }

    /** The sun on the horizontal, W/m2, by the files that hold it; null where none does. */
    static Series sun(List<Path> weather, long offset) {
        List<Hourly> sunny =
                files(weather, offset).stream().filter(h -> h.sun().isPresent()).toList();
        return joined("sun", sunny, h -> h.sun().orElseThrow().global());
    }

    /** By their beginnings. */
    private static List<Hourly> files(List<Path> weather, long offset) {
        return weather.stream()
                .map(file -> hourly(file, offset))
                .sorted(Comparator.comparing(Hourly::start))
                .toList();
    }

    /** One after the other, each from where the one before ends; null where there is nothing. */
    private static Series joined(String name, List<Hourly> files, Function<Hourly, double[]> column) {
        double[] time = new double[files.stream().mapToInt(Hourly::hours).sum()];
        double[] value = new double[time.length];
        int n = 0;
        for (Hourly h : files) {
            double start = h.start().toEpochSecond(ZoneOffset.UTC);
            double[] hours = column.apply(h);
            for (int i = 0; i < hours.length; i++) {
                double t = start + 3600.0 * i;
                if (n > 0 && t <= time[n - 1]) continue;
                time[n] = t;
                value[n++] = hours[i];
            }
        }
        return n == 0 ? null : new Series(name, Arrays.copyOf(time, n), Arrays.copyOf(value, n));
    }

    private static Hourly hourly(Path file, long offset) {
        try {
            // only the clock of the place counts here
            Site clock = new Site(0, Math.toRadians(Math.max(-180, Math.min(180, offset / 240.0))), offset, 0);
            Hourly hourly =
                    WeatherFile.read(InFile.check("--weather", file), clock).hourly();
            if (hourly.isWrapped()) {
                throw Complaint.usage(
                        "--weather " + file + " is a typical year, not the weather of those days.",
                        "Give a record of the two winters.");
            }
            return hourly;
        } catch (WeatherFault fault) {
            throw Complaint.usage(fault.getMessage(), "Give hourly temperatures of those days.");
        }
    }
}
