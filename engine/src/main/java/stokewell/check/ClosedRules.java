package stokewell.check;

import static stokewell.check.Findings.say;

import stokewell.loop.ExpansionTank;
import stokewell.matter.Water;
import stokewell.rig.Contents;
import stokewell.rig.Safety;
import stokewell.rig.Store;

/** A closed loop: what must not be under pressure, what carries the heat away, and the vessel. */
final class ClosedRules {

    private static final double BAR = 1e5;

    private ClosedRules() {}

    static void look(Subject s, Findings f) {
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
                    say("At %.1f bar the wall carries %.0f t/m².", v.fill() / BAR, v.fill() / 9806.65),
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
        float[] gone = s.day().trace().has("let out") ? s.day().trace().column("let out") : new float[0];
        double out = gone.length == 0 ? 0 : gone[gone.length - 1] - gone[0];
        if (out > 0.05) {
            f.stop(
                    "closed.opens",
                    say("The relief valve opens on a normal day and lets out %.1f kg of water.", out),
                    "A valve that opens every day furs up and sticks, and the loop loses the water that carries its heat away.",
                    "A larger vessel, a lower filling pressure, or smaller loads, until the pressure stays below the valve's.",
                    "EN 12828: the end pressure of the vessel stands below the valve's opening");
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
                "EN 12828: V = (Ve + Vr)·pe/(pe − p0), end pressure 0.5 bar under the valve's (formula from memory); what a "
                        + "higher filling takes up beforehand by the gas law";
        if (start >= end) {
            f.mend(
                    "expansion.vessel",
                    "The vessel's precharge is as high as the valve opens.",
                    "It takes no water: the valve opens at every fire.",
                    "Set the precharge to the static head and 0.2 bar more, and the valve above.",
                    basis);
            return;
        }
        double filled = s.air() + v.fill();
        if (filled >= end) {
            f.mend(
                    "expansion.vessel",
                    "The loop is filled to the pressure at which its vessel should be full.",
                    say(
                            "%.1f bar cold; the valve opens at %.1f bar, and what the water grows by must fit between.",
                            v.fill() / BAR, r.opens() / BAR),
                    "Fill it to 0.3 bar over the precharge, and the precharge to the static head and 0.2 bar more.",
                    basis);
            return;
        }
        double needed = Math.max(
                ExpansionTank.vesselVolume(grown, ExpansionTank.reserve(content), start, end),
                ExpansionTank.filledVolume(grown, start, filled, end));
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
}
