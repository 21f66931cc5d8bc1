package stokewell.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import stokewell.file.ReadingsAsk;
import stokewell.shop.Import;
import stokewell.shop.Readings;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;

/**
 * How fast readings go into a shop and come back. Writes logs of so many readings, a row for each ("tall") and ten in a row
 * ("wide"), takes each into a new shop, the tall one twice, and reads weeks of one sensor back. Seeded.
 */
public final class ImportBench {

    private static final int SENSORS = 10;
    private static final int WEEKS = 200;

    private ImportBench() {}

    /** @param args how many million readings; ten if left out */
    public static void main(String[] args) throws IOException {
        int readings = (int) (1_000_000 * (args.length > 0 ? Double.parseDouble(args[0]) : 10));
        Path folder = Files.createTempDirectory("stokewell-bench");
        try {
            Path tall = folder.resolve("tall.csv");
            Path wide = folder.resolve("wide.csv");
            write(tall, wide, readings / SENSORS);
            importing("tall, first time", tall, folder.resolve("tall.stokewell"), readings);
            importing("tall, again", tall, folder.resolve("tall.stokewell"), readings);
            importing("wide, first time", wide, folder.resolve("wide.stokewell"), readings);
            reading(folder.resolve("tall.stokewell"));
        } finally {
            try (var inside = Files.walk(folder)) {
                for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) Files.delete(path);
            }
        }
    }

    private static void write(Path tall, Path wide, int times) throws IOException {
        Random random = new Random(5);
        // so that the last is a few days old, whatever the number
        long start = Instant.parse("2026-01-01T00:00:00Z").getEpochSecond() - 60L * times;
        try (BufferedWriter rows = Files.newBufferedWriter(tall, StandardCharsets.UTF_8);
                BufferedWriter table = Files.newBufferedWriter(wide, StandardCharsets.UTF_8)) {
            rows.write("time,sensor,value [C]\n");
            table.write("time");
            for (int s = 0; s < SENSORS; s++) table.write(",probe " + s + " [C]");
            table.write("\n");
            for (int i = 0; i < times; i++) {
                String time = Instant.ofEpochSecond(start + 60L * i).toString();
                table.write(time);
                for (int s = 0; s < SENSORS; s++) {
                    long tenths =
                            Math.round(10 * (20 + 5 * s + 3 * Math.sin(i / 700.0 + s) + 0.1 * random.nextGaussian()));
                    String value = tenths / 10 + "." + tenths % 10;
                    rows.write(time + ",probe " + s + "," + value + "\n");
                    table.write("," + value);
                }
                table.write("\n");
            }
        }
    }

    private static void importing(String what, Path log, Path file, int readings) throws IOException {
        long begin = System.nanoTime();
        try (Shop shop = Shop.open(file)) {
            Import done = Import.of(shop, log, ReadingsAsk.plain(ZoneId.of("UTC"), Instant.now()), false);
            double seconds = (System.nanoTime() - begin) / 1e9;
            long count = done.lines().stream().mapToLong(l -> l.series().size()).sum();
            if (count != readings / SENSORS * (long) SENSORS) throw new IllegalStateException(count + " readings");
            System.out.printf(
                    "%-18s %,12d readings  %6.1f s  %,10.0f readings/s  %s  shop %,d kB%n",
                    what,
                    count,
                    seconds,
                    count / seconds,
                    done.changed() ? "changed" : "nothing changed",
                    Files.size(file) / 1000);
        }
    }

    /** Weeks of one sensor, evenly over the log, each from a shop that was just opened. */
    private static void reading(Path file) {
        double[] millis = new double[WEEKS];
        double first = 0;
        for (int k = 0; k < WEEKS; k++) {
            try (Shop shop = Shop.open(file)) {
                Sensor sensor = shop.sensor("probe 3").orElseThrow();
                var extent = shop.extent(sensor);
                long from = extent.first() + (extent.last() - extent.first() - 7 * 86400) * k / WEEKS;
                long begin = System.nanoTime();
                Readings week = shop.readings(sensor, from, from + 7 * 86400);
                millis[k] = (System.nanoTime() - begin) / 1e6;
                if (week.size() != 7 * 1440) throw new IllegalStateException(week.size() + " readings in a week");
                if (k == 0) first = millis[0];
            }
        }
        Arrays.sort(millis);
        System.out.printf(
                "a week of one sensor, 10,080 readings: median %.1f ms, slowest of %d %.1f ms, first %.1f ms%n",
                millis[WEEKS / 2], WEEKS, millis[WEEKS - 1], first);
    }
}
