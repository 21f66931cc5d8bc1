package stokewell.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import stokewell.file.DateOrder;
import stokewell.file.ReadingsAsk;
import stokewell.file.ReadingsFault;
import stokewell.file.ReadingsSeries;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;
import stokewell.file.UnitSystem;
import stokewell.fit.Placing;
import stokewell.fit.Probing;
import stokewell.fit.Series;
import stokewell.fit.Spot;
import stokewell.rig.Rig;
import stokewell.shop.Doubts;
import stokewell.shop.Extent;
import stokewell.shop.Import;
import stokewell.shop.Readings;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;
import stokewell.show.Spoken;

/** Takes a logger's file into the shop, and asks where its sensors sit. */
final class ShopIntake {

    /** A year of ten sensors by the minute is less, bytes. */
    static final int MOST = 64 << 20;

    /** A guess needs no more than the last days of a sensor, s. */
    private static final long LOOKED_AT = 40 * 86400;

    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 _.()-]{0,80}\\.(csv|tsv|txt|log)");

    private final ShopShelf shelf;
    private final Clock clock;

    ShopIntake(ShopShelf shelf, Clock clock) {
        this.shelf = shelf;
        this.clock = clock;
    }

    /** Takes a file in: all of it, or nothing. @param said a word of the person by its name; null where nothing was said */
    Map<String, Object> take(String name, byte[] bytes, Function<String, String> said) {
        if (!NAME.matcher(name).matches()) {
            throw Refusal.request(
                    "That is no name for a table of readings.", "Letters, digits, - and _, then .csv, .tsv or .txt.");
        }
        try {
            Path folder = Files.createTempDirectory("stokewell-readings");
            Path trial = folder.resolve(name);
            try {
                Files.write(trial, bytes);
                return shelf.with(shop -> take(shop, trial, said));
            } finally {
                Files.deleteIfExists(trial);
                Files.deleteIfExists(folder);
            }
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }

    private Map<String, Object> take(Shop shop, Path file, Function<String, String> said) {
        Optional<ZoneId> zone = Optional.ofNullable(said.apply("zone")).map(ShopIntake::zone);
        ZoneId home = shop.zone().orElseGet(ZoneId::systemDefault);
        ReadingsAsk ask = new ReadingsAsk(
                zone,
                home,
                Optional.ofNullable(said.apply("dates")).map(ShopIntake::order),
                Optional.ofNullable(said.apply("decimal")).map(ShopIntake::mark),
                Optional.ofNullable(said.apply("unit")).map(ShopIntake::unit),
                Optional.empty(),
                List.of(),
                "true".equals(said.apply("skip")),
                clock.instant());
        try {
            Import done = Import.of(shop, file, ask, false);
            if (shop.zone().isEmpty()) shop.setZone(zone.orElse(home));
            return told(done, file);
        } catch (ReadingsFault e) {
            String where = e.row > 0 ? "Row " + e.row + ": " : "";
            throw Refusal.readings(where + e.what + ".", e.remedy);
        } catch (IOException e) {
            throw Refusal.disk(e);
        }
    }

    private static Map<String, Object> told(Import done, Path file) {
        Map<String, Object> all = new LinkedHashMap<>();
        // never its path: that is this machine's own matter
        all.put("file", String.valueOf(file.getFileName()));
        all.put("changed", done.changed());
        all.put("told", done.file().told());
        all.put("sensors", done.lines().stream().map(ShopIntake::told).toList());
        return all;
    }

    private static Map<String, Object> told(Import.Line line) {
        Map<String, Object> one = new LinkedHashMap<>();
        ReadingsSeries.Tale tale = line.series().tale();
        one.put("name", line.series().name());
        one.put("readings", line.series().size());
        one.put("added", line.taken().added());
        one.put("differed", line.taken().differed());
        one.put("missing", tale.missing());
        one.put("twice", tale.twice() + tale.differing());
        one.put("impossible", tale.impossible());
        one.put("unset", tale.unset());
        one.put("jumps", tale.jumps().size());
        one.put("gaps", line.doubts().gaps().size());
        one.put("spikes", Doubts.count(line.doubts().spikes()));
        one.put("stuck", Doubts.count(line.doubts().stuck()));
        return one;
    }

    private static ZoneId zone(String text) {
        try {
            return ZoneId.of(text.strip());
        } catch (DateTimeException e) {
            throw Refusal.request("That is no time zone.", "Write it as Europe/Oslo, America/Denver, UTC or +01:00.");
        }
    }

    private static DateOrder order(String text) {
        for (DateOrder order : DateOrder.values()) if (order.name().equalsIgnoreCase(text)) return order;
        throw Refusal.request("That is no order of dates.", "Known: dmy, mdy, ymd.");
    }

    private static Character mark(String text) {
        if (text.equals("point")) return '.';
        if (text.equals("comma")) return ',';
        throw Refusal.request("That is no decimal mark.", "Known: point, comma.");
    }

    private static SensorUnit unit(String text) {
        if (text.isBlank()) throw Refusal.request("That is no unit of temperature.", "Known: C, F, K.");
        return SensorUnit.named(SensorKind.TEMPERATURE, text)
                .orElseThrow(() -> Refusal.request("That is no unit of temperature.", "Known: C, F, K."));
    }

    /** Where each thermometer sits: as the person said, else a guess, else what speaks against one. */
    Map<String, Object> places(Rig rig, UnitSystem units) {
        List<Sensor> sensors = new ArrayList<>();
        List<Series> series = new ArrayList<>();
        Map<String, Spot> said = new LinkedHashMap<>();
        if (shelf.there()) shelf.with(shop -> gather(shop, sensors, series, said));
        Placing placing = Placing.of(series, said, rig);
        List<Map<String, Object>> all = new ArrayList<>();
        for (int i = 0; i < sensors.size(); i++) {
            Map<String, Object> one = new LinkedHashMap<>();
            String name = sensors.get(i).name();
            Spot spot = placing.spots().get(i);
            one.put("name", name);
            one.put("said", said.containsKey(name));
            one.put("place", spot == null ? null : spot.words);
            one.put("why", Spoken.in(placing.why().get(i), units));
            all.add(one);
        }
        List<String> known = new ArrayList<>(
                Probing.spotsOf(rig).stream().map(spot -> spot.words).toList());
        if (!known.contains(Spot.NOTHING.words)) known.add(Spot.NOTHING.words);
        return Map.of("places", known, "sensors", all);
    }

    private static boolean gather(Shop shop, List<Sensor> sensors, List<Series> series, Map<String, Spot> said) {
        for (Sensor sensor : shop.sensors()) {
            Extent extent = shop.extent(sensor);
            if (sensor.kind() != SensorKind.TEMPERATURE || extent.count() == 0) continue;
            Readings last = shop.readings(sensor, extent.last() - LOOKED_AT, extent.last() + 1);
            double[] time = new double[last.size()];
            for (int i = 0; i < time.length; i++) time[i] = last.time(i);
            sensors.add(sensor);
            series.add(new Series(sensor.name(), time, last.values()));
            Spot spot = sensor.place().isEmpty() ? null : Spot.named(sensor.place());
            if (spot != null) said.put(sensor.name(), spot);
        }
        return true;
    }

    /** Says where a sensor sits; with no place it is forgotten. */
    void place(String name, String place) {
        Spot spot = place.isBlank() ? null : Spot.named(place);
        if (!place.isBlank() && spot == null) {
            throw Refusal.request("\"" + place + "\" is no place.", "GET /api/shop/places tells them.");
        }
        if (!shelf.there()) throw Refusal.unknown("There is no such sensor.");
        shelf.with(shop -> {
            Sensor sensor = shop.sensor(name).orElseThrow(() -> Refusal.unknown("There is no such sensor."));
            shop.place(sensor, spot == null ? "" : spot.words.toLowerCase(Locale.ROOT));
            return true;
        });
    }
}
