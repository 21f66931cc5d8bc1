package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to a log on its way, the reader gives readings in order or says what is wrong; seeded. */
class ReadingsFuzzTest {

    /** Times this for a longer run: {@code -Dfuzz=50}. */
    private static final int ROUNDS = 150 * Integer.getInteger("fuzz", 1);

    private static final String SPICE = "0123456789.,;:-+\"'\n\r\t eENaZ/\u00b0%()[]|\u00e9";
    private static final ReadingsAsk ASK =
            ReadingsAsk.plain(ZoneId.of("Europe/Oslo"), Instant.parse("2026-06-01T00:00:00Z"));

    @TempDir
    Path folder;

    @Test
    void damagedLogsAreReadOrRefusedInWords() throws IOException {
        Random random = new Random(5);
        int read = 0;
        int refused = 0;
        for (String log : logs()) {
            for (byte[] whole : List.of(log.getBytes(StandardCharsets.UTF_8), log.getBytes(StandardCharsets.UTF_16))) {
                assertThat(survives(whole)).isTrue();
                for (int round = 0; round < ROUNDS; round++) {
                    byte[] damaged = damaged(whole, random);
                    if (random.nextInt(4) == 0) damaged = damaged(damaged, random);
                    if (survives(damaged)) read++;
                    else refused++;
                }
            }
        }
        // both ends of the tale must have been told for the test to mean anything
        assertThat(read).isGreaterThan(100);
        assertThat(refused).isGreaterThan(100);
    }

    private static List<String> logs() {
        StringBuilder wide = new StringBuilder("Logger 7\n\ntime;room (\u00b0C);flue (\u00b0C);pump\n");
        StringBuilder tall = new StringBuilder("sensor,when,value [F]\n");
        StringBuilder apart = new StringBuilder("Date\tTime\tRH %\tT1 [C]\r\n");
        for (int i = 0; i < 60; i++) {
            wide.append(String.format(
                    "%02d.11.2024 %02d:30;%d,%d;%d;%s\n",
                    26 + i / 24, i % 24, 18 + i % 3, i % 10, 200 + i, i % 2 == 0 ? "on" : "off"));
            tall.append(String.format("probe %d,2024-01-%02dT10:%02d:00Z,%d.5\n", i % 3, 1 + i / 20, i % 60, 60 + i));
            apart.append(String.format(
                    "1/%d/2024\t%d:05:00 %s\t%d\t%d.25\r\n",
                    1 + i / 12, 1 + (i + 11) % 12, i % 2 == 0 ? "AM" : "PM", 40 + i % 20, i % 25));
        }
        return List.of(wide.toString(), tall.toString(), apart.toString());
    }

    private boolean survives(byte[] content) throws IOException {
        Path file = Files.write(folder.resolve("damaged.csv"), content);
        return assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            try {
                ReadingsFile log = ReadingsFile.read(file, ASK);
                assertThat(log.series()).isNotEmpty();
                for (ReadingsSeries s : log.series()) ordered(s);
                return true;
            } catch (ReadingsFault fault) {
                assertThat(fault.what).isNotBlank();
                assertThat(fault.remedy).isNotBlank();
                assertThat(fault.row).isNotNegative();
                return false;
            }
        });
    }

    private static void ordered(ReadingsSeries s) {
        for (int i = 0; i < s.size(); i++) {
            boolean right = s.unit().kind().holds(s.values()[i]) && (i == 0 || s.times()[i] > s.times()[i - 1]);
            if (!right) throw new AssertionError("reading " + i + " of " + s.name());
        }
    }

    private static byte[] damaged(byte[] content, Random random) {
        if (content.length == 0) return content;
        byte[] bytes = content.clone();
        switch (random.nextInt(6)) {
            case 0:
                return Arrays.copyOf(bytes, random.nextInt(bytes.length));
            case 1:
                for (int k = random.nextInt(4); k >= 0; k--)
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                return bytes;
            case 2:
                for (int k = random.nextInt(12); k >= 0; k--) spice(bytes, bytes.length, random);
                return bytes;
            case 3:
                spice(bytes, Math.min(60, bytes.length), random);
                return bytes;
            case 4:
                int from = random.nextInt(bytes.length);
                int length = Math.min(bytes.length - from, random.nextInt(120));
                byte[] rest = Arrays.copyOf(bytes, bytes.length - length);
                System.arraycopy(bytes, from + length, rest, from, bytes.length - from - length);
                return rest;
            default:
                String text = new String(bytes, StandardCharsets.ISO_8859_1);
                char one = SPICE.charAt(random.nextInt(SPICE.length()));
                char other = SPICE.charAt(random.nextInt(SPICE.length()));
                return text.replace(one, other).getBytes(StandardCharsets.ISO_8859_1);
        }
    }

    private static void spice(byte[] bytes, int within, Random random) {
        bytes[random.nextInt(within)] = (byte) SPICE.charAt(random.nextInt(SPICE.length()));
    }
}
