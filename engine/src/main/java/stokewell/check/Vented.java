package stokewell.check;

import stokewell.loop.Relief;
import stokewell.loop.SealedLoop;
import stokewell.matter.Water;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/** What vent or relief valve of a rig can pass. Heat in W, pressure in Pa over the air's. */
final class Vented {

    /** Discharge of a plain pipe end and of a small relief valve with its derating: common practice. */
    private static final double PIPE = 0.6;

    private static final double VALVE = SealedLoop.DISCHARGE;
    /** Rise over the opening pressure at full lift, share: 10 %, as codes and makers count it. */
    static final double ACCUMULATION = SealedLoop.ACCUMULATION;

    private Vented() {}

    /** Steam through the open vent before the water in the header is pushed over, kg/s. */
    static double ventSteam(double bore, double head, double airPressure) {
        if (head <= 0) return 0;
        double saturation = Water.saturationTemperature(airPressure);
        return PIPE * Math.PI / 4 * bore * bore * Math.sqrt(2 * Water.steamDensity(saturation) * head);
    }

    /** Pressure that a flow of steam needs to leave by the open vent, Pa. */
    static double ventLoss(double bore, double steam, double airPressure) {
        double speed = steam / (PIPE * Math.PI / 4 * bore * bore);
        return speed * speed / (2 * Water.steamDensity(Water.saturationTemperature(airPressure)));
    }

    /**
     * Pressure over the air's at which steam leaves by an open bore, Pa: as {@link #ventLoss} while it is small, beyond half
     * the air's pressure as choked steam by Napier's rule, whichever is more.
     */
    static double back(double bore, double steam, double airPressure) {
        if (steam <= 0) return 0;
        double slow = ventLoss(bore, steam, airPressure);
        if (slow < 0.5 * airPressure) return slow;
        double area = Math.PI / 4 * bore * bore;
        double choked = steam / Relief.napier(PIPE, area, 1) - airPressure;
        return Math.max(0.5 * airPressure, choked);
    }

    /** Heat that a relief valve carries away as steam, W; NaN where neither its tag nor its bore is known. */
    static double valve(Safety.ReliefValve valve, double airPressure) {
        if (!Double.isNaN(valve.rated())) return valve.rated();
        if (Double.isNaN(valve.bore())) return Double.NaN;
        double relieving = valve.opens() * (1 + ACCUMULATION) + airPressure;
        double area = Math.PI / 4 * valve.bore() * valve.bore();
        return Relief.napier(VALVE, area, relieving) * Water.latentHeat(Water.saturationTemperature(relieving));
    }

    /** Capacity of what a rig has, W: 0 for nothing, NaN for not known. */
    static double fitted(Rig rig, double airPressure, double head, boolean ventOpen) {
        Safety s = rig.safety();
        double open = 0;
        if (!s.closed() && ventOpen && rig.loop() != null) {
            double latent = Water.latentHeat(Water.saturationTemperature(airPressure));
            open = ventSteam(rig.loop().header().vent(), head, airPressure) * latent;
        }
        if (s.relief() == null) return open;
        return open + valve(s.relief(), airPressure);
    }

    /**
     * Pressure at which a relief valve passes this heat, Pa over the air's: its opening pressure while it is large enough,
     * above that as steam through a nozzle goes, with the absolute pressure.
     */
    static double valvePressure(Safety.ReliefValve valve, double heat, double airPressure) {
        double capacity = valve(valve, airPressure);
        if (Double.isNaN(capacity)) return Double.NaN;
        if (capacity <= 0) return Double.POSITIVE_INFINITY;
        double full = valve.opens() * (1 + ACCUMULATION);
        if (heat <= capacity) return valve.opens() + (full - valve.opens()) * heat / capacity;
        return (full + airPressure) * heat / capacity - airPressure;
    }
}
