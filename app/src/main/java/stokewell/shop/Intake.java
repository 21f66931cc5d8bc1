package stokewell.shop;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;

/** Takes a folder in that {@link Export} wrote: all of it, or nothing. What the shop has already is not doubled. */
public final class Intake {

    private final Shop shop;
    private final Path folder;

    private Intake(Shop shop, Path folder) {
        this.shop = shop;
        this.folder = folder;
    }

    /** Takes all in. */
    public static void of(Shop shop, Path folder) throws IOException {
        if (!Files.isRegularFile(folder.resolve("sensors.csv"))) {
            throw new ShopFault(folder + " is not the export of a shop.", "Name a folder with a sensors.csv.");
        }
        try {
            shop.together(() -> new Intake(shop, folder).all());
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private void all() {
        each("about.csv", row -> {
            if (row.getField("key").equals("zone") && shop.zone().isEmpty()) {
                shop.setZone(ZoneId.of(row.getField("value")));
            }
        });
        each("sensors.csv", this::sensor);
        each(
                "loads.csv",
                row -> shop.add(new Load(
                        0,
                        time(row.getField("time")),
                        Double.parseDouble(row.getField("mass [kg]")),
                        row.getField("moisture [1]").isEmpty()
                                ? Double.NaN
                                : Double.parseDouble(row.getField("moisture [1]")),
                        row.getField("wood"),
                        row.getField("note"))));
        each(
                "events.csv",
                row -> shop.add(new Event(0, time(row.getField("time")), row.getField("kind"), row.getField("note"))));
        Map<String, Long> rigs = new HashMap<>();
        each("rigs.csv", row -> {
            String text = text(row.getField("file"));
            RigVersion kept = shop.keepRig(time(row.getField("since")), row.getField("name"), text);
            rigs.put(row.getField("number"), kept.id());
        });
        each(
                "fits.csv",
                row -> shop.saveFit(
                        time(row.getField("made")),
                        rigs.getOrDefault(row.getField("rig"), 0L),
                        text(row.getField("file"))));
    }

    private void sensor(NamedCsvRecord row) {
        SensorKind kind = SensorKind.valueOf(row.getField("kind").toUpperCase(Locale.ROOT));
        SensorUnit own = unit(kind, row.getField("unit"));
        SensorUnit written = unit(kind, row.getField("written in"));
        Growing readings = new Growing();
        String file = row.getField("readings");
        each(
                file,
                reading ->
                        readings.add(time(reading.getField(0)), written.toSi(Double.parseDouble(reading.getField(1)))));
        Batch batch = new Batch(row.getField("name"), own, readings.readings());
        Sensor sensor = shop.take(List.of(batch), false).get(0).sensor();
        if (!row.getField("place").isEmpty() && sensor.place().isEmpty()) shop.place(sensor, row.getField("place"));
    }

    private static SensorUnit unit(SensorKind kind, String symbol) {
        return SensorUnit.named(kind, symbol)
                .orElseThrow(() -> new IllegalArgumentException("\"" + symbol + "\" is no unit of " + kind.word()));
    }

    private static long time(String text) {
        return Instant.parse(text).getEpochSecond();
    }

    private String text(String file) {
        try {
            return Files.readString(inside(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Only files of the folder itself are read, whatever a table names. */
    private Path inside(String file) {
        Path path = folder.resolve(file).normalize();
        if (!path.startsWith(folder.normalize())) throw new IllegalArgumentException(file + " is outside the folder");
        return path;
    }

    private interface Row {
        void take(NamedCsvRecord row);
    }

    private void each(String file, Row row) {
        long[] line = {1};
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(inside(file))) {
            for (NamedCsvRecord record : rows) {
                line[0] = record.getStartingLineNumber();
                row.take(record);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (CsvParseException
                | IllegalArgumentException
                | DateTimeException
                | NoSuchElementException
                | IndexOutOfBoundsException e) {
            throw new ShopFault(
                    folder.resolve(file) + ":" + line[0] + "  cannot be read: " + e.getMessage() + ".",
                    "Nothing was taken in.",
                    e);
        }
    }
}
