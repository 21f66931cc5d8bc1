package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.loop.Relief;
import stokewell.matter.Water;
import stokewell.rig.Safety;

/** The ways out for steam: open vent, cold feed, relief valve. */
final class OutletRules {

    private static final double BAR = 1e5;
    private static final String NO_VALVE =
            "IMC 1006.5, US state boiler rules, EN 12828: nothing that shuts between a fire and its relief or vent";

    private OutletRules() {}

    static void look(Subject s, Findings f) {
        valve(s, f);
        if (s.safety().closed()) ClosedRules.look(s, f);
        else open(s, f);
        relief(s, f);
    }

    private static void valve(Subject s, Findings f) {
        Boolean valve = s.safety().valveToOpen();
        Drill d = s.drill(Fault.VALVE_SHUT);
        String why =
                "Shut by a hand, by rust or by ice it makes a bomb of the coil: cold water alone gains 5 to 10 bar/K"
                        + (d != null && d.firstBoil() < Double.POSITIVE_INFINITY
                                ? ", and this one boils " + Telling.later(d.firstBoil()) + "."
                                : ".");
        if (valve == null) {
            f.ask(
                    "vent.valve",
                    "safety.valveToOpen: yes or no",
                    "Is there any valve between the fire and the open vent or the relief valve?",
                    why,
                    NO_VALVE);
        } else if (valve) {
            f.stop(
                    "vent.valve",
                    "A valve stands between the fire and its way out.",
                    why,
                    "Take it out, whatever it is good for. No gate, no ball, no check, no strainer: bare pipe.",
                    NO_VALVE);
        } else {
            f.fine("vent.valve", "No valve between the fire and its way out.", "As answered.", NO_VALVE);
        }
    }

    // ---------------------------------------------------------------- open

    private static void open(Subject s, Findings f) {
        Safety.OpenVent v = s.vent();
        double level = s.rig().loop().header().level();
        double top = s.highestPickup();
        double least = HeaderRules.ventRise(s.rig());
        String rule =
                "common practice for open systems; 150 mm and 40 mm a metre of head by the Water Regulations Guide, G20.3";
        if (level <= top) {
            f.stop(
                    "vent.height",
                    say(
                            "The header's water stands at %.2f m, the highest pickup at %.2f m: the vent is below the coil.",
                            level, top),
                    "The coil cannot fill, and steam cannot leave upwards.",
                    "Raise the header above everything that it fills.",
                    rule);
        } else if (level < s.waterTop() && !s.coilInStore()) {
            f.mend(
                    "vent.height",
                    say("The header's water stands at %.2f m, below the store's at %.2f m.", level, s.waterTop()),
                    "Water that stands in one pipe stands at one height: the header would run over until they are even.",
                    "Raise the header, or say the level that there really is.",
                    rule);
        } else {
            f.fine(
                    "vent.height",
                    say("The header stands %.1f m over the coil.", level - top),
                    "It boils at " + Telling.degrees(s.saturation()) + " there.",
                    rule);
        }
        // a header under the coil lets nothing out, however wide its vent
        if (level > top) {
            ventBore(s, f);
            narrow(s, f);
        }
        if (Double.isNaN(v.rise())) {
            f.ask(
                    "vent.rise",
                    "safety.vent.rise",
                    "How far does the open end of the vent stand above the header's water?",
                    say("Below %.0f mm a pump throws water over or draws air in.", 1000 * least),
                    rule);
        } else if (v.rise() < least) {
            f.mend(
                    "vent.rise",
                    say("The vent's end stands %.0f mm above the header's water.", 1000 * v.rise()),
                    "The pump throws water over or draws air in.",
                    say(
                            "Raise it to %.0f mm (%.0f in) at least, ending over the header.",
                            1000 * least, least / 0.0254),
                    rule);
        }
        double end = level + (Double.isNaN(v.rise()) ? least : v.rise());
        double ceiling = s.rig().room().height();
        if (end > ceiling && s.frostyWinter()) {
            f.mind(
                    "vent.ceiling",
                    say("The vent ends at %.2f m, above the ceiling at %.2f m.", end, ceiling),
                    "Over the ceiling it stands in the cold: its end plugs with ice or hoarfrost.",
                    "Hang the header lower, or box in all that stands over the ceiling so that the room warms it.",
                    rule);
        }
        if (v.risesAllTheWay() == null) {
            f.ask(
                    "vent.shape",
                    "safety.vent.risesAllTheWay: yes or no",
                    "Does the vent rise all the way?",
                    "A dip holds water: a slug that steam throws, and in frost a plug.",
                    rule);
        } else if (!v.risesAllTheWay()) {
            f.mend(
                    "vent.shape",
                    "The vent has a dip.",
                    "It holds water: a slug that steam throws, and in frost a plug.",
                    "Lay it so that it rises from the coil to its end.",
                    rule);
        }
        if (s.frostyWinter() && v.warm() == null) {
            f.ask(
                    "vent.frost",
                    "safety.vent.warm: yes or no",
                    "Are the vent and the header where they cannot freeze?",
                    "A vent that is plugged with ice makes a sealed pot of an open rig.",
                    rule);
        } else if (s.frostyWinter() && !v.warm()) {
            f.stop(
                    "vent.frost",
                    "The vent or the header can freeze.",
                    "A vent that is plugged with ice makes a sealed pot of an open rig; the next fire bursts it.",
                    "Bring both inside the warm room; see before every first fire that the vent breathes.",
                    rule);
        }
        feed(s, f);
        if (s.safety().relief() == null) {
            Drill d = s.drill(Fault.VENT_BLOCKED);
            f.add(
                    d != null && d.level().asBadAs(Level.MEND) ? Level.MEND : Level.MIND,
                    "relief.second",
                    "The open vent is the only way out.",
                    "Boiling is harmless only while the vent is clear, unfrozen and wide, and there is still water. Frozen, scaled or "
                            + "nested in, it is none.",
                    "A relief valve of 1.5 bar (20 psi) or less at the stove's hot outlet is a second one, and costs little.",
                    "practice after explosions of frozen coils: relief at the stove itself");
        }
    }

