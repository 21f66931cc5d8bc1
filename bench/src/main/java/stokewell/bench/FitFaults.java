package stokewell.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import stokewell.fit.Fitting;
import stokewell.fit.Knob;
import stokewell.fit.Readings;
import stokewell.fit.Rehearsal;
import stokewell.fit.Rehearsal.Fault;
import stokewell.fit.Spot;
import stokewell.fit.Watch;

/**
 * What a fit says of faults that were put into invented shops from a day on. Each shop is fitted with the days up to the first
 * look after the fault, then up to the second and so on, until a change is told: as a person does who fits again every
 * few days. One line a shop; {@link FaultTally} makes tables of many.
 *
 * <p>Arguments: rig file, weather file, first moment, shops, seed, days before the fault, then the days after it to look
 * at, in order, with commas; then the faults as {@code pump=0.4} or {@code none}, all of {@link #USUAL} without any.
 */
public final class FitFaults {

    /** A small and a large one of each kind. */
    static final List<String> USUAL = List.of(
            "none",
            "wood=0.35",
            "wood=0.6",
            "pickup=0.7",
            "pickup=0.4",
            "pump=0.6",
            "pump=0.3",
            "sensor=0.2",
            "sensor=0.5",
            "jacket=1.7",
            "jacket=3",
            "emitter=0.7",
            "emitter=0.4",
            "leakage=2",
            "leakage=4");

    private final String[] args;
    private final int before;
    private final int[] looks;
    /** Looks go on until a change is so strong: a tally can then take any limit up to it. */
    private final double until = Double.parseDouble(System.getProperty("until", Double.toString(Watch.THRESHOLD)));

    private FitFaults(String[] args) {
        this.args = args;
        before = Integer.parseInt(args[5]);
        String[] days = args[6].split(",");
        looks = new int[days.length];
        for (int i = 0; i < looks.length; i++) looks[i] = Integer.parseInt(days[i]);
    }

    /** Each takes its size: water over dry wood, a factor, the share of the way to the room that a sensor reads. */
    private static Map<String, DoubleFunction<UnaryOperator<Fault>>> kinds() {
        Map<String, DoubleFunction<UnaryOperator<Fault>>> all = new LinkedHashMap<>();
        all.put("none", size -> t -> null);
        all.put("wood", size -> t -> new Fault(0, Rehearsal.wetted(t.rig(), size), 1, null, 0));
        all.put("sensor", size -> t -> new Fault(0, t.rig(), 1, Spot.STORE_TOP, size));
        for (Knob knob : List.of(Knob.PICKUP, Knob.PUMP, Knob.JACKET, Knob.EMITTER, Knob.LEAKAGE)) {
            all.put(
                    knob.name().toLowerCase(Locale.ROOT),
                    size -> t -> new Fault(0, knob.turned(t.rig(), size), 1, null, 0));
        }
        return all;
    }

    public static void main(String[] args) throws Exception {
        FitFaults f = new FitFaults(args);
        List<String> wanted = args.length > 7 ? List.of(args).subList(7, args.length) : USUAL;
        InventedShop shop = InventedShop.of(args[0], args[1], args[2], f.before + f.looks[f.looks.length - 1]);
        // shop by shop, all faults of each: a run that is stopped has some of everything
        for (int s = 0; s < Integer.parseInt(args[3]); s++) {
            for (String fault : wanted) f.one(shop, Long.parseLong(args[4]) + s, fault);
        }
    }

    private void one(InventedShop shop, long seed, String fault) {
        String[] parts = fault.split("=");
        boolean isKnob = !List.of("none", "wood", "sensor").contains(parts[0]);
        if (isKnob && !shop.knobs().contains(Knob.valueOf(parts[0].toUpperCase(Locale.ROOT)))) return;
        double size = parts.length < 2 ? 0 : Double.parseDouble(parts[1]);
        double onset = before * 86400.0 - 2 * 3600;
        InventedShop.Drawn drawn = shop.drawn(seed, 1, t -> {
            Fault f = kinds().get(parts[0]).apply(size).apply(t);
            return f == null ? null : new Fault(onset, f.rig(), f.heat(), f.spot(), f.share());
        });
        Readings all = drawn.invented().readings();
        StringBuilder line = new StringBuilder(args[0] + "," + fault + "," + seed);
        for (int look : looks) {
            Readings some = all.between(0, (before + look) * 86400.0);
            Watch watch;
            try {
                watch = Fitting.watch(shop.rig(), shop.weather(), some, shop.knobs(), share -> true);
            } catch (IllegalStateException stuck) {
                line.append(",").append(look).append(";stuck");
                break;
            }
            line.append(String.format(
                    Locale.ROOT, ",%d;%d;%.1f;%s", before + look, look, watch.strength(), named(watch, onset)));
            if (watch.deviation() != null && watch.strength() > until) break;
        }
        System.out.println(line);
    }

    /** Whether the day was right, and what was named, first first. */
    private static String named(Watch watch, double onset) {
        Watch.Deviation d = watch.deviation();
        if (d == null) return ";";
        boolean near = onset >= d.earliest() - 1.5 * 86400 && onset <= d.latest() + 1.5 * 86400;
        List<String> alike = new ArrayList<>();
        for (Watch.Suspect s : d.alike()) alike.add(s.change().cause().name() + (d.over() ? " one day" : ""));
        return (near ? "near" : "far") + ";" + String.join(" or ", alike);
    }
}
