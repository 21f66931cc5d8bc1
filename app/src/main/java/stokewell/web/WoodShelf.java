package stokewell.web;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import stokewell.file.Quantity;
import stokewell.file.QuantityFault;
import stokewell.file.UnitSystem;
import stokewell.rig.Dimension;
import stokewell.shop.Load;
import stokewell.shop.Shop;

/** The loads of wood in the shop's file: noted one by one, as {@code diary load} does, and struck out where one is wrong. */
final class WoodShelf {

    private static final Pattern MINUTE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}T\\d{2}:\\d{2}");
    private static final int MOST_TOLD = 20;
    private static final int LONGEST = 200;

    private final ShopShelf shop;
    private final Clock clock;

    WoodShelf(ShopShelf shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** The latest loads, newest first. */
    Map<String, Object> told(UnitSystem units) {
        if (!shop.there()) return Map.of("loads", List.of(), "count", 0);
        return shop.with(open -> {
            List<Load> loads = open.loads(Long.MIN_VALUE, Long.MAX_VALUE);
            List<Map<String, Object>> all = new ArrayList<>();
            for (int i = loads.size() - 1; i >= 0 && all.size() < MOST_TOLD; i--)
                all.add(told(loads.get(i), zone(open), units));
            return Map.of("loads", all, "count", loads.size());
        });
    }

    /** Notes one. @return whether it stood there already, and how it stands */
    Map<String, Object> note(Body body) {
        double mass = quantity(body.need("mass"), Dimension.MASS);
        String wet = body.text("moisture");
        double moisture = wet == null ? Double.NaN : quantity(wet, Dimension.SHARE);
        String at = body.text("at");
        LocalDateTime wall = at == null ? null : wall(at);
        return shop.with(open -> {
            ZoneId zone = zone(open);
            Load load = new Load(0, time(wall, zone), mass, moisture, words(body, "wood"), words(body, "note"));
            Map<String, Object> one = told(load, zone, body.units());
            one.put("added", open.add(load));
            return one;
        });
    }

    /** Strikes one out. */
    void strike(String id) {
        boolean struck =
                id.matches("\\d{1,9}") && shop.there() && shop.with(open -> open.strikeLoad(Long.parseLong(id)));
        if (!struck) throw Refusal.unknown("There is no such load.");
    }

    private static ZoneId zone(Shop open) {
        return open.zone().orElseGet(ZoneId::systemDefault);
    }

    /** A moment in numbers and nothing else. */
    private static LocalDateTime wall(String at) {
        try {
            if (MINUTE.matcher(at).matches()) return LocalDateTime.parse(at);
        } catch (DateTimeParseException e) {
            // no such day: told like what is no moment at all
        }
        throw Refusal.request("\"" + at + "\" is no moment.", "Write 2026-01-15T18:00.");
    }

    /** @param wall null for now */
    private long time(LocalDateTime wall, ZoneId zone) {
        long now = clock.instant().getEpochSecond() / 60 * 60;
        if (wall == null) return now;
        long time = wall.atZone(zone).toEpochSecond();
        if (time > now + 60) throw Refusal.request("That load is still to come.", "Note it when it is on the fire.");
        return time;
    }

    private static String words(Body body, String key) {
        String text = body.text(key);
        if (text == null) return "";
        if (text.length() > LONGEST)
            throw Refusal.request("\"" + key + "\" is too long.", LONGEST + " signs are enough.");
        return text.strip();
    }

    private static double quantity(String text, Dimension is) {
        try {
            return Quantity.parse(text, is);
        } catch (QuantityFault e) {
            throw Refusal.request(e.what, e.right);
        }
    }

    private static Map<String, Object> told(Load load, ZoneId zone, UnitSystem units) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("load", load.id());
        one.put(
                "time",
                LocalDateTime.ofInstant(Instant.ofEpochSecond(load.time()), zone)
                        .toString());
        one.put("massKg", load.mass());
        one.put("mass", Quantity.write(load.mass(), Dimension.MASS, units, 3));
        one.put(
                "moisture",
                Double.isNaN(load.moisture()) ? null : Quantity.write(load.moisture(), Dimension.SHARE, units, 3));
        one.put("wood", load.wood());
        one.put("note", load.note());
        return one;
    }
}
