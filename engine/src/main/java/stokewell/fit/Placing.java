package stokewell.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import stokewell.rig.Rig;

/**
 * Which sensor is where: by its name, else by how it behaves, else not at all.
 *
 * @param spots  each sensor's place, in the order of the sensors; null where it must be asked
 * @param why    in words, for each
 */
public record Placing(List<String> names, List<Spot> spots, List<String> why) {

    /** Sensors that must be asked for. */
    public List<String> unsure() {
        List<String> open = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) if (spots.get(i) == null) open.add(names.get(i));
        return open;
    }

    /** The sensor of each place. */
    public Map<Spot, String> byPlace() {
        Map<Spot, String> found = new EnumMap<>(Spot.class);
        for (int i = 0; i < names.size(); i++) {
            Spot s = spots.get(i);
            if (s != null && s != Spot.NOTHING) found.put(s, names.get(i));
        }
        return found;
    }

    /**
     * Guesses.
     *
     * @param said places that the person has given, by sensor; never guessed over
     */
    public static Placing of(List<Series> sensors, Map<String, Spot> said, Rig rig) {
        int n = sensors.size();
        List<Spot> possible = Probing.spotsOf(rig);
        Spot[] spots = new Spot[n];
        String[] why = new String[n];
        for (int i = 0; i < n; i++) {
            Spot given = said.get(sensors.get(i).name());
            if (given != null) take(spots, why, i, given, "as you said");
        }
        for (int i = 0; i < n; i++) {
            if (spots[i] != null) continue;
            Spot named = byName(sensors.get(i).name());
            if (named == null || !possible.contains(named)) continue;
            if (taken(spots, named) && named != Spot.NOTHING) {
                why[i] = "its name says " + named.words + ", and so does another's";
                continue;
            }
            String fits = refuse(named, sensors, i, spots);
            if (fits.isEmpty()) take(spots, why, i, named, "by its name");
            else why[i] = fits;
        }
        byBehaviour(sensors, spots, why, possible);
        for (int i = 0; i < n; i++) if (spots[i] == null && why[i] == null) why[i] = describe(sensors.get(i));
        List<String> names = sensors.stream().map(Series::name).toList();
        return new Placing(
                names,
                java.util.Collections.unmodifiableList(java.util.Arrays.asList(spots)),
                java.util.Collections.unmodifiableList(java.util.Arrays.asList(why)));
    }

    private static void take(Spot[] spots, String[] why, int i, Spot spot, String reason) {
        spots[i] = spot;
        why[i] = reason;
    }

    private static boolean taken(Spot[] spots, Spot spot) {
        for (Spot s : spots) if (s == spot) return true;
        return false;
    }

    /** By the words that people write on sensors, in a few languages. */
    public static Spot byName(String name) {
        String n = " "
                + name.toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}]+", " ")
                        .strip() + " ";
        Spot exact = Spot.named(n);
        if (exact != null) return exact;
        boolean store = any(n, "store", "tank", "buffer", "puffer", "speicher", "cistern", "ballon");
        if (store && any(n, "top", "upper", "hot", "oben", "haut", "high")) return Spot.STORE_TOP;
        if (store && any(n, "bottom", "lower", "low", "cold", "unten", "bas")) return Spot.STORE_BOTTOM;
        if (store && any(n, "mid", "middle", "mitte", "milieu", "centre", "center")) return Spot.STORE_MIDDLE;
        if (store) return null;
        if (any(
                n,
                "outdoor",
                "outdoors",
                "outside",
                "out",
                "exterior",
                "ambient",
                "aussen",
                "außen",
                "north",
                "extérieur")) {
            return Spot.OUTDOOR;
        }
        if (any(n, "flue", "chimney", "stack", "smoke", "abgas", "rauch")) return Spot.FLUE;
        if (any(n, "stove", "ofen", "poêle", "firebox")) return Spot.STOVE;
        if (any(n, "slab", "floor", "concrete", "boden")) return Spot.SLAB;
        if (any(n, "return", "back", "rücklauf", "ruecklauf", "retour")) return Spot.RETURN;
        if (any(n, "flow", "supply", "vorlauf", "outlet", "départ")) return Spot.FLOW;
        if (any(n, "room", "inside", "indoor", "bench", "shop", "air", "raum", "innen", "werkstatt", "atelier")) {
            return Spot.ROOM;
        }
        return null;
    }

    private static boolean any(String name, String... words) {
        for (String w : words) if (name.contains(" " + w + " ")) return true;
        return false;
    }

    /** Why a sensor cannot be where its name says; empty where it can. */
    private static String refuse(Spot named, List<Series> sensors, int i, Spot[] spots) {
        Series s = sensors.get(i);
        double low = s.quantile(0.02) - 273.15;
        double high = s.quantile(0.98) - 273.15;
        String told = describe(s);
        if (named == Spot.ROOM && (high > 45 || low < -40)) return "named like a room, but " + told;
        if (named == Spot.OUTDOOR && high > 45) return "named like outdoors, but " + told;
        if ((named == Spot.STORE_TOP || named == Spot.STORE_BOTTOM) && low < -5)
            return "named like a store, but " + told;
        return "";
    }

    private static String describe(Series s) {
        return String.format(
                Locale.ROOT,
                "it reads %.1f C to %.1f C, %.1f C in the mean",
                s.quantile(0.02) - 273.15,
                s.quantile(0.98) - 273.15,
                s.mean() - 273.15);
    }

    /**
     * Places what no name gave, one by one, where only one place is left that it can be: outdoors is the coldest and lowest,
     * the stove the hottest with the widest spread, the store warm and slow, its top the warmer one.
     */
    private static void byBehaviour(List<Series> sensors, Spot[] spots, String[] why, List<Spot> possible) {
        List<Integer> open = new ArrayList<>();
        for (int i = 0; i < spots.length; i++) if (spots[i] == null && why[i] == null) open.add(i);
        if (open.isEmpty()) return;
        for (int i : open) {
            Series s = sensors.get(i);
            double high = s.quantile(0.98) - 273.15;
            double low = s.quantile(0.02) - 273.15;
            double jump = quickest(s);
            boolean coldest =
                    open.stream().allMatch(k -> k == i || sensors.get(k).mean() > s.mean() + 3);
            if (high > 110 && !taken(spots, Spot.STOVE)) {
                boolean only =
                        open.stream().allMatch(k -> k == i || sensors.get(k).quantile(0.98) - 273.15 < 110);
                if (only) take(spots, why, i, Spot.STOVE, "the only one that hot: " + describe(s));
            } else if (coldest && low < 8 && high < 30 && !taken(spots, Spot.OUTDOOR)) {
                take(spots, why, i, Spot.OUTDOOR, "the coldest: " + describe(s));
            } else if (high < 35 && low > -10 && jump < 6 && !taken(spots, Spot.ROOM)) {
                boolean only = open.stream()
                        .noneMatch(k ->
                                k != i && spots[k] == null && roomy(sensors.get(k)) && !coldestOf(sensors, open, k));
                if (only) take(spots, why, i, Spot.ROOM, "the only one at room temperature: " + describe(s));
            }
        }
        if (!possible.contains(Spot.STORE_TOP)) return;
        List<Integer> warm = new ArrayList<>();
        for (int i : open) {
            Series s = sensors.get(i);
            boolean hot = s.quantile(0.98) - 273.15 > 40 && s.quantile(0.98) - 273.15 < 110;
            if (spots[i] == null && hot && quickest(s) < 12) warm.add(i);
        }
        warm.sort((a, b) -> Double.compare(sensors.get(b).mean(), sensors.get(a).mean()));
        if (warm.size() == 2 && !taken(spots, Spot.STORE_TOP) && !taken(spots, Spot.STORE_BOTTOM)) {
            double apart =
                    sensors.get(warm.get(0)).mean() - sensors.get(warm.get(1)).mean();
            if (apart > 2) {
                take(spots, why, warm.get(0), Spot.STORE_TOP, "the warmer of two slow warm ones");
                take(spots, why, warm.get(1), Spot.STORE_BOTTOM, "the cooler of two slow warm ones");
            }
        } else if (warm.size() == 1 && !taken(spots, Spot.STORE_TOP)) {
            take(
                    spots,
                    why,
                    warm.get(0),
                    Spot.STORE_TOP,
                    "the only slow warm one: " + describe(sensors.get(warm.get(0))));
        }
    }

    private static boolean roomy(Series s) {
        return s.quantile(0.98) - 273.15 < 35 && s.quantile(0.02) - 273.15 > -10 && quickest(s) < 6;
    }

    private static boolean coldestOf(List<Series> sensors, List<Integer> open, int i) {
        return open.stream()
                .allMatch(k -> k == i || sensors.get(k).mean() > sensors.get(i).mean() + 3);
    }

    /** The change within a quarter of an hour that only one in a hundred exceeds, K. */
    private static double quickest(Series s) {
        Series even = s.averaged(900);
        if (even.size() < 3) return 0;
        double[] change = new double[even.size() - 1];
        for (int i = 0; i < change.length; i++) {
            double hours = (even.time()[i + 1] - even.time()[i]) / 900;
            change[i] = hours > 2 ? 0 : Math.abs(even.value()[i + 1] - even.value()[i]);
        }
        java.util.Arrays.sort(change);
        return change[(int) (0.99 * (change.length - 1))];
    }
}
