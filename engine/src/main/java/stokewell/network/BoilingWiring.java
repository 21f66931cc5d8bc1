package stokewell.network;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Wiring;
import stokewell.loop.Vent;
import stokewell.matter.Water;
import stokewell.rig.Rig;
import stokewell.rig.Safety;

/** Where water may boil: its pressure, its boiling point, and the way its steam leaves. */
final class BoilingWiring {

    /** Steam for each kelvin over saturation, W/K: large, so that water hardly overshoots. */
    static final double VENTING = 20000;

    private static final double G = 9.80665;

    private final Wiring wiring;
    private final Rig rig;
    private final double pressure;
    /** Over the air's pressure, Pa. */
    private final double sealed;

    final List<Vent> vents = new ArrayList<>();
    final List<Plant.Boilable> waters = new ArrayList<>();

    BoilingWiring(Wiring wiring, Rig rig, double pressure) {
        this.wiring = wiring;
        this.rig = rig;
        this.pressure = pressure;
        sealed = sealedPressure(rig);
    }

    /** Pressure that a closed loop holds before anything leaves it, Pa above the air's: 0 on an open one. */
    private static double sealedPressure(Rig rig) {
        Safety safety = rig.safety();
        if (!safety.closed()) return 0;
        return safety.relief() == null
                ? safety.vessel().fill()
                : safety.relief().opens();
    }

    /** Saturation temperature under a head of water, K. */
    double saturationAt(double head) {
        return Water.saturationTemperature(pressure + sealed + 960 * G * head);
    }

    /** The same in the store, which a coil keeps apart from a closed loop's pressure. */
    double storeSaturation(double head) {
        boolean apart = rig.store().coil() != null;
        return Water.saturationTemperature(pressure + (apart ? 0 : sealed) + 960 * G * head);
    }

    void vent(String name, int node, double saturation) {
        // a closed loop's steam stands in it until the relief valve opens
        if (rig.safety().closed() && rig.loop() != null && name.equals("supply pipe")) {
            waters.add(new Plant.Boilable(name, node, saturation));
            return;
        }
        Vent vent = new Vent(
                wiring,
                node,
                wiring.account("steam"),
                wiring.meter("steam lost"),
                saturation,
                VENTING,
                Water.latentHeat(saturation));
        vents.add(vent);
        waters.add(new Plant.Boilable(name, node, saturation));
        wiring.add(vent);
    }
}
