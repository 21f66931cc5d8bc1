package stokewell.check;

import java.util.List;
import stokewell.matter.Atmosphere;
import stokewell.matter.Water;
import stokewell.rig.Contents;
import stokewell.rig.Materials;
import stokewell.rig.Pickup;
import stokewell.rig.Rig;
import stokewell.rig.Safety;
import stokewell.rig.Surroundings;
import stokewell.run.Night;
import stokewell.run.Trace;

/** What the rules look at: a rig, its normal day, its drills. */
record Subject(Rig rig, Night day, List<Drill> drills) {

    static final double K = 273.15;
    private static final double G = 9.80665;

    Safety safety() {
        return rig.safety();
    }

    boolean wet() {
        return rig.loop() != null;
    }

    boolean pumped() {
        return wet() && rig.loop().pump() != null;
    }

    Surroundings around() {
        Surroundings s = rig.safety().surroundings();
        double none = Double.NaN;
        return s != null
                ? s
                : new Surroundings(
                        null, null, null, none, null, none, none, none, none, none, none, null, null, null, null, null,
                        null, null);
    }

    Materials materials() {
        Materials m = rig.safety().materials();
        return m != null
                ? m
                : new Materials(null, Double.NaN, null, null, Double.NaN, null, null, Double.NaN, Double.NaN);
    }

    Safety.OpenVent vent() {
        Safety.OpenVent v = rig.safety().vent();
        return v != null ? v : new Safety.OpenVent(Double.NaN, null, null, Double.NaN, Double.NaN, null);
    }

    /** A drill that was run and can happen, or null. */
    Drill drill(Fault fault) {
        for (Drill d : drills) if (d.fault() == fault && d.possible()) return d;
        return null;
    }

    double air() {
        return Atmosphere.pressure(rig.place().altitude());
    }

    double head() {
        return Pressure.head(rig);
    }

    /** Boiling point in the lowest pickup, K. */
    double saturation() {
        Safety s = safety();
        double sealed =
                s.closed() ? s.relief() == null ? s.vessel().fill() : s.relief().opens() : head();
        return Water.saturationTemperature(air() + sealed);
    }

    /** Most heat that the fire gave the pickups in any drill, W. */
    double greatestHeat() {
        double most = 0;
        for (Drill d : drills) if (d.possible() && d.heat() > most) most = d.heat();
        return most;
    }

    /** Hottest water of the normal day in any part of store or pickups, K; NaN when there was none. */
    double hottestWater() {
        double hottest = Double.NaN;
        for (String n : day.trace().namesLike("water ")) hottest = greatest(n, hottest);
        return greatest("store 1", hottest);
    }

    /** Hottest store top of the normal day, K. */
    double storeTop() {
        return greatest("store 1", Double.NaN);
    }

    double greatest(String column, double atLeast) {
        Trace t = day.trace();
        if (!t.has(column)) return atLeast;
        double most = atLeast;
        for (float v : t.column(column)) if (!(v <= most)) most = v;
        return most;
    }

    /** Height of the store's water surface over the floor, m. */
    double waterTop() {
        return rig.store().elevation() + Contents.depth(rig.store().shape());
    }

    double highestPickup() {
        return rig.pickups().stream().mapToDouble(Pickup::elevation).max().orElse(0);
    }

    boolean coilInStore() {
        return rig.store() != null && rig.store().coil() != null;
    }

    boolean frostyWinter() {
        return rig.weather().low() < K;
    }

    static double waterPressure(double depth) {
        return 1000 * G * depth;
    }
}
