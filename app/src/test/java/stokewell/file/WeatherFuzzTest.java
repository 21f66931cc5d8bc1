package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to a file on its way, the reader gives complete hours or says what is wrong; seeded. */
class WeatherFuzzTest {

    private static final int ROUNDS = 120;
    private static final String SPICE = "0123456789.,;:-+\"'\n\r\t eENaZ/°%()[]";

    @TempDir
    Path folder;

    @Test
    void damagedFilesAreReadOrRefusedInWords() throws IOException {
        List<Path> files;
        try (var all = Files.list(WeatherFileTest.EXAMPLES)) {
            files = all.filter(p -> p.toString().endsWith(".csv")).sorted().toList();
        }
        assertThat(files).hasSizeGreaterThanOrEqualTo(3);
        var random = new Random(20240131);
        int read = 0;
        int refused = 0;
        for (Path file : files) {
            byte[] whole = Files.readAllBytes(file);
            byte[] start = Arrays.copyOf(whole, Math.min(whole.length, 40000));
            for (int round = 0; round < ROUNDS; round++) {
                byte[] damaged = damaged(round % 40 == 0 ? whole : start, random);
                if (survives(damaged)) {
                    read++;
                } else {
                    refused++;
                }
            }
        }
        // both ends of the tale must have been told for the test to mean anything
        assertThat(read).isGreaterThan(20);
        assertThat(refused).isGreaterThan(20);
    }

    private boolean survives(byte[] content) throws IOException {
        Path file = Files.write(folder.resolve("damaged.csv"), content);
        return assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            try {
                var reading = WeatherFile.read(file, WeatherFileTest.MAYBELL);
                assertThat(reading.hourly().hours()).isGreaterThanOrEqualTo(24);
                return true;
            } catch (WeatherFault fault) {
                assertThat(fault.what).isNotBlank();
                assertThat(fault.remedy).isNotBlank();
                return false;
            }
        });
    }

    private static byte[] damaged(byte[] content, Random random) {
        byte[] bytes = content.clone();
        switch (random.nextInt(6)) {
            case 0:
                return Arrays.copyOf(bytes, random.nextInt(bytes.length));
            case 1:
                for (int k = random.nextInt(4); k >= 0; k--) {
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                }
                return bytes;
            case 2:
                for (int k = random.nextInt(60); k >= 0; k--) {
                    bytes[random.nextInt(bytes.length)] = (byte) SPICE.charAt(random.nextInt(SPICE.length()));
                }
                return bytes;
            case 3:
                bytes[random.nextInt(Math.min(1500, bytes.length))] =
                        (byte) SPICE.charAt(random.nextInt(SPICE.length()));
                return bytes;
            case 4:
                return withoutPiece(bytes, random);
            default:
                String text = new String(bytes, StandardCharsets.ISO_8859_1);
                char from = SPICE.charAt(random.nextInt(SPICE.length()));
                char to = SPICE.charAt(random.nextInt(SPICE.length()));
                return text.replace(from, to).getBytes(StandardCharsets.ISO_8859_1);
        }
    }

    private static byte[] withoutPiece(byte[] bytes, Random random) {
        int from = random.nextInt(bytes.length);
        int length = Math.min(bytes.length - from, random.nextInt(400));
        byte[] rest = Arrays.copyOf(bytes, bytes.length - length);
        System.arraycopy(bytes, from + length, rest, from, bytes.length - from - length);
        return rest;
    }
}
