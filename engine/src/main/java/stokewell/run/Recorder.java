package stokewell.run;

import java.util.ArrayList;
import java.util.List;
import stokewell.balance.Wiring;
import stokewell.loop.PickupWater;
import stokewell.matter.Water;
import stokewell.network.Driven;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.Pickup;
import stokewell.solve.Interpolant;

/** Watches a run: samples it at even times and keeps what only every step can tell, such as the least boil margin. */
final class Recorder {

    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final double G = 9.80665;

    private final Plant plant;
    private final Network network;
    private final Trace trace;
    private final double from;
    private final double step;
    private final double[] y;
    private final double[] sums;
    private final double[] lastSums;
    private final double[] row;
    private final int[] powerMeters;
    private final int[] waterNode;
    private final double[] saturation;
    private final boolean[] on;
    private final boolean sealed;

    private final double openPressure;
    private final int steamSum;
    private double steamBegan;
    private int next;

    double boilMargin = NEVER;
    double boilMarginTime = Double.NaN;
    String boilMarginWhere = "";
    double boilingSeconds;
    double lowestRoom = NEVER;
    double lowestRoomTime = Double.NaN;
    double hottestBody;
    double flueBelowDewPoint;
    double flueSeconds;
    double[] minutesToBoil;
    double[] minutesToBoilTime;
    boolean boiling;
    double boilingFrom = Double.NaN;
    final List<Event> boilings = new ArrayList<>();

    private static final List<String> POWERS = List.of(
            "heat released",
            "fire to water",
            "stove to room",
            "store's heat to room",
            "store to room",
            "store to floor");

    Recorder(Plant plant, double from, double until, double step) {
        this.plant = plant;
        this.network = plant.network();
        sealed = plant.sealed() != null;
        this.from = from;
        this.step = step;
        y = new double[network.size()];
        sums = new double[network.sums()];
        lastSums = new double[network.sums()];
        on = new boolean[plant.driven().size()];
        int accounts = network.wiring().accounts().size();
        waterNode = plant.waters().stream().mapToInt(Plant.Boilable::node).toArray();
        saturation =
                plant.waters().stream().mapToDouble(Plant.Boilable::saturation).toArray();
        List<String> names = new ArrayList<>(List.of(
                "room", "outdoors", "contents", "stove", "collar", "flue top", "draft", "air", "bed", "boil margin"));
        for (int i = 0; i < plant.store().length; i++) names.add("store " + (i + 1));
        if (plant.store().length > 0) names.add("store mean");
        for (int i = 0; i < plant.pickups().size(); i++) {
            String pickup = plant.rig().pickups().get(i).name();
            names.add("water " + pickup);
            names.add("minutes to boil " + pickup);
        }
        if (plant.loop() != null) {
            names.add("loop flow");
            names.add("pressure");
            names.add("header water");
            names.add("steam lost");
        }
        if (plant.sealed() != null) {
            names.add("steam in the loop");
            names.add("let out");
        }
        openPressure = openPressure(plant);
        steamSum = network.wiring().meters().indexOf("steam lost");
        for (Driven d : plant.driven()) names.add("runs " + d.name());
        List<String> meters = network.wiring().meters();
        List<Integer> known = new ArrayList<>();
        for (String p : POWERS) {
            int at = meters.indexOf(p);
            if (at >= 0) {
                known.add(accounts + at);
                names.add("power " + p);
            }
        }
        powerMeters = known.stream().mapToInt(Integer::intValue).toArray();
        int most = step > 0 ? (int) Math.ceil((until - from) / step) + 2 : 1;
        trace = new Trace(from, step, most, names);
        row = new double[names.size()];
        minutesToBoil = new double[plant.pickups().size()];
        java.util.Arrays.fill(minutesToBoil, NEVER);
        minutesToBoilTime = new double[plant.pickups().size()];
    }

    Trace trace() {
        return trace;
    }

    /** Head of the header over the lowest pickup, Pa over the air's. */
    private static double openPressure(Plant plant) {
        if (plant.loop() == null) return 0;
        double lowest = plant.rig().pickups().stream()
                .mapToDouble(Pickup::elevation)
                .min()
                .orElse(0);
        return 1000 * G * Math.max(0, plant.rig().loop().header().level() - lowest);
    }

    /** The sums at the moment that the recording begins. */
    void begin(double[] startSums) {
        System.arraycopy(startSums, 0, lastSums, 0, lastSums.length);
        if (steamSum >= 0) steamBegan = startSums[network.wiring().accounts().size() + steamSum];
    }

