package stokewell.shop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import stokewell.file.ReadingsAsk;

/** A process that takes one file after the other in and says so, until it is killed. */
final class KilledImport {

    static final int ROWS = 600;
    private static final long START = 1_600_000_000L;
    private static final long STEP = 300;
    private static final Instant NOW = Instant.parse("2100-01-01T00:00:00Z");

    private KilledImport() {}

    /** Time of a row of a file: files follow each other, so that two share the day on which one ends. */
    static long time(int file, int row) {
        return START + STEP * ((long) file * ROWS + row);
    }

    /** What the sensor said then, C. */
    static double celsius(int sensor, long time) {
        return 20 * sensor + Math.floorMod(time / STEP * 7919, 100) / 10.0;
    }

    public static void main(String[] args) throws IOException {
        Path shopFile = Path.of(args[0]);
        Path log = Path.of(args[1]);
        try (Shop shop = Shop.open(shopFile)) {
            for (int file = Integer.parseInt(args[2]); ; file++) {
                Files.writeString(log, text(file), StandardCharsets.US_ASCII);
                Import.of(shop, log, ReadingsAsk.plain(ZoneId.of("UTC"), NOW), false);
                System.out.println(file);
                System.out.flush();
            }
        }
    }

    private static String text(int file) {
        StringBuilder b = new StringBuilder("time,one [C],two [C],three [C]\n");
        for (int row = 0; row < ROWS; row++) {
            long t = time(file, row);
            b.append(Instant.ofEpochSecond(t).atOffset(ZoneOffset.UTC).toLocalDateTime())
                    .append('Z');
            for (int s = 1; s <= 3; s++) b.append(',').append(celsius(s, t));
            b.append('\n');
        }
        return b.toString();
    }
}
