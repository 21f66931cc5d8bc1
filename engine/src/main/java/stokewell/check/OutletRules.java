package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.loop.ExpansionTank;
import stokewell.loop.Relief;
import stokewell.matter.Water;
import stokewell.rig.Contents;
import stokewell.rig.Safety;
import stokewell.rig.Store;

/** The ways out: open vent, cold feed, relief valve, expansion. */
final class OutletRules {

    private static final double BAR = 1e5;
    /** Vent end over the header's water. */
    private static final double RISE = 0.45;

    private static final String NO_VALVE =
            "IMC 1006.5, US state boiler rules, EN 12828: nothing that shuts between a fire and its relief or vent";

    private OutletRules() {}

    static void look(Subject s, Findings f) {
        valve(s, f);
        if (s.safety().closed()) closed(s, f);
        else open(s, f);
        relief(s, f);
        growth(s, f);
    }

    private static void valve(Subject s, Findings f) {
        Boolean valve = s.safety().valveToOpen();
        Drill d = s.drill(Fault.VALVE_SHUT);
        String why =
                "Shut by a hand, by rust or by ice it makes a bomb of the coil: cold water alone gains 5 to 10 bar a kelvin"
                        + (d != null && d.firstBoil() < Double.POSITIVE_INFINITY
                                ? ", and this one boils " + Telling.span(d.firstBoil()) + " later."
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
        String rule = "common practice for open systems; BS 5449 family, from memory";
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
        ventBore(s, f);
        if (Double.isNaN(v.rise())) {
            f.ask(
                    "vent.rise",
                    "safety.vent.rise",
                    "How far does the open end of the vent stand above the header's water?",
                    "Below 450 mm a pump throws water over or draws air in.",
                    rule);
        } else if (v.rise() < RISE) {
            f.mend(
                    "vent.rise",
                    say("The vent's end stands %.0f mm above the header's water.", 1000 * v.rise()),
                    "The pump throws water over or draws air in.",
                    "Raise it to 450 mm (18 in) at least, ending over the header.",
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
            f.stop(
                    "vent.bore",
                    say("The open vent of %.0f mm is too narrow.", 1000 * bore),
                    why + " Past that it throws the header's water out.",
                    say("Make it %.0f mm or wider all the way.", Math.ceil(1000 * asked)),
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

    // ---------------------------------------------------------------- closed

    private static void closed(Subject s, Findings f) {
        Safety.Vessel v = s.safety().vessel();
        Store store = s.rig().store();
        if (store.cover() != Store.Cover.SEALED && !s.coilInStore()) {
            f.stop(
                    "closed.cover",
                    "The loop is called closed, yet the store it runs through is open.",
                    "A vessel does nothing on it, and a lid that is clamped down later makes it a pressure tank.",
                    "Take the vessel away and keep it vented, or put a coil in the store for a closed loop.",
                    "EN 12828");
        }
        if (!s.coilInStore() && store.shape() instanceof Store.Shape.Square) {
            f.stop(
                    "closed.flat",
                    "A tank with flat walls is under pressure.",
                    say(
                            "At %.1f bar each square metre of wall carries %.0f tonnes.",
                            v.fill() / BAR, v.fill() / 9806.65),
                    "Keep flat tanks vented. Under pressure only a built and stamped round vessel will do.",
                    "pressure vessel codes; plate bending, see store.wall");
        }
        if (!s.coilInStore() && Contents.store(s.rig()) > 0.45) {
            f.mend(
                    "closed.code",
                    say("A closed store of %.0f L is a pressure vessel in law.", 1000 * Contents.store(s.rig())),
                    "Above 119 US gallons (450 L) most places ask for a code stamp.",
                    "Keep it open, or buy a stamped vessel and have it inspected.",
                    "ASME Section IV and VIII as US states apply them; PED in Europe");
        }
        if (s.safety().discharge() == null) {
            f.mend(
                    "closed.discharge",
                    "A closed loop on solid fuel without a thermal discharge valve.",
                    "The fire cannot be switched off; only heat that is carried away saves the loop.",
                    "Fit a thermal discharge valve with a cooling coil, fed by mains that need no pump of yours; or make the loop "
                            + "open.",
                    "EN 12828, EN 303-5: closed solid-fuel systems need a safeguard; EN 16510-2-4 is for open ones only");
        } else {
            Boolean without = s.safety().discharge().withoutPower();
            String basis = "EN 14597 valves; useless where the mains are your own electric pump";
            if (without == null) {
                f.ask(
                        "closed.water",
                        "safety.discharge.withoutPower: yes or no",
                        "Does the discharge valve's water come without your own electric pump?",
                        "In a power cut a well pump stands too.",
                        basis);
            } else if (!without) {
                f.mend(
                        "closed.water",
                        "The discharge valve hangs on your own electric pump.",
                        "In a power cut it has no water, and that is when it is needed.",
                        "Give it a header tank above, or a gravity radiator in its place.",
                        basis);
            }
        }
        vessel(s, f, v);
    }

    private static void vessel(Subject s, Findings f, Safety.Vessel v) {
        Safety.ReliefValve r = s.safety().relief();
        double hot = Math.max(363.15, Double.isNaN(s.hottestWater()) ? 0 : s.hottestWater());
        double content = Contents.closedPart(s.rig());
        double grown = ExpansionTank.expansion(content, Water.density(283.15), Water.density(hot));
        if (r == null) return;
        double end = s.air() + Math.max(0.5 * r.opens(), r.opens() - 0.5 * BAR);
        double start = s.air() + v.precharge();
        String basis =
                "EN 12828: V = (Ve + Vr)·pe/(pe − p0), end pressure 0.5 bar under the valve's (formula from memory)";
        if (start >= end) {
            f.mend(
                    "expansion.vessel",
                    "The vessel's precharge is as high as the valve opens.",
                    "It takes no water: the valve opens at every fire.",
                    "Set the precharge to the static head and 0.2 bar more, and the valve above.",
                    basis);
            return;
        }
        double needed = ExpansionTank.vesselVolume(grown, ExpansionTank.reserve(content), start, end);
        String why = say(
                "%.0f L of water grow by %.1f L to %s; %.0f L of vessel are asked, %.0f L are there.",
                1000 * content, 1000 * grown, Telling.degrees(hot), 1000 * needed, 1000 * v.volume());
        if (v.volume() < needed) {
            f.mend(
                    "expansion.vessel",
                    "The expansion vessel is too small.",
                    why,
                    say("Fit %.0f L or more.", 1000 * needed),
                    basis);
        } else {
            f.fine("expansion.vessel", "The expansion vessel is large enough.", why, basis);
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
                            + "over a bucket and write the litres and the date down.",
                    basis);
        }
    }

    // ---------------------------------------------------------------- growth

    private static void growth(Subject s, Findings f) {
        if (s.safety().closed()) return;
        boolean storeOpen = s.rig().store().cover() != Store.Cover.SEALED;
        double content = storeOpen || s.coilInStore() ? Contents.loop(s.rig()) : Contents.closedPart(s.rig());
        double grown = ExpansionTank.expansion(content, Water.density(283.15), Water.density(363.15));
        double room = ExpansionTank.headerVolume(content, grown);
        f.mind(
                "expansion.header",
                say("The header must have %.0f L of room above its cold level.", 1000 * room),
                say("%.0f L of water grow by %.0f L from 10 to 90 °C (50 to 194 °F).", 1000 * content, 1000 * grown),
                "Mark the cold level; below it leave enough that boiling does not empty it.",
                "what the water grows and 5 % of the content at least: common practice");
    }
}
