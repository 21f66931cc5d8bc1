package stokewell.check;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.EnumSet;
import stokewell.network.Compiler;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.run.NightRun;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

final class LookDrills {
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
            for (int k = 0; k < Integer.parseInt(a[0]); k++) {
                long n0 = System.nanoTime();
                Simulation s = NightRun.settled(rig, w, ask);
                long n1 = System.nanoTime();
                Drills.Outcome o = Drills.run(rig, w, ask, EnumSet.allOf(Fault.class), s);
                long n2 = System.nanoTime();
                if (k == 0) {
                    System.out.println("==== " + rig.name() + " worst at "
                            + o.day().at(o.drills().get(8).start()));
                    for (Drill d : o.drills()) {
                        System.out.printf(
                                "%-14s %-5s boils %s water %.1f@%s metal %.0f p %.0f kPa steam %.1f kg/h heat %.1f need %.1f fit %.1f lost %.2f bare %s freeze %s room %.1f/%.1f stove %.0f top %.0f draft %.1f for %.1fh%n   %s%n",
                                d.fault(),
                                d.level(),
                                d.boils(),
                                d.water().temperature() - 273.15,
                                d.water().where(),
                                d.metal().temperature() - 273.15,
                                d.pressure() / 1000,
                                d.steam() * 3600,
                                d.heat() / 1000,
                                d.reliefNeeded() / 1000,
                                d.reliefFitted() / 1000,
                                d.waterLost(),
                                Telling.span(d.exposed()),
                                Telling.span(d.freezing()),
                                d.roomLowest() - 273.15,
                                d.roomHighest() - 273.15,
                                d.stove() - 273.15,
                                d.storeTop() - 273.15,
                                d.draft(),
                                d.lasted() / 3600,
                                d.sentence());
                        for (Drill.Guard g : d.guards()) System.out.println("      guard " + g);
                    }
                }
                long n3 = System.nanoTime();
                Check c = Check.of(rig, o.day(), o.drills());
                if (k % 5 == 0) System.out.printf("check %.1f ms%n", (System.nanoTime() - n3) * 1e-6);
                if (k == 0)
                    for (Finding f : c.findings())
                        System.out.println(
                                f.level() + " " + f.id() + ": " + f.what() + " | " + f.why() + " | " + f.remedy());
                if (k % 5 == 0)
                    System.out.printf("settle %.0f ms, day+drills %.0f ms%n", (n1 - n0) * 1e-6, (n2 - n1) * 1e-6);
            }
        }
    }
}
