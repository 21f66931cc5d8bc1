package stokewell.check;

import java.util.List;
import stokewell.balance.Wiring;
import stokewell.loop.PickupWater;
import stokewell.matter.Water;
import stokewell.network.Plant;
import stokewell.rig.Safety;
import stokewell.run.Simulation;

/** Follows one run from its fault on, and cools it where a thermal discharge valve does. */
final class Follow {

    /** Steps in which a thermal discharge valve takes its heat, s. */
    private static final double SPLIT = 5;
    /** Below this many kelvin under the valve's opening nothing is looked at closely. */
    private static final double NEAR = 15;
    /** A discharge valve shuts again so far under its opening, K: makers' sheets give 6 to 10. */
    private static final double RESEAT = 8;

    /** Between looks at what a narrow vent passes, and in which its pressure follows, s: the water must warm with it. */
    private static final double CHOKE = 20;

    private static final double SLUGGISH = 60;
    /** So near to where it will stand a boiling point is looked at less often, K. */
    private static final double SETTLED = 0.05;

    private Simulation sim;
    private final Watch watch;
    private final double start;
    private final double length;
    private final Safety.Discharge discharge;
    private double bore = Double.NaN;
    private double back;
    private double raised;
    private double wanted;

    private Follow(Simulation sim, double length, Safety.Discharge discharge) {
        this.sim = sim;
        this.discharge = discharge;
        start = sim.time();
        this.length = length;
        watch = new Watch(sim.plant(), start);
        sim.watch(watch::step);
    }

    /** Follows with everything that the rig has and that needs no power. */
    static Follow of(Stage stage, Simulation sim, double length) {
        return new Follow(
                sim,
                Math.min(length, stage.longest()),
                passive(sim.plant().rig().safety()));
    }

    /** Follows with its thermal discharge valve taken away. */
    static Follow undischarged(Stage stage, Simulation sim, double length) {
        return new Follow(sim, Math.min(length, stage.longest()), null);
    }

    /** The discharge valve that works without power, or null. */
    static Safety.Discharge passive(Safety safety) {
        Safety.Discharge d = safety.discharge();
        return d != null && Boolean.TRUE.equals(d.withoutPower()) ? d : null;
    }

    /** Steam that this bore does not pass at once presses on an open loop's water from here on, and raises where it boils. */
    Follow through(double ventBore) {
        bore = ventBore;
        return this;
    }

    /** A hand shuts the air now. */
    Follow shutNow() {
        watch.shut = sim.time() - start;
        return this;
    }

    /** Goes on until some seconds after the fault. */
    Follow until(double after) {
        double stop = start + Math.min(after, length);
        if (!Double.isNaN(bore)) choked(stop);
        else go(stop);
        watch.lasted = sim.time() - start;
        return this;
    }

    /** Goes on with a simulation that stands where this one has come to. */
    Follow onto(Simulation next) {
        sim.watch(null);
        sim = next;
        watch.onto(next.plant());
        sim.watch(watch::step);
        return this;
    }

    private void choked(double stop) {
        Plant plant = sim.plant();
        double air = plant.pressure();
        double head = Pressure.head(plant.rig());
        double cold = Water.saturationTemperature(air + head);
        while (sim.time() < stop - 1e-6) {
            double from = sim.time();
            go(Math.min(stop, from + (Math.abs(raised - wanted) > SETTLED ? CHOKE : 6 * CHOKE)));
            double span = sim.time() - from;
            double steam = boils() ? Math.max(0, watch.power()) / Water.latentHeat(cold) : 0;
            double loss = Vented.back(bore, steam, air);
            wanted = loss < 1 ? 0 : Water.saturationTemperature(air + head + loss) - cold;
            back += (loss - back) * span / (span + SLUGGISH);
            watch.choked = Math.max(watch.choked, back);
            watch.pressure().back(back);
            double up = back < 1 ? 0 : Water.saturationTemperature(air + head + back) - cold;
            if (Math.abs(up - raised) < 0.5 * SETTLED) continue;
            raised = up;
            sim.intervene(y -> Stage.press(plant, up));
        }
    }

    private boolean boils() {
        double[] x = sim.columns();
        for (PickupWater p : sim.plant().pickups()) if (x[p.water()] > p.saturation(x) - 2) return true;
        return false;
    }

    private void go(double stop) {
        if (discharge == null) sim.run(stop);
        else cooled(stop);
    }

    private void cooled(double stop) {
        while (sim.time() < stop - 1e-6) {
            double hot = hottestPickup();
            boolean open = hot > discharge.opens();
            boolean near = hot > discharge.opens() - NEAR;
            sim.run(Math.min(stop, sim.time() + (open ? SPLIT : near ? 2 * SPLIT : 2 * Stage.MINUTE)));
            if (open) takeHeat(SPLIT);
        }
    }

    private double hottestPickup() {
        double[] x = sim.columns();
        double hot = 0;
        for (PickupWater p : sim.plant().pickups()) hot = Math.max(hot, x[p.water()]);
        return hot;
    }

    private void takeHeat(double seconds) {
        List<PickupWater> pickups = sim.plant().pickups();
        double each = discharge.power() * seconds / pickups.size();
        sim.intervene(y -> {
            for (PickupWater p : pickups) {
                int i = p.water() - Wiring.OUTSIDE;
                double floor = discharge.opens() - RESEAT;
                double down = each / sim.plant().network().capacity(i);
                if (y[i] > floor) y[i] = Math.max(floor, y[i] - down);
            }
        });
    }

    /** Goes on to the end of the time. */
    Watch whole() {
        return until(length).watch;
    }

    /** Goes on to the end of the time, or until the first water is at its freezing point. */
    Watch untilFrozen() {
        for (double after = 0; after < length && watch.freezing == Double.POSITIVE_INFINITY; ) {
            after = Math.min(length, after + Stage.DAY);
            until(after);
        }
        return watch;
    }

    /** Goes on through the fires of another day, or until something boils and is bare or burnt out. */
    Watch fires(double from) {
        double after = from;
        double end = Math.min(length, from + Stage.DAY);
        while (after < end - 1) {
            after = Math.min(end, after + 20 * Stage.MINUTE);
            until(after);
            if (watch.firstBoil() < after - 2 * Stage.HOUR || watch.exposed < after) break;
        }
        return watch;
    }

    /** Goes on until the fire is out and nothing grows hotter, or the time is over. */
    Watch out(boolean tillAshes) {
        double after = sim.time() - start;
        while (after < length - 1) {
            after = Math.min(length, after + 20 * Stage.MINUTE);
            until(after);
            boolean quiet = after - watch.hottestWaterAfter > 15 * Stage.MINUTE;
            boolean down = watch.bed < (tillAshes ? 0.1 : 0.5);
            if (down && quiet && after > 40 * Stage.MINUTE) break;
            // bare metal at its hottest tells no more
            if (watch.exposed < after - Stage.HOUR) break;
        }
        watch.lasted = sim.time() - start;
        return watch;
    }
}
