package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.rig.Contents;
import stokewell.rig.Materials;
import stokewell.rig.Metal;
import stokewell.rig.Safety;
import stokewell.rig.Store;

/** What meets the water and the heat: plastic, rubber, zinc, copper, solder, inhibitor; scald. */
final class MetalRules {

    private static final double K = Subject.K;
    /** Hardness above which a coil furs, mg/L. */
    private static final double HARD = 100;

    private MetalRules() {}

    static void look(Subject s, Findings f) {
        Materials m = s.materials();
        if (soft(m.pickup())) {
            f.stop(
                    "plastic.fire",
                    say("The pickup is of %s.", m.pickup() == Metal.RUBBER ? "rubber" : "plastic"),
                    "It softens at the temperature of the water that it is to make, burns where it runs dry, and lets the water into "
                            + "the fire.",
                    "Black steel, stainless or copper in and on the fire.",
                    "nothing that burns or softens belongs into a firebox: common practice, no source");
        }
        plastic(s, f, m);
        tank(s, f, m);
        zinc(s, f, m);
        mixed(s, f, m);
        inhibitor(s, f, m);
        quality(s, f, m);
        if (Boolean.TRUE.equals(m.soldered())) {
            f.stop(
                    "metal.solder",
                    "Joints in the fire are soldered.",
                    "Soft solder melts at 183 to 240 °C (360 to 460 °F): the first dry minute lets go. Welding it is not the cure "
                            + "alone: stronger is not safer, a way out is.",
                    "Screw, braze or weld what the fire sees, and leave the vent bare.",
                    "accounts of exchangers that let go; makers of solder");
        }
        scald(s, f);
    }

    private static boolean soft(Metal metal) {
        return metal == Metal.PLASTIC || metal == Metal.RUBBER;
    }

    private static void plastic(Subject s, Findings f, Materials m) {
        String basis = "cross-linked polyethylene: 100 psi at 82 °C (180 °F), 80 psi at 93 °C (200 °F); makers' sheets";
        if (m.pipe() == null) {
            f.ask(
                    "plastic.near",
                    "safety.materials.pipe: steel, stainless, copper, galvanised or plastic",
                    "What is the loop's pipe made of?",
                    "Plastic within 1 to 2 m of stove or flue bursts; it has at 50 cm above a flue.",
                    basis);
            return;
        }
        if (!soft(m.pipe()) && Double.isNaN(m.plasticFromStove())) return;
        double away = m.plasticFromStove();
        if (Double.isNaN(away)) {
            f.ask(
                    "plastic.near",
                    "safety.materials.plasticFromStove",
                    "How far is the nearest plastic pipe from stove and flue?",
                    "Within 1 to 2 m it bursts.",
                    basis);
        } else if (away < 2) {
            f.add(
                    away < 1 ? Level.STOP : Level.MEND,
                    "plastic.near",
                    say("Plastic pipe or rubber hose lies %.2f m from stove or flue.", away),
                    "It softens from outside by radiation and from inside by an overheat, and lets hot water go at midnight.",
                    "Metal for the first 2 m (6 ft) from stove and flue, in every direction, also above the flue.",
                    basis);
        } else {
            f.fine("plastic.near", say("The nearest plastic is %.1f m away.", away), "2 m is asked.", basis);
        }
        Drill out = s.drill(Fault.POWER_OUT);
        double hot = out == null
                ? s.hottestWater()
                : Math.max(s.hottestWater(), out.water().temperature());
        if (soft(m.pipe()) && hot > K + 93) {
            f.mend(
                    "plastic.hot",
                    say(
                            "Water reaches %s in a loop of %s.",
                            Telling.degrees(hot), m.pipe() == Metal.RUBBER ? "rubber" : "plastic"),
                    "That is above what the pipe is made for at any pressure.",
                    "Metal from fire to store; plastic only beyond a mixing valve.",
                    basis);
        }
    }

