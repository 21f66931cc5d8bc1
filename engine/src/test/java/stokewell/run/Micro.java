package stokewell.run;

import java.time.*;
import stokewell.balance.Part;
import stokewell.network.Compiler;
import stokewell.network.Network;
import stokewell.rig.*;
import stokewell.solve.*;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

final class Micro {
    static double time(Runnable r, int n) {
        double best = 1e9;
        for (int k = 0; k < 30; k++) {
            long t = System.nanoTime();
            for (int i = 0; i < n; i++) r.run();
            best = Math.min(best, (System.nanoTime() - t) / (double) n);
        }
        return best;
    }

    public static void main(String[] a) {
        for (Rig rig : Rigs.all()) {
            Weather w = Weather.day(
                    new DayRange(rig.weather().low(), rig.weather().high()),
                    3,
                    0.4,
                    new Site(
                            rig.place().latitude(),
                            rig.place().longitude(),
                            rig.place().utcOffset(),
                            rig.place().altitude()),
                    LocalDate.of(2023, 1, 15),
                    Compiler.surfaces(rig));
            LocalDateTime from = LocalDateTime.of(2023, 1, 16, 8, 0);
            NightRun.Ask ask = new NightRun.Ask(
                    from,
                    from.plusDays(1),
                    LocalTime.of(7, 30),
                    LocalTime.of(16, 0),
                    283.15,
                    300,
                    Simulation.TOLERANCE);
            Simulation s = NightRun.settled(rig, w, ask);
            s.run(s.time() + 4 * 3600);
            Network n = s.plant().network();
            double[] y = s.states().clone();
            double t = s.time();
            double[] f = new double[n.size()],
                    g = new double[n.sums()],
                    J = new double[n.pattern().size()],
                    G = new double[n.sumPattern().size()],
                    ft = new double[n.size()],
                    gt = new double[n.sums()];
            SparseLu lu = new SparseLu(n.pattern());
            double[] sh = new double[n.size()];
            java.util.Arrays.fill(sh, 0.01);
            n.linearize(t, y, J, G, ft, gt);
            double[] b = new double[n.size()];
            double[] out = new double[64];
            System.out.printf(
                    "%-14s n=%d sums=%d rates %.0f linearize %.0f factor %.0f solve %.0f weather %.0f slope %.0f  LU size %d updates %d%n",
                    rig.name(),
                    n.size(),
                    n.sums(),
                    time(() -> n.rates(t, y, f, g), 20000),
                    time(() -> n.linearize(t, y, J, G, ft, gt), 20000),
                    time(() -> lu.factorShifted(sh, J), 20000),
                    time(
                            () -> {
                                System.arraycopy(f, 0, b, 0, b.length);
                                lu.solve(b);
                            },
                            20000),
                    time(() -> w.at(t, out), 20000),
                    time(() -> w.slopeAt(t, out), 20000),
                    lu.factorSize(),
                    lu.updates());
            double[] x = n.columns(t, y).clone();
            double[] p = new double[x.length];
            double[] v = new double[4000];
            java.util.TreeMap<String, double[]> by = new java.util.TreeMap<>();
            for (Part part : n.parts()) {
                double fl = time(() -> part.flows(x, p), 20000), sl = time(() -> part.slopes(x, v), 20000);
                double[] e = by.computeIfAbsent(part.getClass().getSimpleName(), q -> new double[3]);
                e[0] += fl;
                e[1] += sl;
                e[2]++;
            }
            by.forEach((k, e) -> System.out.printf("   %-18s x%.0f flows %.0f slopes %.0f%n", k, e[2], e[0], e[1]));
        }
    }
}
