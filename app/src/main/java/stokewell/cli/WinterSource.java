package stokewell.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stokewell.file.ReadingsAsk;
import stokewell.file.ReadingsFault;
import stokewell.file.ReadingsFile;
import stokewell.file.ReadingsSeries;
import stokewell.file.SensorKind;
import stokewell.fit.Placing;
import stokewell.fit.Series;
import stokewell.fit.Spot;
import stokewell.fit.WoodLoad;
import stokewell.shop.Doubts;
import stokewell.shop.Load;
import stokewell.shop.RigVersion;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;

/** Loads and temperatures of a shop or of a logger's table, by their place; times are s since 1970, standard time. */
final class WinterSource {

    private static final byte[] SQLITE = {'S', 'Q', 'L', 'i', 't', 'e'};

    private final Map<String, String> said;
    private final List<WoodLoad> loads = new ArrayList<>();
    private final Map<Spot, Series> at = new EnumMap<>(Spot.class);
    private final List<String> told = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private final List<RigVersion> rigs = new ArrayList<>();
    private long offset;

    private WinterSource(Map<String, String> said) {
        this.said = said;
    }

    /**
     * Reads all of a file.
     *
     * @param zone of the person; null for the shop's or the computer's
     * @param said where sensors sit, by their names
     */
    static WinterSource of(Path file, ZoneId zone, Map<String, String> said) throws IOException {
        WinterSource source = new WinterSource(said);
        if (!Files.exists(file)) {
            throw Complaint.usage(
                    "There is no " + file + ".",
                    "Import readings with ./stokewell readings import, or name a logger's file with --before and "
                            + "--after.");
        }
        if (isShop(InFile.check("", file))) source.shop(file, zone);
        else source.table(file, Optional.ofNullable(zone));
        source.loads.sort(Comparator.comparingDouble(WoodLoad::time));
        return source;
    }

    /** Whether a file is a shop, and not a table. */
    static boolean isShop(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            byte[] head = in.readNBytes(SQLITE.length);
            return java.util.Arrays.equals(head, SQLITE);
        }
    }

    private void shop(Path file, ZoneId zone) {
        try (Shop open = Shop.openExisting(file)) {
            ZoneId home = zone == null ? ShopChoice.zone(open) : zone;
            for (Sensor sensor : open.sensors()) {
                if (sensor.kind() != SensorKind.TEMPERATURE) continue;
                stokewell.shop.Readings all = open.readings(sensor);
                stokewell.shop.Readings sound = Doubts.of(sensor.kind(), all).sound(all);
                if (sound.size() == 0) continue;
                shift(home, sound.time(0));
                place(sensor.name(), sensor.place(), sound.times(), sound.values());
            }
            for (Load l : WoodNoted.of(open)) {
                shift(home, l.time());
                loads.add(new WoodLoad(l.time() + offset, l.mass(), l.moisture()));
            }
            rigs.addAll(open.rigs());
        }
    }

    private void table(Path file, Optional<ZoneId> said) throws IOException {
        ZoneId zone = said.orElseGet(ZoneId::systemDefault);
        ReadingsFile read;
        try {
            read = ReadingsFile.read(file, ReadingsAsk.plain(said, zone, Instant.now()));
        } catch (ReadingsFault fault) {
            throw Complaint.usage(fault.getMessage(), "./stokewell help readings import tells how a table is read.");
        }
        for (String note : read.told()) told.add(file.getFileName() + ": " + note);
        for (ReadingsSeries s : read.series()) {
            long[] times = s.times();
            if (times.length == 0) continue;
            shift(zone, times[0]);
            double[] values = s.values();
            if (s.unit().kind() == SensorKind.TEMPERATURE) place(s.name(), "", times, values);
            if (s.unit().kind() != SensorKind.MASS) continue;
            for (int i = 0; i < times.length; i++) {
                if (values[i] > 0) loads.add(new WoodLoad(times[i] + offset, values[i], Double.NaN));
            }
        }
    }

    private void shift(ZoneId zone, long time) {
        offset = zone.getRules().getStandardOffset(Instant.ofEpochSecond(time)).getTotalSeconds();
    }

    private void place(String name, String kept, long[] times, double[] values) {
        String word = said.get(name);
        Spot spot = word != null ? Spot.named(word) : kept.isEmpty() ? null : Spot.named(kept);
        if (word != null && spot == null) {
            throw Complaint.usage(
                    "--sensor: \"" + word + "\" is no place.",
                    "Places: room, outdoor, stove, flue, store top, nothing.");
        }
        if (spot == null) spot = Placing.byName(name);
        if (spot == null) {
            unplaced.add(name);
            return;
        }
        if (spot == Spot.NOTHING) return;
        if (at.containsKey(spot)) {
            told.add("\"" + name + "\" and \"" + at.get(spot).name() + "\" both say " + spot.words
                    + ": the first is taken; --sensor says otherwise");
            return;
        }
        double[] local = new double[times.length];
        for (int i = 0; i < local.length; i++) local[i] = times[i] + offset;
        at.put(spot, new Series(name, local, values));
    }

    /** All loads, by time. */
    List<WoodLoad> loads() {
        return loads;
    }

    /** The sensor at a place; null without one. */
    Series at(Spot spot) {
        return at.get(spot);
    }

    /** Remarks on what was read. */
    List<String> told() {
        return told;
    }

    /** Sensors of which nobody knows where they sit. */
    List<String> unplaced() {
        return unplaced;
    }

    /** Standard time of the place less UTC, s. */
    long offset() {
        return offset;
    }

    /** Versions of the rig that the shop keeps. */
    List<RigVersion> rigs() {
        return rigs;
    }

    /** From the first load or reading. */
    double from() {
        double first = loads.isEmpty() ? Double.POSITIVE_INFINITY : loads.get(0).time();
        for (Series s : at.values()) first = Math.min(first, s.time()[0]);
        return first;
    }

    /** To the last. */
    double until() {
        double last = loads.isEmpty()
                ? Double.NEGATIVE_INFINITY
                : loads.get(loads.size() - 1).time();
        for (Series s : at.values()) last = Math.max(last, s.time()[s.size() - 1]);
        return last + 1;
    }
}
