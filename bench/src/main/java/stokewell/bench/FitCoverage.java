package stokewell.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stokewell.fit.Estimate;
import stokewell.fit.Fitting;
import stokewell.fit.Spot;

/**
 * How often the interval of a fit holds the truth: shops invented around a rig, each fitted by the rig as its file tells it,
 * on the way that {@code ./stokewell fit} goes: from the first days to those before the nights kept back to all.
 *
 * <p>Arguments: rig file, weather file, first moment, days, runs, seed. {@code -Dwider=1} leaves the intervals as least squares
 * tells them, {@code -Dspoil=} makes the readings worse.
 */
public final class FitCoverage {

    private final InventedShop shop;
    private final double spoil = Double.parseDouble(System.getProperty("spoil", "1"));
    private final double wider = Double.parseDouble(System.getProperty("wider", Double.toString(Fitting.WIDER)));
    private final List<Double> ratios = new ArrayList<>();
    private final int[] held = new int[100];
    private final int[] count = new int[100];
    private final double[] told = new double[100];
    private List<String> names = List.of();
    private double seconds;
    private int engineRuns;
    private int failed;

    private FitCoverage(InventedShop shop) {
        this.shop = shop;
    }

    public static void main(String[] args) throws Exception {
        FitCoverage c = new FitCoverage(InventedShop.of(args[0], args[1], args[2], Integer.parseInt(args[3])));
        int runs = Integer.parseInt(args[4]);
        for (int run = 1; run <= runs; run++) {
            c.one(Long.parseLong(args[5]) + run - 1);
            if (run % 20 == 0 || run == runs) c.tell(run);
        }
    }

    private void one(long seed) {
        InventedShop.Drawn drawn = shop.drawn(seed, spoil, truth -> null);
        long began = System.nanoTime();
        Estimate e;
        try {
            e = Fitting.numbers(shop.rig(), shop.weather(), drawn.invented().readings(), shop.knobs(), share -> true)
                    .widened(wider);
        } catch (IllegalStateException stuck) {
            failed++;
            return;
        }
        seconds += (System.nanoTime() - began) * 1e-9;
        engineRuns += e.runs();
        names = e.unknowns().stream().map(u -> u.name()).toList();
        for (int j = 0; j < names.size(); j++) {
            double right;
            if (j < shop.knobs().size()) right = drawn.factor()[j];
            else if (names.get(j).endsWith(" offset")) {
                right = drawn.invented().offsets().get(Spot.named(names.get(j).replace(" offset", "")));
            } else continue;
            count[j]++;
            told[j] += e.told(j);
            if (Math.abs(e.value()[j] - right) <= e.half(j, Fitting.SURE)) held[j]++;
            ratios.add(Math.abs(e.value()[j] - right) / e.half(j, Fitting.SURE));
        }
    }

    private void tell(int runs) {
        ratios.sort(null);
        if (ratios.isEmpty()) return;
        System.out.printf(Locale.ROOT, "nine in ten errors are less than %.2f times the half width%n", ratios.get((int)
                (0.9 * ratios.size())));
        int all = 0;
        int allHeld = 0;
        for (int j = 0; j < names.size(); j++) {
            if (count[j] == 0) continue;
            System.out.printf(
                    Locale.ROOT,
                    "%-22s held %5.1f %%  told %.2f%n",
                    names.get(j),
                    100.0 * held[j] / count[j],
                    told[j] / count[j]);
            all += count[j];
            allHeld += held[j];
        }
        System.out.printf(
                Locale.ROOT,
                "all %.1f %% of %d intervals of %d shops, %d fits came to no end; %.2f s and %d runs of the engine a fit%n",
                100.0 * allHeld / all,
                all,
                runs - failed,
                failed,
                seconds / runs,
                engineRuns / runs);
    }
}
