package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.network.Plant;
import stokewell.rig.Loop;
import stokewell.rig.Pipe;
import stokewell.rig.Pump;
import stokewell.run.Night;

/** The pump: matched to fire and pipe, head at its suction, how often it starts; and what else starts and stops. */
final class PumpRules {

    private PumpRules() {}

    static void look(Subject s, Findings f) {
        speed(s, f);
        suction(s, f);
        cycles(s, f);
    }

    private static void speed(Subject s, Findings f) {
        double flow = s.greatest("loop flow", 0);
        if (!s.pumped() || flow <= 0) return;
        Loop l = s.rig().loop();
        double bore = Math.min(l.supply().bore(), l.back().bore());
        double v = flow / (975 * Math.PI / 4 * bore * bore);
        String basis = "0.3 to 1.2 m/s in hot pipe; 0.6 m/s carries air out on filling: practice";
        if (v > 1.5) {
            f.mend(
                    "pipe.speed",
                    say("Water runs at %.1f m/s in the narrowest pipe.", v),
                    "It wears copper and eats pump power.",
                    "Turn the pump down or take wider pipe.",
                    basis);
        } else if (v < 0.15) {
            f.mind(
                    "pipe.speed",
                    say("Water creeps at %.2f m/s.", v),
                    "Air is not carried along and stays at every high point.",
                    "Let every pipe rise to a vent; purge with the mains at 0.6 m/s when filling.",
                    basis);
        } else {
            f.fine("pipe.speed", say("Water runs at %.1f m/s.", v), "In the usual span.", basis);
        }
        double heat = s.greatest("power fire to water", 0);
        double spread = heat / (flow * 4180);
        if (spread > 20) {
            f.mend(
                    "pump.match",
                    say("At full fire the water comes back %.0f K hotter than it went in.", spread),
                    "Too little flow for this fire: the outlet boils while the store is still cool.",
                    say("It takes %.0f L/min for 10 K.", heat / 41800 * 60),
                    "5 to 15 K across the pickups: practice");
        }
    }

    private static void suction(Subject s, Findings f) {
        if (!s.pumped()) return;
        Pump pump = s.rig().loop().pump();
        double hot = Math.max(s.hottestWater(), 353.15);
        double gauge = s.safety().closed() ? s.safety().vessel().fill() : 0;
        double level = s.safety().closed()
                ? 0
                : s.rig().loop().header().level() - s.rig().store().elevation();
        double there = Suction.available(s.air(), gauge, level, loss(s), Math.min(hot, s.saturation() - 1));
        String basis =
                "net positive suction head; small circulators ask 0.5 to 1 m at 75 °C and 2 to 3 m at 95 °C (makers' sheets)";
        String why = say("At %s there are %.1f m of head at a pump on the return.", Telling.degrees(hot), there);
        double needed = hot > 358 ? 3 : 1;
        if (there < needed) {
            f.mend(
                    "pump.suction",
                    say("The pump of %.0f W runs dry on steam at hot water.", pump.power()),
                    why,
                    "Put it low, on the cool return, with short wide pipe before it, the header above it.",
                    basis);
        } else {
            f.fine(
                    "pump.suction",
                    "The pump has head enough at its suction.",
                    why + " Keep it on the cool return.",
                    basis);
        }
    }

    private static double loss(Subject s) {
        Pipe p = s.rig().loop().back();
        double flow = s.greatest("loop flow", 0);
        double v = flow / (975 * Math.PI / 4 * p.bore() * p.bore());
        double k = 0.03 * p.length() / p.bore() + p.elbows() * 0.9 + p.lossFactors();
        return k * v * v / (2 * 9.80665);
    }

    private static void cycles(Subject s, Findings f) {
        double days = Math.max(1, (s.day().until() - s.day().from()) / 86400);
        for (Night.Drive d : s.day().drives()) {
            if (d.name().equals(Plant.RELIEF)) {
                lifts(d, f);
                continue;
            }
            double starts = d.starts() / days;
            String id = d.name().equals("pump") ? "pump.cycles" : "fan.cycles";
            String basis = "a few starts an hour at most: practice for relays and motors";
            if (starts > 150) {
                f.mend(
                        id,
                        say("The %s starts %.0f times a day.", d.name(), starts),
                        "Relay and motor wear out, and the coil is heated and chilled each time.",
                        "Widen the gap between on and off, move the sensor to the outlet itself, or turn the pump down.",
                        basis);
            } else if (starts > 60) {
                f.mind(
                        id,
                        say("The %s starts %.0f times a day.", d.name(), starts),
                        "Each start chills the coil.",
                        "Widen the gap between on and off.",
                        basis);
            }
        }
    }

    private static void lifts(Night.Drive valve, Findings f) {
        if (valve.starts() == 0) return;
        f.mend(
                "relief.lifts",
                say("The relief valve opens %d times on a normal day.", valve.starts()),
                "Each time fresh water must follow, with oxygen and lime: it then weeps, plugs with mineral and sticks. Never cap "
                        + "a valve that weeps.",
                "A larger vessel at the right precharge, or smaller loads; a new valve after any real blow-off.",
                "the closed loop's own run; practice");
    }
}
