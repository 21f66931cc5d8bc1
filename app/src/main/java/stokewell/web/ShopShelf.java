package stokewell.web;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import stokewell.file.SensorKind;
import stokewell.file.SensorUnit;
import stokewell.file.UnitSystem;
import stokewell.shop.Doubts;
import stokewell.shop.Extent;
import stokewell.shop.Readings;
import stokewell.shop.Sensor;
import stokewell.shop.Shop;
import stokewell.shop.ShopFault;

/** The shop's file in the folder, and what its sensors have said. */
final class ShopShelf {

    /** As the verbs call it where nothing else is said. */
    private static final String FILE = "shop.stokewell";

    private static final long WEEK = 7 * 86400;
    private static final int POINTS = 336;

    private final Path file;

    ShopShelf(Path folder) {
        file = folder.resolve(FILE);
    }

    Path file() {
        return file;
    }

    /** Asks the shop, or changes it. */
    <T> T with(Function<Shop, T> work) {
        if (Files.exists(file) && !there()) {
            throw Refusal.request(FILE + " leads out of the folder.", "Put a plain file in its place.");
        }
        try (Shop shop = Shop.open(file)) {
            return work.apply(shop);
        } catch (ShopFault fault) {
            throw Refusal.readings(fault.what, fault.remedy);
        }
    }

    /** Whether there is one. */
    boolean there() {
        return Files.isRegularFile(file) && RigFolder.inside(file, file.getParent());
    }

    /** Each sensor with its last week, counted back from the newest reading of all. */
    Map<String, Object> told(UnitSystem units) {
        if (!there()) throw Refusal.unknown("There is no " + FILE + " in the folder.");
        try (Shop shop = Shop.openExisting(file)) {
            List<Sensor> sensors = shop.sensors();
            long until = Long.MIN_VALUE;
            for (Sensor s : sensors) {
                Extent e = shop.extent(s);
                if (e.count() > 0) until = Math.max(until, e.last());
            }
            List<Map<String, Object>> all = new ArrayList<>();
            for (Sensor s : sensors) all.add(told(shop, s, until, units));
            Map<String, Object> told = new LinkedHashMap<>();
            told.put("zone", shop.zone().map(Object::toString).orElse(null));
            told.put("from", until == Long.MIN_VALUE ? null : moment(until - WEEK));
            told.put("until", until == Long.MIN_VALUE ? null : moment(until));
            told.put("sensors", all);
            return told;
        } catch (ShopFault fault) {
            throw Refusal.request(fault.what, fault.remedy);
        }
    }

    private static Map<String, Object> told(Shop shop, Sensor sensor, long until, UnitSystem units) {
        Extent extent = shop.extent(sensor);
        SensorUnit unit = unit(sensor, units);
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("name", sensor.name());
        one.put("measures", sensor.kind().word());
        one.put("place", sensor.place());
        one.put("unit", sign(unit));
        one.put("count", extent.count());
        one.put("first", extent.count() == 0 ? null : moment(extent.first()));
        one.put("last", extent.count() == 0 ? null : moment(extent.last()));
        if (extent.count() == 0) return one;
        Readings week = shop.readings(sensor, until - WEEK, until + 1);
        Doubts doubts = Doubts.of(sensor.kind(), week);
        one.put("doubtful", Doubts.count(doubts.spikes()) + Doubts.count(doubts.stuck()));
        one.put("curve", curve(doubts.sound(week), until, unit));
        return one;
    }

    private static SensorUnit unit(Sensor sensor, UnitSystem units) {
        if (sensor.kind() != SensorKind.TEMPERATURE) return sensor.unit();
        return SensorUnit.named(units == UnitSystem.US ? "F" : "C").orElse(sensor.unit());
    }

    private static String sign(SensorUnit unit) {
        boolean degrees = unit.symbol().equals("C") || unit.symbol().equals("F");
        return degrees ? "°" + unit.symbol() : unit.symbol();
    }

    private static String moment(long time) {
        return Instant.ofEpochSecond(time).toString();
    }

    /** Means over equal stretches of the week; null where there is no sound reading. */
    private static List<Double> curve(Readings readings, long until, SensorUnit unit) {
        double[] sum = new double[POINTS];
        int[] count = new int[POINTS];
        for (int i = 0; i < readings.size(); i++) {
            int at = (int) ((readings.time(i) - (until - WEEK)) * POINTS / (WEEK + 1));
            if (at < 0 || at >= POINTS) continue;
            sum[at] += readings.value(i);
            count[at]++;
        }
        Double[] curve = new Double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            if (count[i] > 0) curve[i] = Math.rint(100 * unit.fromSi(sum[i] / count[i])) / 100;
        }
        return Arrays.asList(curve);
    }
}
