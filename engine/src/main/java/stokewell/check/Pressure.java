package stokewell.check;

import stokewell.matter.Water;
import stokewell.network.Plant;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;

/** Pressure of a loop over the air's: the head of an open one's header; a closed one's as the engine has it. */
final class Pressure {

    private static final double G = 9.80665;
    private static final double FILLED_COLD = 283.15;

    private final Plant plant;
    private final double open;
    private double back;

    Pressure(Plant plant) {
        this.plant = plant;
        open = head(plant.rig());
    }

    /** At the lowest pickup, Pa. */
    double gauge(double[] x) {
        if (plant.loop() == null) return 0;
        return plant.sealed() == null ? open + back : plant.sealed().gauge(x);
    }

    /** What steam that a narrow vent does not pass adds, Pa. */
    void back(double pressure) {
        back = pressure;
    }

    /** Where the water of pickup i boils now, K. */
    double saturation(int i, double[] x) {
        return plant.pickups().get(i).saturation(x);
    }

    /** The height of water over the lowest pickup of an open loop, Pa. */
    static double head(Rig rig) {
        if (rig.loop() == null) return 0;
        double lowest =
                rig.pickups().stream().mapToDouble(Pickup::elevation).min().orElse(0);
        return Water.density(FILLED_COLD) * G * Math.max(0, rig.loop().header().level() - lowest);
    }
}
