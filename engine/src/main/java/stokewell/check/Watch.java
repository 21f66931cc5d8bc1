package stokewell.check;

import java.util.Arrays;
import stokewell.balance.Wiring;
import stokewell.loop.PickupWater;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.solve.Interpolant;

/** Watches a run in which something has failed and keeps what counts. Times from the fault. */
final class Watch {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** Steam rates are means over at least this, s. */
    private static final double MINUTE = 60;
    /** Share of a pickup that holds water below which its metal is bare. */
    private static final double BARE = 0.05;
    /** Below this bed nothing burns, kg. */
    private static final double ASHES = 0.1;

    private final Plant plant;
    private final Network network;
    private final Pressure pressure;
    private final double start;
    private final int steamSum;
    private final int[] cold;
    private final double freezingPoint;
    private double windowStart;
    private double windowSteam;
    private double steamAtStart = Double.NaN;

    final double[] boils;
    double hottestWater;
    String hottestWaterWhere = "";
    double hottestWaterAfter;
    double hottestMetal;
    String hottestMetalWhere = "";
    double hottestMetalAfter;
    double steamRate;
    double waterLost;
    double exposed = NEVER;
    double freezing = NEVER;
    String frozenWhere = "";
    double roomLowest = NEVER;
    double roomHighest;
    double stove;
    double storeTop;
    double heat;
    double heatAtBoiling;
    double draft = NEVER;
    double gauge;
    double bed;
    /** Flow of the loop that its own warmth drives, kg/s: the most while the pump stands. */
    double siphon;

    double lasted;
    /** How long a rig was left cold before the fire that is watched, s. */
    double coldSpell;

    Watch(Plant plant, double start) {
        this.plant = plant;
        this.start = start;
        network = plant.network();
        pressure = new Pressure(plant);
        Wiring wiring = network.wiring();
        int at = wiring.meters().indexOf("steam lost");
        steamSum = at < 0 ? -1 : wiring.accounts().size() + at;
        boils = new double[plant.pickups().size()];
        Arrays.fill(boils, NEVER);
        cold = java.util.stream.IntStream.range(0, wiring.states().size())
                .filter(i -> holdsWater(wiring.states().get(i).name()))
                .toArray();
        double glycol = plant.rig().loop() == null ? 0 : plant.rig().loop().glycol();
        freezingPoint = glycol > 0 ? stokewell.matter.Glycol.freezingPoint(glycol) : 273.15;
        windowStart = start;
    }

    private boolean holdsWater(String name) {
        if (name.startsWith("return pipe") || name.startsWith("supply pipe")) return true;
        return plant.rig().pickups().stream().anyMatch(p -> name.equals(p.name() + " water"));
    }

    /** Where the pressure of the loop is reckoned. */
    Pressure pressure() {
        return pressure;
    }

    void step(Interpolant between, double[] y) {
        double t = between.end();
        double after = t - start;
        double[] x = network.columns(t, y);
        double power = 0;
        for (int i = 0; i < boils.length; i++) {
            PickupWater p = plant.pickups().get(i);
            power += Math.max(0, plant.heatInto(i, x));
            double saturation = pressure.saturation(i, x);
            if (boils[i] == NEVER && x[p.water()] >= saturation) boils[i] = crossing(between, p.water(), saturation);
            if (x[p.wall()] > hottestMetal) {
                hottestMetal = x[p.wall()];
                hottestMetalWhere = plant.rig().pickups().get(i).name();
                hottestMetalAfter = after;
            }
            if (exposed == NEVER && x[plant.wet()[i]] < BARE) exposed = after;
        }
        heat = Math.max(heat, power);
        for (Plant.Boilable b : plant.waters()) water(x[b.node()], b.name(), after);
        for (PickupWater p : plant.pickups()) water(x[p.water()], "pickup", after);
        for (int i = 0; i < cold.length && freezing == NEVER; i++) {
            if (y[cold[i]] < freezingPoint) {
                freezing = after;
                frozenWhere = network.wiring().states().get(cold[i]).name();
            }
        }
        roomLowest = Math.min(roomLowest, x[plant.room()]);
        roomHighest = Math.max(roomHighest, x[plant.room()]);
        stove = Math.max(stove, x[plant.body()]);
        if (plant.store().length > 0) storeTop = Math.max(storeTop, x[plant.store()[0]]);
        bed = plant.fire().bed(x);
        if (bed > ASHES) draft = Math.min(draft, plant.fire().draft(x));
        if (plant.loop() != null && !plant.loop().pumping())
            siphon = Math.max(siphon, plant.loop().flow(x));
        gauge = Math.max(gauge, pressure.gauge(x));
        steam(between, power);
    }

    private void water(double t, String where, double after) {
        if (t <= hottestWater) return;
        hottestWater = t;
        hottestWaterWhere = where;
        hottestWaterAfter = after;
    }

    private void steam(Interpolant between, double power) {
        if (steamSum < 0) return;
        double now = between.sum(steamSum, between.end());
        if (Double.isNaN(steamAtStart)) {
            steamAtStart = between.sum(steamSum, between.start());
            windowSteam = steamAtStart;
        }
        waterLost = now - steamAtStart;
        double span = between.end() - windowStart;
        if (span < MINUTE) return;
        double rate = (now - windowSteam) / span;
        if (rate > steamRate) steamRate = rate;
        if (rate > 1e-6) heatAtBoiling = Math.max(heatAtBoiling, power);
        windowStart = between.end();
        windowSteam = now;
    }

    /** The moment in a step at which a state passes a value, s from the fault. */
    private double crossing(Interpolant between, int column, double value) {
        int i = Plant.state(column);
        double low = between.start();
        double high = between.end();
        if (between.value(i, low) >= value) return low - start;
        for (int k = 0; k < 40; k++) {
            double middle = 0.5 * (low + high);
            if (between.value(i, middle) >= value) high = middle;
            else low = middle;
        }
        return high - start;
    }

    double airPressure() {
        return plant.pressure();
    }

    double firstBoil() {
        double least = NEVER;
        for (double b : boils) least = Math.min(least, b);
        return least;
    }
}
