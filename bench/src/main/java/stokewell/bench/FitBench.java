package stokewell.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import stokewell.fit.Fit;
import stokewell.fit.Fitting;
import stokewell.fit.Knob;

/**
 * How long a whole fit takes, deviations and all: five-minute readings of an invented shop.
 *
 * <p>Arguments: rig file, weather file, first moment, days, times.
 */
public final class FitBench {

    /** The eight numbers of the bench. */
    static final List<Knob> EIGHT =
            List.of(Knob.WALLS, Knob.LEAKAGE, Knob.JACKET, Knob.EMITTER, Knob.PICKUP, Knob.PUMP, Knob.BURN, Knob.WOOD);

    private FitBench() {}

    public static void main(String[] args) throws Exception {
        InventedShop shop = InventedShop.of(args[0], args[1], args[2], Integer.parseInt(args[3]));
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        List<Knob> knobs = EIGHT.stream().filter(shop.knobs()::contains).toList();
        for (int k = 0; k < Integer.parseInt(args[4]); k++) {
            InventedShop.Drawn drawn = shop.drawn(1 + k, 1, truth -> null);
            long cpu = machine.getProcessCpuTime();
            long began = System.nanoTime();
            Fit fit = Fitting.fit(shop.rig(), shop.weather(), drawn.invented().readings(), knobs, share -> true);
            System.out.printf(
                    Locale.ROOT,
                    "%d days, %d numbers: %.2f s, %.2f s of processors, %d runs, %s%n",
                    shop.days(),
                    fit.estimate().value().length,
                    (System.nanoTime() - began) * 1e-9,
                    (machine.getProcessCpuTime() - cpu) * 1e-9,
                    fit.estimate().runs(),
                    fit.estimate().settled() ? "settled" : "not settled");
        }
    }
}
