package stokewell.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import stokewell.balance.Wiring;
import stokewell.loop.PickupWater;
import stokewell.matter.Glycol;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.solve.Interpolant;

/** Watches a run in which something has failed and keeps what counts. Times from the fault. */
final class Watch {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    /** Steam rates are means over at least this, s. */
    private static final double MINUTE = 60;
    /** In which a bare pipe of still water follows the air round it, s: common practice, no source. */
    private static final double FOLLOWS = 3600;
    /** Share of a pickup that holds water below which its metal is bare. */
    private static final double BARE = 0.05;
    /** Between samples of the course, s, and later a hundredth of the time gone. */
    private static final double EVERY = 10;
    /** Below this bed nothing burns, kg. */
    private static final double ASHES = 0.1;

    private Plant plant;
    private Network network;
    private final Pressure pressure;
    private final double start;
    private final int steamSum;
    private final int[] cold;
    private final double freezingPoint;
    private final List<float[]> course = new ArrayList<>();
    private double noted = Double.NEGATIVE_INFINITY;
    private double windowSpan;
    private double windowSteam;

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
    /** Heat that the fire has given the pickups, J. */
    double energy;
    /** The same in the hour after {@link #shut}, J. */
    double energyAfterShut;
    /** When a hand shut the air, s from the fault; infinite for never. */
    double shut = NEVER;
    /** Heat that the pickups have taken out of the water, J. */
    double drawn;
    /** Mean of the store at the end, K. */
    double storeMean = Double.NaN;
    /** Most steam pressure on an open loop over its head, Pa. */
    double choked;

    private double power = Double.NaN;
    /** Water that stands still in header, feed and vent of an open loop, K: it follows the room's air. */
    private double still = Double.NaN;

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
        cold = IntStream.range(0, wiring.states().size())
                .filter(i -> holdsWater(wiring.states().get(i).name()))
                .toArray();
        double glycol = plant.rig().loop() == null ? 0 : plant.rig().loop().glycol();
        freezingPoint = glycol > 0 ? Glycol.freezingPoint(glycol) : 273.15;
    }

    /** Goes on with a plant of the same parts. */
    void onto(Plant other) {
        plant = other;
        network = other.network();
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
        if (course.isEmpty()) {
            double[] begin = new double[y.length];
            for (int i = 0; i < begin.length; i++) begin[i] = between.value(i, between.start());
            note(network.columns(between.start(), begin), 0);
        }
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
        sum(x, power, after, between.end() - between.start());
        for (Plant.Boilable b : plant.waters()) water(x[b.node()], b.name(), after);
        for (PickupWater p : plant.pickups()) water(x[p.water()], "pickup", after);
        for (int i = 0; i < cold.length && freezing == NEVER; i++) {
            if (y[cold[i]] < freezingPoint) {
                freezing = after;
                frozenWhere = network.wiring().states().get(cold[i]).name();
            }
        }
        stands(x[plant.room()], between.end() - between.start(), after);
        roomLowest = Math.min(roomLowest, x[plant.room()]);
        roomHighest = Math.max(roomHighest, x[plant.room()]);
        stove = Math.max(stove, x[plant.body()]);
        if (plant.store().length > 0) storeTop = Math.max(storeTop, x[plant.store()[0]]);
        bed = plant.fire().bed(x);
        if (bed > ASHES) draft = Math.min(draft, plant.fire().draft(x));
        if (plant.loop() != null && !plant.loop().pumping())
            siphon = Math.max(siphon, plant.loop().flow(x));
        gauge = Math.max(gauge, pressure.gauge(x));
        note(x, after);
        steam(between, power);
    }

    /** Nothing that flows warms a header, its feed or its vent. */
    private void stands(double room, double span, double after) {
        if (plant.loop() == null || plant.sealed() != null) return;
        if (Double.isNaN(still)) still = Math.max(room, 273.16);
        still += (room - still) * (1 - Math.exp(-span / FOLLOWS));
        if (freezing == NEVER && still < freezingPoint) {
            freezing = after;
            frozenWhere = "header or vent";
        }
    }

    private void sum(double[] x, double now, double after, double span) {
        double part = 0.5 * ((Double.isNaN(power) ? now : power) + now) * span;
        power = now;
        energy += part;
        if (after > shut && after <= shut + 3600) energyAfterShut += part;
        for (PickupWater p : plant.pickups()) drawn += Math.max(0, -p.heat(x)) * span;
        storeMean = plant.storeMean(x);
    }

    /** Heat that fire and plate give the pickups now, W; NaN before the first step. */
    double power() {
        return power;
    }

    private void note(double[] x, double after) {
        if (plant.pickups().isEmpty() || after - noted < Math.max(EVERY, 0.01 * after)) return;
        noted = after;
        int at = 0;
        double metal = 0;
        for (int i = 0; i < boils.length; i++) {
            PickupWater p = plant.pickups().get(i);
            if (x[p.water()] > x[plant.pickups().get(at).water()]) at = i;
            metal = Math.max(metal, x[p.wall()]);
        }
        double water = x[plant.pickups().get(at).water()];
        course.add(new float[] {(float) after, (float) water, (float) pressure.saturation(at, x), (float) metal});
    }

    /** How it went. */
    Course course() {
        float[][] columns = new float[4][course.size()];
        for (int i = 0; i < course.size(); i++) for (int c = 0; c < 4; c++) columns[c][i] = course.get(i)[c];
        return new Course(columns[0], columns[1], columns[2], columns[3]);
    }

    private void water(double t, String where, double after) {
        if (t <= hottestWater) return;
        hottestWater = t;
        hottestWaterWhere = where;
        hottestWaterAfter = after;
    }

    /** Steam of each step by itself: the sums may begin anew between steps. */
    private void steam(Interpolant between, double power) {
        if (steamSum < 0) return;
        double made = between.sum(steamSum, between.end()) - between.sum(steamSum, between.start());
        waterLost += made;
        windowSteam += made;
        windowSpan += between.end() - between.start();
        if (windowSpan < MINUTE) return;
        double rate = windowSteam / windowSpan;
        if (rate > steamRate) steamRate = rate;
        if (rate > 1e-6) heatAtBoiling = Math.max(heatAtBoiling, power);
        windowSpan = 0;
        windowSteam = 0;
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
