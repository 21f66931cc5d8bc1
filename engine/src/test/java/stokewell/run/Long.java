package stokewell.run;

import java.time.*;
import stokewell.network.Compiler;
import stokewell.rig.*;
import stokewell.weather.Hourly;
import stokewell.weather.Site;
import stokewell.weather.Weather;

final class Long {
    static Weather weather(Rig rig) {
        java.util.Random r = new java.util.Random(1);
        int h = 24 * 240;
        double[] T = new double[h], wind = new double[h];
        double slow = 0, v = 3;
        for (int i = 0; i < h; i++) {
            slow = 0.985 * slow + 0.9 * r.nextGaussian();
            v = Math.max(0, 0.9 * v + 0.3 + 0.8 * r.nextGaussian());
            T[i] = 273.15 - 4 - 6 * Math.sin(Math.PI * i / h) + slow - 4 * Math.cos(2 * Math.PI * (i - 3) / 24.0);
            wind[i] = v;
        }
        return Weather.of(
                new Hourly(LocalDateTime.of(2023, 9, 5, 0, 0), T, wind),
                new Site(
                        rig.place().latitude(),
                        rig.place().longitude(),
                        rig.place().utcOffset(),
                        rig.place().altitude()),
                Compiler.surfaces(rig));
    }

    public static void main(String[] a) {
        Rig rig = a[0].equals("pumped") ? Rigs.pumped() : a[0].equals("hall") ? Rigs.hall() : Rigs.thermosiphon();
        Weather w = weather(rig);
        double tol = Double.parseDouble(a[1]);
        int reps = Integer.parseInt(a[2]);
        SeasonRun.Ask ask = new SeasonRun.Ask(
                LocalDateTime.of(2023, 10, 1, 0, 0),
                LocalDateTime.of(2024, 4, 30, 0, 0),
                LocalTime.of(7, 30),
                283.15,
                1800,
                tol);
        Season s = null;
        double best = 1e9;
        for (int k = 0; k < reps; k++) {
            long t0 = System.nanoTime();
            s = SeasonRun.run(rig, w, ask, x -> true);
            s = s.timed((System.nanoTime() - t0) * 1e-6);
            best = Math.min(best, s.solveMillis());
        }
        int starts = s.drives().stream().mapToInt(Night.Drive::starts).sum();
        System.out.printf(
                "%s n? season %.0f ms  steps %d us/step %.2f events %d starts %d wood %.0f loads %d residual %.1e %s%n",
                a[0],
                best,
                s.counters().steps(),
                best * 1e3 / s.counters().steps(),
                s.counters().events(),
                starts,
                s.wood(),
                s.loads(),
                s.ledger().relativeResidual(),
                s.counters());
        if (a.length > 3) {
            SeasonRun.Ask tight = new SeasonRun.Ask(
                    ask.from(), ask.until(), ask.hour(), ask.limit(), ask.step(), Double.parseDouble(a[3]));
            Season q = SeasonRun.run(rig, w, tight, x -> true);
            for (String c : new String[] {"room", "store mean", "store 1"}) {
                if (!s.trace().has(c)) continue;
                double e = 0, m = 0;
                int cnt = 0;
                for (int i = 0; i < s.trace().size(); i++) {
                    double d = s.trace().value(c, i) - q.trace().value(c, i);
                    e += d * d;
                    m = Math.max(m, Math.abs(d));
                }
                System.out.printf(
                        "   %s rms %.4f max %.4f (tight steps %d, wood %.0f vs %.0f)%n",
                        c, Math.sqrt(e / s.trace().size()), m, q.counters().steps(), s.wood(), q.wood());
            }
        }
    }
}