    void running(int i, boolean state) {
        on[i] = state;
    }

    /** One accepted step, and the states at its end. */
    void step(Interpolant between, double[] atEnd) {
        double t1 = between.end();
        double h = t1 - between.start();
        if (step > 0) {
            while (from + next * step <= t1 + 1e-9) {
                double t = from + next * step;
                double at = Math.min(t, t1);
                for (int i = 0; i < y.length; i++) y[i] = between.value(i, at);
                for (int j = 0; j < sums.length; j++) sums[j] = between.sum(j, at);
                sample(t);
                next++;
            }
        }
        double[] x = network.columns(t1, atEnd);
        double room = x[plant.room()];
        if (room < lowestRoom) {
            lowestRoom = room;
            lowestRoomTime = t1;
        }
        hottestBody = Math.max(hottestBody, x[plant.body()]);
        double least = NEVER;
        int where = -1;
        for (int i = 0; i < waterNode.length; i++) {
            double boils = sealed ? plant.saturation(plant.waters().get(i), x) : saturation[i];
            double margin = boils - x[waterNode[i]];
            if (margin < least) {
                least = margin;
                where = i;
            }
        }
        if (least < boilMargin) {
            boilMargin = least;
            boilMarginTime = t1;
            boilMarginWhere = plant.waters().get(where).name();
        }
        boolean now = least <= 0;
        if (now) boilingSeconds += h;
        if (now && !boiling) boilings.add(new Event.BoilingBegan(t1, boilMarginWhere));
        boiling = now;
        if (plant.fire().bed(x) < 0.2) return;
        for (int i = 0; i < minutesToBoil.length; i++) {
            double minutes = minutesIfStopped(x, i);
            if (minutes < minutesToBoil[i]) {
                minutesToBoil[i] = minutes;
                minutesToBoilTime[i] = t1;
            }
        }
        flueSeconds += h;
        double dew = Water.saturationTemperature(plant.pressure() * plant.fire().vapour(x));
        int[] chimney = plant.chimney();
        if (x[chimney[chimney.length - 1]] < dew) flueBelowDewPoint += h;
    }

    /**
     * Minutes until a pickup's water boils if its flow stops now: what its water and metal still take against the heat that
     * the fire gives it. An energy balance with that heat held as it is; a drill follows the fire.
     */
    private double minutesIfStopped(double[] x, int i) {
        PickupWater p = plant.pickups().get(i);
        double boils = p.saturation(x);
        double water = network.capacity(p.water() - Wiring.OUTSIDE) * (boils - x[p.water()]);
        double metal = network.capacity(p.wall() - Wiring.OUTSIDE) * (boils - x[p.wall()]);
        double takes = water + metal;
        if (takes <= 0) return 0;
        double power = plant.heatInto(i, x);
        return power > 1 ? takes / power / 60 : NEVER;
    }

    private void sample(double t) {
        double[] x = network.columns(t, y);
        int c = 0;
        row[c++] = x[plant.room()];
        row[c++] = x[plant.outdoors()];
        row[c++] = x[plant.contents()];
        row[c++] = x[plant.body()];
        row[c++] = plant.fire().collar(x);
        row[c++] = plant.fire().top(x);
        row[c++] = plant.fire().draft(x);
        row[c++] = x[plant.airFlow()];
        row[c++] = plant.fire().bed(x);
        double least = NEVER;
        for (Plant.Boilable b : plant.waters()) least = Math.min(least, plant.saturation(b, x) - x[b.node()]);
        row[c++] = least;
        for (int node : plant.store()) row[c++] = x[node];
        if (plant.store().length > 0) row[c++] = plant.storeMean(x);
        for (int i = 0; i < plant.pickups().size(); i++) {
            row[c++] = x[plant.pickups().get(i).water()];
            row[c++] = minutesIfStopped(x, i);
        }
        if (plant.loop() != null) {
            row[c++] = plant.loop().flow(x);
            row[c++] = plant.sealed() == null ? openPressure : plant.sealed().gauge(x);
            row[c++] = x[plant.header()];
            row[c++] = sums[network.wiring().accounts().size() + steamSum] - steamBegan;
        }
        if (plant.sealed() != null) {
            row[c++] = x[plant.sealed().steam()];
            row[c++] = x[plant.sealed().letOut()];
        }
        for (boolean running : on) row[c++] = running ? 1 : 0;
        for (int m : powerMeters) row[c++] = next == 0 ? 0 : (sums[m] - lastSums[m]) / step;
        System.arraycopy(sums, 0, lastSums, 0, sums.length);
        trace.add(row);
    }
}
