package stokewell.run;

import java.time.*;
import stokewell.rig.*;

final class Steps {
    public static void main(String[] a) {
        Rig rig = a[0].equals("pumped") ? Rigs.pumped() : Rigs.thermosiphon();
        var w = Long.weather(rig);
        NightRun.Ask ask = new NightRun.Ask(
                LocalDateTime.of(2023, 12, 1, 0, 0),
                LocalDateTime.of(2023, 12, 2, 0, 0),
                LocalTime.of(7, 30),
                LocalTime.of(16, 0),
                283.15,
                300,
                4e-3);
        Simulation s = NightRun.settled(rig, w, ask);
        double t0 = s.time();
        long rej = s.counters().rejected();
        double last = s.time();
        while (s.time() < t0 + 86400) {
            long st = s.counters().steps();
            s.run(s.time() + 900);
            long r = s.counters().rejected();
            System.out.printf(
                    "%5.2f h steps %d rejected %d  Tb %.1f bed %.2f m %.4f%n",
                    (s.time() - t0) / 3600,
                    s.counters().steps() - st,
                    r - rej,
                    s.columns()[s.plant().body()] - 273.15,
                    s.plant().fire().bed(s.columns()),
                    s.plant().loop().flow(s.columns()));
            rej = r;
        }
    }
}
