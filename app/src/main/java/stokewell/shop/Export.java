package stokewell.shop;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stokewell.file.SensorUnit;

/**
 * Everything in a shop as files that any program reads: tables with headings, rig files, fits as JSON. {@link Intake} makes
 * the same shop of them again.
 */
public final class Export {

    private final Shop shop;
    private final Path folder;

    private Export(Shop shop, Path folder) {
        this.shop = shop;
        this.folder = folder;
    }

    /** Writes into a folder that is not there yet, or empty: all of it, or nothing. */
    public static void write(Shop shop, Path folder) throws IOException {
        Path whole = folder.toAbsolutePath();
        if (Files.exists(whole)) {
            if (!Files.isDirectory(whole)) throw new ShopFault(folder + " is a file.", "Name a new folder.");
            try (var inside = Files.list(whole)) {
                if (inside.findAny().isPresent()) {
                    throw new ShopFault(folder + " is not empty.", "Name a new folder.");
                }
            }
        }
        Path draft = whole.resolveSibling(
                "." + whole.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        try {
            Files.createDirectories(draft);
            // one moment of the shop, whatever others write meanwhile
            shop.together(() -> new Export(shop, draft).all());
            Files.deleteIfExists(whole);
            Files.move(draft, whole, StandardCopyOption.ATOMIC_MOVE);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            remove(draft);
        }
    }

    private static void remove(Path draft) throws IOException {
        if (!Files.exists(draft)) return;
        try (var inside = Files.walk(draft)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) Files.delete(path);
        }
    }

    private void all() {
        try {
            about();
            sensors();
            loads();
            events();
            models();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void about() throws IOException {
        try (CsvWriter out = table("about.csv", "key", "value")) {
            shop.zone().ifPresent(zone -> out.writeRecord("zone", zone.getId()));
        }
    }

    private void sensors() throws IOException {
        Files.createDirectories(folder.resolve("readings"));
        try (CsvWriter out =
                table("sensors.csv", "number", "name", "kind", "unit", "place", "readings", "written in")) {
            int number = 0;
            for (Sensor sensor : shop.sensors()) {
                Readings readings = shop.readings(sensor);
                SensorUnit unit = exact(sensor, readings) ? sensor.unit() : SensorUnit.si(sensor.kind());
                String file = name("readings", ++number, "csv");
                readings(file, unit, readings);
                out.writeRecord(
                        Integer.toString(number),
                        sensor.name(),
                        sensor.kind().word(),
                        sensor.unit().symbol(),
                        sensor.place(),
                        file,
                        unit.symbol());
            }
        }
    }

    private void readings(String file, SensorUnit unit, Readings readings) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(folder.resolve(file), StandardCharsets.UTF_8)) {
            out.write("time," + (unit.symbol().isEmpty() ? "value" : "value [" + unit.symbol() + "]") + "\n");
            for (int i = 0; i < readings.size(); i++) {
                out.write(Instant.ofEpochSecond(readings.time(i)).toString());
                out.write(',');
                out.write(written(unit, readings.value(i)));
                out.write('\n');
            }
        }
    }

    /** Whether each value can be written in the sensor's own unit and be read again as the same to the last bit. */
    private static boolean exact(Sensor sensor, Readings readings) {
        for (int i = 0; i < readings.size(); i++) {
            double back = sensor.unit().toSi(Double.parseDouble(written(sensor.unit(), readings.value(i))));
            if (Double.doubleToRawLongBits(back) != Double.doubleToRawLongBits(readings.value(i))) return false;
        }
        return true;
    }

    /** With as few decimals as give it back. */
    private static String written(SensorUnit unit, double si) {
        double value = unit.fromSi(si);
        double round = Math.rint(value * 1e6) / 1e6;
        double shown = unit.toSi(round) == si ? round : value;
        boolean whole = shown == Math.rint(shown) && Math.abs(shown) < 1e15 && (shown != 0 || 1 / shown > 0);
        return whole ? Long.toString((long) shown) : Double.toString(shown);
    }

    private void loads() throws IOException {
        try (CsvWriter out = table("loads.csv", "time", "mass [kg]", "moisture [1]", "wood", "note")) {
            for (Load load : shop.loads(Long.MIN_VALUE, Long.MAX_VALUE)) {
                out.writeRecord(
                        Instant.ofEpochSecond(load.time()).toString(),
                        Double.toString(load.mass()),
                        Double.isNaN(load.moisture()) ? "" : Double.toString(load.moisture()),
                        load.wood(),
                        load.note());
            }
        }
    }

    private void events() throws IOException {
        try (CsvWriter out = table("events.csv", "time", "kind", "note")) {
            for (Event event : shop.events(Long.MIN_VALUE, Long.MAX_VALUE)) {
                out.writeRecord(Instant.ofEpochSecond(event.time()).toString(), event.kind(), event.note());
            }
        }
    }

    private void models() throws IOException {
        Map<Long, Integer> numbers = new HashMap<>();
        Files.createDirectories(folder.resolve("rigs"));
        Files.createDirectories(folder.resolve("fits"));
        try (CsvWriter out = table("rigs.csv", "number", "since", "name", "file")) {
            for (RigVersion rig : shop.rigs()) {
                int number = numbers.size() + 1;
                numbers.put(rig.id(), number);
                String file = name("rigs", number, "yaml");
                Files.writeString(folder.resolve(file), rig.text());
                String since = Instant.ofEpochSecond(rig.since()).toString();
                out.writeRecord(Integer.toString(number), since, rig.name(), file);
            }
        }
        try (CsvWriter out = table("fits.csv", "number", "made", "rig", "file")) {
            int number = 0;
            for (SavedFit fit : shop.fits()) {
                String file = name("fits", ++number, "json");
                Files.writeString(folder.resolve(file), fit.body());
                Integer rig = numbers.get(fit.rig());
                String made = Instant.ofEpochSecond(fit.made()).toString();
                out.writeRecord(Integer.toString(number), made, rig == null ? "" : rig.toString(), file);
            }
        }
    }

    private static String name(String folder, int number, String end) {
        return String.format(java.util.Locale.ROOT, "%s/%03d.%s", folder, number, end);
    }

    private CsvWriter table(String file, String... headings) throws IOException {
        CsvWriter out = CsvWriter.builder()
                .lineDelimiter(de.siegmar.fastcsv.writer.LineDelimiter.LF)
                .build(folder.resolve(file), StandardCharsets.UTF_8);
        List<String> row = new ArrayList<>(List.of(headings));
        out.writeRecord(row);
        return out;
    }
}
