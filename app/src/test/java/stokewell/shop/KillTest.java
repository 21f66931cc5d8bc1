package stokewell.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A process that imports is killed at any moment (SIGKILL), again and again on the same shop. What it had acknowledged is
 * there to the last reading; the file it was at is there whole or not at all.
 */
class KillTest {

    /** {@code -Dkills=400} for a long run. */
    private static final int KILLS = Integer.getInteger("kills", 12);

    @TempDir
    Path folder;

    private int next;
    private int acknowledged;
    private int whole;
    private int absent;

    @Test
    void noAcknowledgedReadingIsLostWheneverItIsKilled() throws Exception {
        Random random = new Random(20260120);
        Path shop = folder.resolve("shop.stokewell");
        for (int kill = 0; kill < KILLS; kill++) {
            int acks = killed(shop, random.nextInt(120_000));
            assertThat(acks).isPositive();
            acknowledged += acks;
            check(shop, next - acks, next);
        }
        try (Shop open = Shop.openExisting(shop)) {
            Tally tally = Tally.of(open);
            assertThat(tally.readings()).isEqualTo((long) next * KilledImport.ROWS * 3);
        }
        System.out.printf(
                "%d kills: %d files acknowledged, none lost; the file at hand was there %d times, not there %d times%n",
                KILLS, acknowledged, whole, absent);
    }

    /** Lets it import, kills it some time after its first acknowledgement, and returns how many it gave. */
    private int killed(Path shop, int micros) throws IOException, InterruptedException {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        path,
                        KilledImport.class.getName(),
                        shop.toString(),
                        folder.resolve("log.csv").toString(),
                        Integer.toString(next)))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int acks = 0;
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII))) {
            String first = out.readLine();
            if (first != null) acks++;
            TimeUnit.MICROSECONDS.sleep(micros);
            // the process itself would close its stream, and with it what it had said
            process.toHandle().destroyForcibly();
            while (out.readLine() != null) acks++;
        }
        process.waitFor();
        next += acks;
        return acks;
    }

    private void check(Path file, int from, int to) {
        try (Shop shop = Shop.openExisting(file)) {
            boolean there = false;
            for (int s = 1; s <= 3; s++) {
                Sensor sensor =
                        shop.sensor(s == 1 ? "one" : s == 2 ? "two" : "three").orElseThrow();
                for (int k = from; k < to; k++)
                    assertThat(have(shop, sensor, s, k)).isEqualTo(KilledImport.ROWS);
                int more = have(shop, sensor, s, to);
                if (s == 1) there = more > 0;
                assertThat(more).isEqualTo(there ? KilledImport.ROWS : 0);
                assertThat(have(shop, sensor, s, to + 1)).isZero();
            }
            if (there) {
                whole++;
                next++;
            } else {
                absent++;
            }
        }
    }

    /** How many readings of a file there are, each the right one. */
    private static int have(Shop shop, Sensor sensor, int s, int file) {
        Readings all = shop.readings(sensor, KilledImport.time(file, 0), KilledImport.time(file + 1, 0));
        for (int i = 0; i < all.size(); i++) {
            double right = sensor.unit().toSi(KilledImport.celsius(s, all.time(i)));
            if (all.value(i) != right) throw new AssertionError("wrong value at " + all.time(i));
        }
        return all.size();
    }
}