    private static void ventBore(Subject s, Findings f) {
        double heat = s.greatestHeat();
        if (heat <= 0) return;
        double bore = s.rig().loop().header().vent();
        double asked = Relief.ventBore(heat);
        double latent = Water.latentHeat(Water.saturationTemperature(s.air()));
        double passes = Vented.ventSteam(bore, s.head(), s.air()) * latent;
        String basis = "15 + 1.4·√kW mm and 19 mm at least (DIN 4751-1, EN 12828; from memory: have it confirmed)";
        String why = say(
                "The greatest fire gives the water %.1f kW; this vent passes %.0f kW as steam.",
                heat / 1000, passes / 1000);
        if (passes < heat) {
            double wide = Math.max(asked, bore * Math.sqrt(heat / passes));
            f.stop(
                    "vent.bore",
                    say("The open vent of %.0f mm is too narrow.", 1000 * bore),
                    why + " Past that it throws the header's water out.",
                    say("Make it %.0f mm or wider all the way.", Math.ceil(1000 * wide)),
                    basis);
        } else if (bore < asked) {
            f.mend(
                    "vent.bore",
                    say("The open vent of %.0f mm is narrower than the rule asks.", 1000 * bore),
                    why + " Scale and a bird's nest do not leave it so wide.",
                    say("Make it %.0f mm or wider all the way.", Math.ceil(1000 * asked)),
                    basis);
        } else {
            f.fine("vent.bore", say("The open vent is %.0f mm wide.", 1000 * bore), why, basis);
        }
    }

    private static void narrow(Subject s, Findings f) {
        Drill d = s.drill(Fault.VENT_NARROW);
        if (d == null || d.firstBoil() == Double.POSITIVE_INFINITY) return;
        double bore = 1000 * s.rig().loop().header().vent();
        double latent = Water.latentHeat(Water.saturationTemperature(s.air()));
        double passes = Vented.ventSteam(bore / 3000, s.head(), s.air()) * latent;
        f.add(
                d.level().asBadAs(Level.MEND) && d.reliefNeeded() <= d.reliefFitted() ? Level.MIND : d.level(),
                "vent.narrow",
                say(
                        "Furred to a third, %.0f mm of its %.0f mm, the vent passes %.0f kW of the steam.",
                        bore / 3, bore, passes / 1000),
                say(
                        "What does not pass presses %.2f bar on the coil; before it bursts it throws the water out by the feed.",
                        d.pressure() / BAR),
                "Look through it each autumn, with the rig cold; take it wider than the rule asks where the water is hard or birds nest.",
                "a drill; scale, nests and ice: practice");
    }

