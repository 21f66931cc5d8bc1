package stokewell.web;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;

/**
 * Rigs that a person keeps side by side, as they were when he pinned them: in the hidden folder beside the rigs, so that they
 * outlive page and server. Their nights are run anew by whoever looks at them.
 */
final class Pins {

    private static final int MOST = 24;
    private static final long LARGEST = 8 << 20;
    private static final int LONGEST_NAME = 200;

    private final Path hidden;

    /** @param folder of the rigs */
    Pins(Path folder) {
        hidden = folder.resolve(".stokewell");
    }

    /**
     * One of them.
     *
     * @param id   its own
     * @param name what was done to it last
     * @param rig  id of the rig that it was
     * @param text all of its file
     */
    record Pin(String id, String name, String rig, String text) {

        Map<String, Object> told() {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("id", id);
            one.put("name", name);
            one.put("rig", rig);
            one.put("text", text);
            return one;
        }
    }

    synchronized List<Pin> all() {
        return read().orElse(List.of());
    }

    /** Nothing where the file cannot be understood: someone has written into it by hand. */
    private Optional<List<Pin>> read() {
        Path file = file();
        List<Pin> pins = new ArrayList<>();
        try {
            if (!Files.isRegularFile(file)) return Optional.of(pins);
            if (Files.size(file) > LARGEST) return Optional.empty();
            for (JsonNode one : Body.JSON.readTree(Files.readAllBytes(file)).path("pins")) {
                pins.add(new Pin(
                        one.path("id").asString(""),
                        one.path("name").asString(""),
                        one.path("rig").asString(""),
                        one.path("text").asString("")));
            }
            return Optional.of(pins);
        } catch (IOException e) {
            throw Refusal.disk(e);
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }

    private Path file() {
        return hidden.resolve("pins.json");
    }

    /** Pins one more. @throws Refusal where there are as many as can be looked at */
    synchronized Pin add(String name, String rig, String text) {
        if (text.length() > RigFolder.LARGEST) throw Refusal.request("The text is too large.", "Make it smaller.");
        if (name.length() > LONGEST_NAME) throw Refusal.request("The name is too long.", "Make it shorter.");
        return change(pins -> {
            if (pins.size() >= MOST) {
                throw Refusal.request("There are " + MOST + " pinned already.", "Drop some of them first.");
            }
            Pin pin = new Pin(UUID.randomUUID().toString(), name, rig, text);
            pins.add(pin);
            return pin;
        });
    }

    /** Drops one; one that is gone already is dropped. */
    synchronized void drop(String id) {
        change(pins -> pins.removeIf(pin -> pin.id().equals(id)));
    }

    /** Keeps a file that cannot be understood under another name, and begins with no pins. */
    private List<Pin> putAside() {
        try {
            Files.move(
                    file(),
                    Files.createTempFile(hidden, "pins-put-aside-", ".json"),
                    StandardCopyOption.REPLACE_EXISTING);
            return new ArrayList<>();
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }

    private interface Change<T> {
        T of(List<Pin> pins);
    }

    private <T> T change(Change<T> change) {
        try {
            Files.createDirectories(hidden);
            try (FileChannel gate =
                    FileChannel.open(hidden.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
                gate.lock();
                List<Pin> pins = read().orElseGet(this::putAside);
                T done = change.of(pins);
                List<Map<String, Object>> told = pins.stream().map(Pin::told).toList();
                byte[] whole = Body.JSON.writeValueAsBytes(Map.of("pins", told));
                if (whole.length > LARGEST)
                    throw Refusal.request("The pins grow too large.", "Drop some of them first.");
                DiskFile.write(file(), whole);
                return done;
            }
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }
}
