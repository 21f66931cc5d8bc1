package stokewell.cli;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
        List<Hourly> files = new ArrayList<>();
        for (Path file : weather) files.add(hourly(file, offset));
        files.sort((x, y) -> x.start().compareTo(y.start()));
        double[] time = new double[files.stream().mapToInt(Hourly::hours).sum()];
        double[] value = new double[time.length];
        int n = 0;
        for (Hourly h : files) {
            double start = h.start().toEpochSecond(ZoneOffset.UTC);
            double[] kelvin = h.temperature();
            for (int i = 0; i < kelvin.length; i++) {
                double t = start + 3600.0 * i;
                if (n > 0 && t <= time[n - 1]) continue;
                time[n] = t;
                value[n++] = kelvin[i];
            }
        }
        if (n == 0) {
            throw Complaint.usage(
                    "No sensor was outdoors in the period " + which + ", and there is no weather of those days.",
                    "Give --weather FILE, or say with --sensor NAME=outdoor which sensor it is.");
        }
        return new Series("weather", Arrays.copyOf(time, n), Arrays.copyOf(value, n));
    }

    /** The sun on the horizontal, W/m2, by the files that hold it; null where none does. */
    static Series sun(List<Path> weather, long offset) {
        List<Hourly> files = new ArrayList<>();
        for (Path file : weather) {
            Hourly h = hourly(file, offset);
            if (h.sun().isPresent()) files.add(h);
        }
        if (files.isEmpty()) return null;
        files.sort((x, y) -> x.start().compareTo(y.start()));
        double[] time = new double[files.stream().mapToInt(Hourly::hours).sum()];
        double[] value = new double[time.length];
        int n = 0;
        for (Hourly h : files) {
            double start = h.start().toEpochSecond(ZoneOffset.UTC);
            double[] global = h.sun().get().global();
            for (int i = 0; i < global.length; i++) {
                double t = start + 3600.0 * i;
                if (n > 0 && t <= time[n - 1]) continue;
                time[n] = t;
                value[n++] = global[i];
            }
        }
        return new Series("sun", Arrays.copyOf(time, n), Arrays.copyOf(value, n));
    }

    private static Hourly hourly(Path file, long offset) {
        try {
            // only the clock of the place counts here
            Site clock = new Site(0, Math.toRadians(Math.max(-180, Math.min(180, offset / 240.0))), offset, 0);
            Hourly hourly = WeatherFile.read(file, clock).hourly();
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