    private static void tank(Subject s, Findings f, Materials m) {
        double hot = s.storeTop();
        if (m.tank() == Metal.PLASTIC && hot > K + 45) {
            f.add(
                    hot > K + 60 ? Level.STOP : Level.MEND,
                    "plastic.tank",
                    "A polyethylene tank at " + Telling.degrees(hot) + ".",
                    "It creeps from 40 to 50 °C (104 to 122 °F) on and lets go as a whole. The 130 °C (266 °F) that is quoted is "
                            + "where it melts.",
                    "Steel, or a lined frame; plastic only for a store below 40 °C.",
                    "makers' sheets: 38 to 49 °C lasting");
        }
        if (m.tank() == Metal.RUBBER && hot > K + 77) {
            f.mend(
                    "plastic.liner",
                    "A rubber liner at " + Telling.degrees(hot) + ".",
                    "EPDM lasts at 71 to 77 °C (160 to 170 °F) and fails soon above 82 °C (180 °F).",
                    "Skip loads by the store's top, at 75 °C.",
                    "builders' experience of EPDM-lined stores");
        }
    }

    private static void zinc(Subject s, Findings f, Materials m) {
        boolean zinc = m.pipe() == Metal.GALVANISED || m.tank() == Metal.GALVANISED || m.pickup() == Metal.GALVANISED;
        if (!zinc) return;
        double hot = s.hottestWater();
        boolean copper = m.pipe() == Metal.COPPER || m.tank() == Metal.COPPER || m.pickup() == Metal.COPPER;
        String basis = "galvanizers' associations; not in every water: plan on an anode and inspection";
        if (m.pickup() == Metal.GALVANISED) {
            f.stop(
                    "zinc.fire",
                    "Galvanised metal in the fire.",
                    "Zinc fumes when it runs dry, and it is gone in weeks.",
                    "Black steel or stainless in the fire.",
                    basis);
        }
        if (hot > K + 60) {
            f.mend(
                    "zinc.hot",
                    "Galvanised steel in water of " + Telling.degrees(hot) + ".",
                    "Above 60 °C (140 °F) zinc may turn from protecting the steel to eating it, in soft water with oxygen.",
                    "Black steel with inhibitor, stainless, or keep it below 60 °C.",
                    basis);
        }
        if (copper) {
            f.mend(
                    "zinc.copper",
                    "Galvanised steel and copper in one water.",
                    "A tenth of a part of copper in a million pits the zinc fast.",
                    "Copper last in the flow, or none; a dielectric break between.",
                    basis);
        }
        if (s.rig().loop().glycol() > 0) {
            f.mend(
                    "zinc.glycol",
                    "Galvanised steel with inhibited glycol.",
                    "Zinc uses the inhibitor up and falls out as sludge.",
                    "No zinc in a glycol loop.",
                    "makers of inhibited glycol (from memory)");
        }
    }

    private static void mixed(Subject s, Findings f, Materials m) {
        boolean copper = m.pipe() == Metal.COPPER || m.pickup() == Metal.COPPER || m.tank() == Metal.COPPER;
        boolean steel = m.pipe() == Metal.STEEL || m.pickup() == Metal.STEEL || m.tank() == Metal.STEEL;
        if (copper && steel) {
            f.mind(
                    "metal.mixed",
                    "Copper and plain steel share the water.",
                    "With the oxygen of an open store the steel goes first, at the joint.",
                    "Copper last in the flow, brass or a dielectric break between, one earth bond, inhibitor.",
                    "galvanic series; practice");
        }
    }

    private static void inhibitor(Subject s, Findings f, Materials m) {
        boolean open = !s.safety().closed();
        String basis =
                "an open treated store was free of rust after 23 years; pH 9 to 10.5 with steel, 7 to 8.5 with aluminium";
        String why = open
                ? "Vented water takes up oxygen without end and rusts plain steel and iron pumps; plastic pipe needs no oxygen "
                        + "barrier here, the water is open anyway."
                : "What the filling brings rusts once; each top-up rusts again.";
        if (m.inhibitor() == null) {
            f.ask(
                    "water.treated",
                    "safety.materials.inhibitor: yes or no",
                    "Is the water treated against rust?",
                    why,
                    basis);
        } else if (!m.inhibitor()) {
            f.mind(
                    "water.treated",
                    "The water is not treated against rust.",
                    why,
                    "Soft water, chloride and sulphate below 25 ppm, an inhibitor for open systems, test strip each autumn; keep "
                            + "the log.",
                    basis);
        } else {
            f.fine("water.treated", "The water is treated.", "Keep the log.", basis);
        }
    }

