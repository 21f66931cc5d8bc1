package stokewell.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import stokewell.fit.Fitting;
import stokewell.fit.Knob;
import stokewell.fit.Readings;
import stokewell.fit.Rehearsal;
import stokewell.fit.Rehearsal.Fault;
import stokewell.fit.Spot;
import stokewell.fit.Watch;

/**
 * What a fit says of faults that were put into invented shops, from a day on: how many days of the fault it takes, whether the
 * day and the cause are right, and how often it tells of a change where there was none.
 *
 * <p>Arguments: rig file, weather file, first moment, shops, seed, days before the fault, then the days after it to look
 * at, in order, with commas; then the faults, all without any.
 */
public final class FitFaults {

    private final String[] args;
    private final int before;
    private final int[] looks;

    private FitFaults(String[] args) {
        this.args = args;
        before = Integer.parseInt(args[5]);
        String[] days = args[6].split(",");
        looks = new int[days.length];
        for (int i = 0; i < looks.length; i++) looks[i] = Integer.parseInt(days[i]);
    }

    private static Map<String, UnaryOperator<Fault>> faults() {
        Map<String, UnaryOperator<Fault>> all = new LinkedHashMap<>();
        all.put("none", t -> null);
        all.put("wood", t -> new Fault(0, Rehearsal.wetted(t.rig(), 0.45), 1, null, 0));
        all.put("pickup", turned(Knob.PICKUP, 0.5));
        all.put("pump", turned(Knob.PUMP, 0.4));
        all.put("store top sensor loose", t -> new Fault(0, t.rig(), 1, Spot.STORE_TOP, 0.4));
        all.put("jacket", turned(Knob.JACKET, 2.5));
        all.put("emitter", turned(Knob.EMITTER, 0.5));
        all.put("leakage", turned(Knob.LEAKAGE, 3));
        return all;
    }

    private static UnaryOperator<Fault> turned(Knob knob, double factor) {
        return t -> new Fault(0, knob.turned(t.rig(), factor), 1, null, 0);
    }

    public static void main(String[] args) throws Exception {
        FitFaults f = new FitFaults(args);
        List<String> wanted = List.of(args).subList(7, args.length);
        for (Map.Entry<String, UnaryOperator<Fault>> e : faults().entrySet()) {
            if (wanted.isEmpty() || wanted.contains(e.getKey())) f.row(e.getKey(), e.getValue());
        }
    }

    private void row(String name, UnaryOperator<Fault> fault) throws Exception {
        int shops = Integer.parseInt(args[3]);
        int most = looks[looks.length - 1];
        InventedShop shop = InventedShop.of(args[0], args[1], args[2], before + most);
        double onset = before * 86400.0 - 2 * 3600;
        int[] told = new int[looks.length];
        int right = 0;
        int among = 0;
        int wrong = 0;
        int dated = 0;
        List<Double> strengths = new ArrayList<>();
        TreeMap<String, Integer> named = new TreeMap<>();
        for (int s = 0; s < shops; s++) {
            InventedShop.Drawn drawn = shop.drawn(Long.parseLong(args[4]) + s, 1, t -> {
                Fault f = fault.apply(t);
                return f == null ? null : new Fault(onset, f.rig(), f.heat(), f.spot(), f.share());
            });
            Readings all = drawn.invented().readings();
            for (int k = looks.length - 1; k >= 0; k--) {
                Readings some = all.between(0, (before + looks[k]) * 86400.0);
                Watch w = Fitting.watch(shop.rig(), shop.weather(), some, FitBench.EIGHT, share -> true);
                if (k == looks.length - 1) strengths.add(w.strength());
                // what is not seen after many days is not looked for after few
                if (w.deviation() == null) break;
                told[k]++;
                if (k < looks.length - 1) continue;
                List<String> alike = w.deviation().alike().stream()
                        .map(x -> x.change().cause().name())
                        .toList();
                named.merge((w.deviation().over() ? "one day: " : "") + String.join(" or ", alike), 1, Integer::sum);
                if (alike.size() == 1 && alike.contains(name)) right++;
                else if (alike.contains(name)) among++;
                else wrong++;
                boolean near = onset >= w.deviation().earliest() - 1.5 * 86400
                        && onset <= w.deviation().latest() + 1.5 * 86400;
                if (near) dated++;
            }
        }
        strengths.sort(null);
        StringBuilder line = new StringBuilder(String.format(Locale.ROOT, "%-24s told after", name));
        for (int k = 0; k < looks.length; k++) {
            line.append(String.format(Locale.ROOT, " %d d: %d/%d", looks[k], told[k], shops));
        }
        System.out.println(line);
        System.out.printf(
                Locale.ROOT,
                "  after %d d: day right %d, named %d, among those named %d, wrong %d; strengths %s%n  %s%n",
                most,
                dated,
                right,
                among,
                wrong,
                strengths.stream()
                        .map(x -> String.format(Locale.ROOT, "%.0f", x))
                        .toList(),
                named);
    }
}
