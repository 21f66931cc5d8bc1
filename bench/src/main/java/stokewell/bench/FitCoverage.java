package stokewell.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
    private final Map<String, Number> numbers = new LinkedHashMap<>();
    private double seconds;
    private int engineRuns;
    private int failed;

    /** One number of all shops: errors in half widths of their intervals, and how much was told. */
    private static final class Number {
        private final List<Double> errors = new ArrayList<>();
        private double told;

        int held() {
            return (int) errors.stream().filter(e -> Math.abs(e) <= 1).count();
        }

        double mean() {
            return errors.stream().mapToDouble(e -> e).average().orElse(Double.NaN);
        }

        double rms() {
            return Math.sqrt(errors.stream().mapToDouble(e -> e * e).average().orElse(Double.NaN));
        }
    }

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
        for (int j = 0; j < e.value().length; j++) {
            String name = e.unknowns().get(j).name();
            double right;
            if (j < shop.knobs().size()) right = drawn.factor()[j];
            else if (name.endsWith(" offset"))
                right = drawn.invented().offsets().get(Spot.named(name.replace(" offset", "")));
            else continue;
            Number n = numbers.computeIfAbsent(name, k -> new Number());
            n.errors.add((e.value()[j] - right) / e.half(j, Fitting.SURE));
            n.told += e.told(j);
        }
    }

    private void tell(int runs) {
        int all = 0;
        int allHeld = 0;
        System.out.println("| number | held, % | 90 % interval of that | told | error in half widths: mean | rms |");
        for (Map.Entry<String, Number> of : numbers.entrySet()) {
            Number n = of.getValue();
            int count = n.errors.size();
            double[] ends = FaultTally.binomial(n.held(), count);
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %.1f | %.0f to %.0f | %.2f | %.2f | %.2f |%n",
                    of.getKey(),
                    100.0 * n.held() / count,
                    100 * ends[0],
                    100 * ends[1],
                    n.told / count,
                    n.mean(),
                    n.rms());
            all += count;
            allHeld += n.held();
        }
        if (all == 0) return;
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
