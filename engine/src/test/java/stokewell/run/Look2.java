package stokewell.run;

import java.time.*;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.*;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

final class Look2 {
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
            double tc = 0, ts = 0, tr = 0;
            int days = 0;
            double res = 0;
            Night n = null;
            Simulation sim = null;
            for (int k = 0; k < 60; k++) {
                long t0 = System.nanoTime();
                Plant p = Compiler.compile(rig, w);
                long t1 = System.nanoTime();
                Simulation s = new Simulation(p, 0, 10 * Simulation.TOLERANCE);
                s.place(NightRun.seconds(w, from), p.network().start());
                Settle.Found f = Settle.run(s, NightRun.seconds(w, from));
                long t2 = System.nanoTime();
                s = NightRun.settled(rig, w, ask);
                long t3 = System.nanoTime();
                n = NightRun.record(s, w, ask, "");
                long t4 = System.nanoTime();
                if (k >= 30) {
                    tc += (t1 - t0) * 1e-6 / 30;
                    ts += (t2 - t1) * 1e-6 / 30;
                    tr += (t4 - t3) * 1e-6 / 30;
                }
                days = f.days();
                res = f.residual();
                sim = s;
            }
            System.out.printf(
                    "%-14s n=%d nnz=%d compile %.1f ms settle %.1f ms (%d days, %.3f K) night %.2f ms %s room %.2f store %.1f margin %.1f wood %.1f share %.2f toBoil %s drives %s%n",
                    rig.name(),
                    sim.plant().network().size(),
                    sim.plant().network().pattern().size(),
                    tc,
                    ts,
                    days,
                    res,
                    tr,
                    sim.counters(),
                    n.morning().room() - 273.15,
                    n.morning().storeMean() - 273.15,
                    n.boil().margin(),
                    n.wood(),
                    n.waterShare(),
                    n.minutesToBoil(),
                    n.drives());
        }
    }
}
