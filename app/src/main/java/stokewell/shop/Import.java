package stokewell.shop;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import stokewell.file.ReadingsAsk;
import stokewell.file.ReadingsFile;
import stokewell.file.ReadingsSeries;

/**
 * A file of readings that was taken in.
 *
 * @param file  what it held
 * @param lines one a sensor
 */
public record Import(ReadingsFile file, List<Line> lines) {

    /**
     * What became of one sensor.
     *
     * @param series as the file has it
     * @param taken  what is new of it
     * @param doubts which of the file's readings to distrust
     */
    public record Line(ReadingsSeries series, Taken taken, Doubts doubts) {}

    /**
     * Reads a file and takes it in: all of it, or nothing.
     *
     * @param replace where the shop has another value at the same time: whether the file's counts, or the shop's
     */
    public static Import of(Shop shop, Path file, ReadingsAsk ask, boolean replace) throws IOException {
        ReadingsFile read = ReadingsFile.read(file, ask);
        List<Batch> batches = new ArrayList<>();
        for (ReadingsSeries s : read.series()) {
            batches.add(new Batch(s.name(), s.unit(), new Readings(s.times(), s.values())));
        }
        List<Taken> taken = shop.take(batches, replace);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < batches.size(); i++) {
            Batch batch = batches.get(i);
            lines.add(new Line(
                    read.series().get(i), taken.get(i), Doubts.of(batch.unit().kind(), batch.readings())));
        }
        return new Import(read, List.copyOf(lines));
    }

    /** Whether the shop is another than before. */
    public boolean changed() {
        return lines.stream().anyMatch(line -> line.taken.changed());
    }
}
