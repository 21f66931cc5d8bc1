package stokewell.run;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

final class Look {
    public static void main(String[] args) {
        Rig rig = Rigs.pumped();
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
                from, from.plusDays(1), LocalTime.of(7, 30), LocalTime.of(16, 0), 283.15, 300, Simulation.TOLERANCE);
        for (int k = 0; k < Integer.parseInt(args.length > 0 ? args[0] : "1"); k++) {
            Night n = NightRun.run(rig, w, ask);
            if (k % 20 == 0) {
                System.out.printf(
                        "morning room %.2f store %.1f lowest %.2f margin %.1f wood %.1f loads %d share %.2f toBoil %s residual %.2e steps %s ms %.1f states%n",
                        n.morning().room() - 273.15,
                        n.morning().storeMean() - 273.15,
                        n.lowestRoom().room() - 273.15,
                        n.boil().margin(),
                        n.wood(),
                        n.loads(),
                        n.waterShare(),
                        n.minutesToBoil(),
                        n.ledger().relativeResidual(),
                        n.counters(),
                        n.solveMillis());
                System.out.println(n.ledger().accounts());
                System.out.println(n.ledger().meters());
                System.out.println(n.drives());
                if (k == 0) {
                    Trace t = n.trace();
                    for (int i = 0; i < t.size(); i += 6) {
                        StringBuilder b = new StringBuilder();
                        for (String c : java.util.List.of(
                                "room",
                                "outdoors",
                                "stove",
                                "collar",
                                "flue top",
                                "draft",
                                "air",
                                "bed",
                                "store 1",
                                "store 12",
                                "water coil",
                                "loop flow",
                                "runs pump",
                                "runs fan",
                                "power heat released",
                                "power fire to water")) {
                            double v = t.value(c, i);
                            if (v > 200 && v < 1500 && !c.startsWith("power")) v -= 273.15;
                            b.append(String.format("%9.3f", v));
                        }
                        System.out.println(b);
                    }
                }
            }
        }
    }
}