    private static void feed(Subject s, Findings f) {
        double bore = s.vent().coldFeed();
        double asked = Relief.coldFeedBore(Math.max(1, s.greatestHeat()));
        String basis = "15 + 0.93·√kW mm and 19 mm at least (DIN 4751-1, EN 12828; from memory: have it confirmed)";
        String why = "Water that boils off must come back by a pipe of its own, or the coil runs dry.";
        if (Double.isNaN(bore)) {
            f.ask(
                    "vent.feed",
                    "safety.vent.coldFeed",
                    "How wide is the cold feed from the header to the low return?",
                    why,
                    basis);
        } else if (bore < asked) {
            f.mend(
                    "vent.feed",
                    bore == 0 ? "There is no cold feed." : say("The cold feed is %.0f mm wide.", 1000 * bore),
                    why,
                    say(
                            "Give the header its own pipe of %.0f mm to the low return, with no valve.",
                            Math.ceil(1000 * asked)),
                    basis);
        }
    }

    // ---------------------------------------------------------------- relief

    private static void relief(Subject s, Findings f) {
        Safety.ReliefValve r = s.safety().relief();
        boolean closed = s.safety().closed();
        String basis = "relief at least the greatest fire, in heat or steam (ASME IV, EN 12828; Napier for the nozzle)";
        if (r == null) {
            if (closed) {
                f.stop(
                        "relief.none",
                        "A closed loop without a relief valve.",
                        "The first overheat bursts it.",
                        say(
                                "Fit a valve for %.0f kW at the stove's hot outlet, 3 bar (30 psi) or less.",
                                Math.ceil(s.greatestHeat() / 1000)),
                        basis);
            }
            return;
        }
        double capacity = Vented.valve(r, s.air());
        double heat = s.greatestHeat();
        if (Double.isNaN(capacity)) {
            f.ask(
                    "relief.capacity",
                    "safety.relief.rated (from its tag) or bore",
                    "What heat is the relief valve rated for?",
                    say("The greatest fire gives the water %.1f kW.", heat / 1000),
                    basis);
        } else if (capacity < heat) {
            f.add(
                    closed ? Level.STOP : Level.MEND,
                    "relief.capacity",
                    say(
                            "The relief valve passes %.1f kW, the greatest fire makes %.1f kW.",
                            capacity / 1000, heat / 1000),
                    closed
                            ? say(
                                    "The pressure then goes on to %.1f bar.",
                                    Vented.valvePressure(r, heat, s.air()) / BAR)
                            : "The vent has to take the rest.",
                    say(
                            "Fit one rated for %.0f kW (%.0f kBtu/h) or more.",
                            Math.ceil(heat / 1000), Math.ceil(heat * 3.412 / 1000)),
                    basis);
        } else {
            f.fine(
                    "relief.capacity",
                    say("The relief valve passes %.0f kW.", capacity / 1000),
                    say("The greatest fire makes %.1f kW.", heat / 1000),
                    basis);
        }
        if (r.opens() > 3.05 * BAR) {
            f.mend(
                    "relief.pressure",
                    say("The relief valve opens at %.1f bar.", r.opens() / BAR),
                    "Water then boils at " + Telling.degrees(Water.saturationTemperature(s.air() + r.opens()))
                            + ", and home-made work holds less.",
                    "1.5 to 2.5 bar (20 to 35 psi) is usual with solid fuel; never above what the weakest part is made for.",
                    "30 psi in the US, 3 bar in Europe for heating");
        }
        place(f, closed, r);
    }

    private static void place(Findings f, boolean closed, Safety.ReliefValve r) {
        String basis =
                "IMC 1006, EN 12828: at the heat source, line not closable; discharge full bore, downhill, visible, metal";
        if (r.atStove() == null) {
            f.ask(
                    "relief.place",
                    "safety.relief.atStove: yes or no",
                    "Does the relief valve sit at the stove, on the hot outlet?",
                    "Anywhere else a plug of ice or a shut valve takes it away.",
                    basis);
        } else if (!r.atStove()) {
            f.add(
                    closed ? Level.STOP : Level.MEND,
                    "relief.place",
                    "The relief valve does not sit at the stove.",
                    "A plug of ice or a shut valve between takes it away.",
                    "Put one on the stove's hot outlet, within 1 m, on a pipe that cannot be shut.",
                    basis);
        }
        if (r.clearOutlet() == null) {
            f.ask(
                    "relief.outlet",
                    "safety.relief.clearOutlet: yes or no",
                    "Does the relief valve's outlet run downhill in metal, full bore, with nothing that shuts or plugs it?",
                    "A hose packed with rust is a plug.",
                    basis);
        } else if (!r.clearOutlet()) {
            f.add(
                    closed ? Level.STOP : Level.MEND,
                    "relief.outlet",
                    "The relief valve's outlet can be shut or plugged.",
                    "A hose packed with rust is a plug, and the valve then is none.",
                    "Metal pipe as wide as the valve, downhill, no thread at its end, seen by you. Lift the lever every month "
                            + "over a bucket and write down how much came, and the date.",
                    basis);
        }
    }
}