    /** Hardness and pH, where a strip has told them: lime on the coil, acid in the steel. */
    private static void quality(Subject s, Findings f, Materials m) {
        String basis =
                "an outdoor-heater treatment guide: hardness under 100 ppm, chloride and sulphate under 25; pH 9 to 10.5 with steel";
        if (Double.isNaN(m.hardness())) {
            f.ask(
                    "water.hardness",
                    "safety.materials.hardness: mg/L",
                    "How hard is the water?",
                    "Lime settles where it is hottest, on the coil: 1 mm (1/32 in) takes a tenth of its heat and lets the metal glow "
                            + "beneath.",
                    basis);
        } else if (m.hardness() > HARD) {
            boolean topped = !s.safety().closed();
            f.add(
                    topped ? Level.MEND : Level.MIND,
                    "water.hardness",
                    say("The water holds %.0f ppm of lime.", m.hardness()),
                    say(
                            "One filling of %.0f L leaves up to %.1f kg of it%s.",
                            1000 * Contents.closedPart(s.rig()),
                            Contents.closedPart(s.rig()) * m.hardness() / 1000,
                            topped ? ", and all that boils off or evaporates leaves its own" : ""),
                    "Fill with rain or softened water and an inhibitor; vinegar and a rinse, cold, if the coil has furred.",
                    basis);
        } else {
            f.fine("water.hardness", "The water is soft.", say("%.0f mg/L.", m.hardness()), basis);
        }
        if (Double.isNaN(m.ph())) return;
        boolean steel = m.pipe() == Metal.STEEL || m.pickup() == Metal.STEEL || m.tank() == Metal.STEEL;
        if (m.ph() < 7 || steel && m.ph() < 8.5) {
            f.mend(
                    "water.acid",
                    say("The water's pH is %.1f.", m.ph()),
                    s.rig().loop().glycol() > 0
                            ? "Glycol that has cooked turns acid and eats the loop."
                            : "Steel wants 9 to 10.5; below 8.5 it rusts, below 7 fast.",
                    "Change the water or the glycol, then treat it; test again in a month.",
                    basis);
        }
    }

    private static void scald(Subject s, Findings f) {
        Safety.Tap tap = s.safety().tap();
        double hot = s.storeTop();
        String basis =
                "Moritz and Henriques (1947): 60 °C burns in 3 to 5 s, 55 °C in 17 s, 49 °C in 8 min; EN 806, local code";
        if (tap != null && Double.isNaN(tap.mixedTo()) && hot > K + 50) {
            f.mend(
                    "scald.tap",
                    "The tap gives water of up to " + Telling.degrees(hot) + ".",
                    "60 °C (140 °F) burns a grown skin in seconds, a child's sooner.",
                    "Fit a thermostatic mixing valve set to 48 °C (118 °F), before any tap.",
                    basis);
        } else if (tap != null && tap.mixedTo() > K + 50) {
            f.mend(
                    "scald.tap",
                    "The mixing valve is set to " + Telling.degrees(tap.mixedTo()) + ".",
                    "55 °C (131 °F) burns in 17 s.",
                    "Set it to 48 °C (118 °F).",
                    basis);
        }
        if (s.rig().store().cover() == Store.Cover.OPEN && hot > K + 50) {
            f.mend(
                    "scald.store",
                    "An open tub of water of " + Telling.degrees(hot) + " in the room.",
                    "Who falls in does not live.",
                    "A lid that carries a man, loose enough to let steam out.",
                    basis);
        }
        if (s.rig().loop().supply().insulation() <= 0 && s.hottestWater() > K + 60) {
            f.mind(
                    "scald.pipe",
                    "The hot pipe is bare at " + Telling.degrees(s.hottestWater()) + ".",
                    "Steel above 60 °C burns at a touch.",
                    "Lag it within reach; leave a gravity radiator's pipe bare and out of reach.",
                    "EN ISO 13732-1 touch limits; practice");
        }
    }
}
