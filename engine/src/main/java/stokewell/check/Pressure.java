package stokewell.check;

import stokewell.balance.Wiring;
import stokewell.loop.ExpansionTank;
import stokewell.matter.Water;
import stokewell.network.Plant;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/**
 * Pressure of a loop as its water grows, quasi-static: on an open loop the head of its header, on a closed one the gas law
 * of its vessel at the water temperatures of the run. The engine itself lets a closed loop lose water at the relief's
 * opening pressure and not before; steam that forms sooner only pushes water into the vessel.
 */
final class Pressure {

    private static final double G = 9.80665;
    private static final double FILLED_COLD = 283.15;

    private final Plant plant;
    private final double lowest;
    private final double content;
    private final double taken;

    Pressure(Plant plant) {
        this.plant = plant;
        Rig rig = plant.rig();
        lowest = rig.pickups().stream().mapToDouble(Pickup::elevation).min().orElse(0);
        content = rig.loop() == null ? 0 : Contents.closedPart(rig);
        Safety.Vessel v = rig.safety().vessel();
        taken = v == null
                ? 0
                : ExpansionTank.taken(v.volume(), v.precharge() + plant.pressure(), v.fill() + plant.pressure());
    }

    /** Pressure over the air's at the lowest pickup, Pa. */
    double gauge(double[] x) {
        Rig rig = plant.rig();
        if (rig.loop() == null) return 0;
        if (!rig.safety().closed()) {
            return Water.density(FILLED_COLD)
                    * G
                    * Math.max(0, rig.loop().header().level() - lowest);
        }
        Safety.ReliefValve relief = rig.safety().relief();
        double held = relief == null ? Double.POSITIVE_INFINITY : relief.opens();
        return Math.min(held, vessel(meanLoop(x)));
    }

    /** Pressure that the vessel alone would hold at a mean water temperature, Pa over the air's. */
    double vessel(double mean) {
        Safety.Vessel v = plant.rig().safety().vessel();
        double grown = ExpansionTank.expansion(content, Water.density(FILLED_COLD), Water.density(mean));
        double water = taken + grown;
        if (water >= 0.999 * v.volume()) return Double.POSITIVE_INFINITY;
        double absolute = ExpansionTank.pressure(v.volume(), v.precharge() + plant.pressure(), water);
        return Math.max(0, absolute - plant.pressure());
    }

    /** Where the water of pickup i boils now, K. */
    double saturation(int i, double[] x) {
        double fixed = plant.pickups().get(i).saturation();
        if (!plant.rig().safety().closed()) return fixed;
        double p = Math.min(gauge(x), 2e6);
        return Math.min(fixed, Water.saturationTemperature(plant.pressure() + p));
    }

    /** The height of water over the lowest pickup of an open loop, Pa. */
    static double head(Rig rig) {
        if (rig.loop() == null) return 0;
        double lowest =
                rig.pickups().stream().mapToDouble(Pickup::elevation).min().orElse(0);
        return Water.density(FILLED_COLD) * G * Math.max(0, rig.loop().header().level() - lowest);
    }

    private double meanLoop(double[] x) {
        if (plant.store().length > 0 && plant.rig().store().coil() == null) return plant.storeMean(x);
        double sum = 0;
        double heat = 0;
        for (var p : plant.pickups()) {
            double c = plant.network().capacity(p.water() - Wiring.OUTSIDE);
            heat += c * x[p.water()];
            sum += c;
        }
        return heat / sum;
    }
}
