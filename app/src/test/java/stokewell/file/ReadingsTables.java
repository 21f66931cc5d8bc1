package stokewell.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.io.TempDir;

/** Reads tables that a test writes down. */
abstract class ReadingsTables {

    static final ZoneId OSLO = ZoneId.of("Europe/Oslo");
    static final Instant NOW = Instant.parse("2026-06-01T00:00:00Z");
    static final ReadingsAsk PLAIN = ReadingsAsk.plain(ZoneId.of("UTC"), NOW);

    @TempDir
    Path folder;

    ReadingsFile read(ReadingsAsk ask, String... lines) {
        return read(ask, String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    ReadingsFile read(String... lines) {
        return read(PLAIN, lines);
    }

    ReadingsFile read(ReadingsAsk ask, byte[] bytes) {
        try {
            return ReadingsFile.read(Files.write(folder.resolve("log.csv"), bytes), ask);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    static long at(String utc) {
        return Instant.parse(utc).getEpochSecond();
    }

    static List<Double> celsius(ReadingsSeries s) {
        List<Double> all = new ArrayList<>();
        for (double v : s.values()) all.add(Math.rint((v - 273.15) * 1e4) / 1e4);
        return all;
    }

    static void refused(ThrowingCallable reading, int row, String what, String remedy) {
        assertThatThrownBy(reading).isInstanceOfSatisfying(ReadingsFault.class, fault -> {
            assertThat(fault.what).contains(what);
            assertThat(fault.remedy).contains(remedy);
            assertThat(fault.row).isEqualTo(row);
        });
    }

    ReadingsAsk dates(DateOrder order) {
        return with(Optional.of(order), Optional.empty(), Optional.empty());
    }

    static ReadingsAsk with(Optional<DateOrder> order, Optional<Character> mark, Optional<ZoneId> zone) {
        return new ReadingsAsk(
                zone, ZoneId.of("UTC"), order, mark, Optional.empty(), Optional.empty(), List.of(), false, NOW);
    }

    static ReadingsAsk in(ZoneId zone) {
        return with(Optional.empty(), Optional.empty(), Optional.of(zone));
    }
}
