package stokewell.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PinsTest {

    @TempDir
    Path folder;

    @Test
    void whatIsPinnedIsThereForTheNextServerToo() {
        Pins.Pin pin = new Pins(folder).add("taller", "shed", "name: Shed");
        assertThat(new Pins(folder).all()).containsExactly(pin);
        new Pins(folder).drop(pin.id());
        assertThat(new Pins(folder).all()).isEmpty();
    }

    @Test
    void aFileThatSomeoneHasSpoiltIsKeptBesideTheNewOne() throws IOException {
        Pins pins = new Pins(folder);
        pins.add("taller", "shed", "name: Shed");
        Path file = folder.resolve(".stokewell/pins.json");
        Files.writeString(file, "{\"pins\": [ {\"id\": ");
        assertThat(pins.all()).isEmpty();
        pins.add("wider", "shed", "name: Shed");
        assertThat(pins.all()).extracting(Pins.Pin::name).containsExactly("wider");
        try (Stream<Path> beside = Files.list(file.getParent())) {
            List<Path> aside = beside.filter(p -> p.getFileName().toString().startsWith("pins-put-aside-"))
                    .toList();
            assertThat(aside).hasSize(1);
            assertThat(Files.readString(aside.get(0))).contains("{\"id\": ");
        }
    }

    @Test
    void moreThanCanBeReadAgainIsNeverWritten() {
        Pins pins = new Pins(folder);
        String large = "x".repeat(1_000_000);
        for (int i = 0; i < 8; i++) pins.add("pin " + i, "shed", large);
        assertThatThrownBy(() -> pins.add("one more", "shed", large)).isInstanceOf(Refusal.class);
        assertThat(pins.all()).hasSize(8);
        assertThatThrownBy(() -> pins.add("n".repeat(300), "shed", "name: Shed"))
                .isInstanceOf(Refusal.class);
    }
}
