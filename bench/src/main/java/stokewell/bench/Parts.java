package stokewell.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import stokewell.balance.Part;
import stokewell.balance.Wiring;

/** What each kind of part takes of one evaluation, in mid-burn: its flows, and their slopes. Processor time, best of many. */
public final class Parts {

    private static final int CALLS = 20_000;
    private static final int TRIES = 12;

    private Parts() {}

    public static void main(String[] args) {
        for (String example : args.length > 0 ? args : new String[] {"boat-shed", Cases.LARGEST, "saddlery"})
            show(example);
    }

    private static void show(String example) {
        Standing s = new Standing(example);
        double[] x = s.network.columns(s.t, s.y);
        double[] p = new double[Wiring.OUTSIDE + s.network.size()];
        double[] v = new double[s.network.wiring().slotPlaces().size() + 1];
        Map<String, double[]> kinds = new TreeMap<>();
        for (int turn = 0; turn < 3; turn++) {
            kinds.clear();
            for (Part part : s.network.parts()) {
                double[] kind = kinds.computeIfAbsent(part.getClass().getSimpleName(), k -> new double[3]);
                kind[0]++;
                kind[1] += best(() -> part.flows(x, p));
                kind[2] += best(() -> part.slopes(x, v));
                Arrays.fill(p, 0);
                Arrays.fill(v, 0);
            }
        }
        System.out.printf(Locale.ROOT, "%s: %d states%n", example, s.network.size());
        kinds.forEach((name, k) -> System.out.printf(
                Locale.ROOT, "  %-16s %2.0f: flows %5.0f ns, slopes %5.0f ns%n", name, k[0], k[1], k[2]));
    }

    private static double best(Runnable call) {
        long best = Long.MAX_VALUE;
        for (int k = 0; k < TRIES; k++) {
            long begun = Clock.thread();
            for (int i = 0; i < CALLS; i++) call.run();
            best = Math.min(best, Clock.thread() - begun);
        }
        return (double) best / CALLS;
    }
}
