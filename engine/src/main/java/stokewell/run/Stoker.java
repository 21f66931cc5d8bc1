package stokewell.run;

import java.util.function.Consumer;
import stokewell.fire.Burn;
import stokewell.matter.Wood;
import stokewell.network.Driven;
import stokewell.network.Plant;
import stokewell.rig.Fuel;
import stokewell.rig.Habit;
import stokewell.rig.Stove;

/** The person at the stove: loads by clock or by rule, sets the air, banks the fire. Remembers the last load. */
final class Stoker {

    /** Soonest a rule loads again, s: nobody opens the door every minute. */
    private static final double PAUSE = 600;

    /** Firebox gas below which nothing burns any more and a fire must be lit anew, K. */
    private static final double OUT = 390;

    /** Of a load on a dead bed that is split fine, kg, and how long the air then stands wide open, s: common practice. */
    private static final double KINDLING = 0.7;

    private static final double LIGHTING = 900;

    /** Water in a dead bed that a person overlooks, kg. */
    private static final double DAMP = 0.1;

    /** How long a load is put off when store or room is hot enough, s. */
    private static final double LOOK_AGAIN = 1800;

    /** Less room than this in the firebox is no room for a stick, kg. */
    private static final double LEAST = 0.05;

    private final Plant plant;
    /** Mass of solid wood with its water, kg/m3. */
    private final double solid;

    private double waitsUntil = Double.NEGATIVE_INFINITY;
    private double bright = Double.NEGATIVE_INFINITY;
    private double lastMass;
    private boolean burning;

    Stoker(Plant plant) {
        this.plant = plant;
        Fuel fuel = plant.rig().fuel();
        // the compiler has found the species
        solid = Wood.named(fuel.species()).orElseThrow().density(fuel.wetBasis());
        lastMass = plant.rig().habit() instanceof Habit.Rule r
                ? r.mass()
                : ((Habit.Clock) plant.rig().habit())
                        .loads().stream().mapToDouble(Habit.Load::mass).max().orElse(1);
    }

    /** Moves what it remembers of the clock when a settled day begins again. */
    void shift(double seconds) {
        waitsUntil += seconds;
        bright += seconds;
    }

    /** What a stoker remembers. */
    record Memory(double waitsUntil, double bright, double lastMass, boolean burning) {}

    Memory memory() {
        return new Memory(waitsUntil, bright, lastMass, burning);
    }

    /** Takes over a memory, its clock moved. */
    void take(Memory other, double seconds) {
        waitsUntil = other.waitsUntil + seconds;
        bright = other.bright + seconds;
        lastMass = other.lastMass;
        burning = other.burning;
    }

    /** Negative until the rule calls for a load. */
    double ruleCalls(double[] x, double t, double secondOfDay) {
        if (!(plant.rig().habit() instanceof Habit.Rule r)) return -1;
        if (!Driven.within(r.from(), r.until() + 1, secondOfDay) || t < waitsUntil - 1e-6) return -1;
        double cold = r.whenBelow() - x[plant.body()];
        double empty = 10 * (0.35 * r.mass() - plant.fire().bed(x));
        return Math.min(cold, Math.max(empty, OUT - x[plant.gas()]));
    }

    /** The next time at which a run must look again: a pause after a load or the lighting's wide-open air ends. */
    double looksAgain(double t) {
        double next = Double.POSITIVE_INFINITY;
        if (plant.rig().habit() instanceof Habit.Rule && waitsUntil > t + 1e-6) next = waitsUntil;
        return bright > t + 1e-6 ? Math.min(next, bright) : next;
    }

    /** Negative while there is more than coals. */
    double coalsOnly(double[] x) {
        if (!burning || !(plant.rig().stove().air() instanceof Stove.Air.Hand)) return -1;
        return 0.05 * lastMass - x[plant.raw()] - x[plant.volatiles()];
    }

    /** Whether a load is left out, and looked for again later: no room in the firebox, store or room hot enough. */
    boolean leavesOut(double[] x, double wanted, double t, Consumer<Event> told) {
        Habit habit = plant.rig().habit();
        boolean stored = plant.store().length > 0;
        if (Math.min(wanted, fits(x)) < LEAST && !drowned(x)) {
            waitsUntil = t + LOOK_AGAIN;
        } else if (stored && x[plant.store()[0]] > habit.skipAbove()) {
            told.accept(new Event.Skipped(t, x[plant.store()[0]]));
            waitsUntil = t + LOOK_AGAIN;
        } else if (x[plant.room()] > habit.skipRoomAbove()) {
            told.accept(new Event.RoomWarm(t, x[plant.room()]));
            waitsUntil = t + LOOK_AGAIN;
        } else {
            return false;
        }
        return true;
    }

    /** Whether the fire is out under a heap that would drown any new one: more water than wood and coals. */
    boolean drowned(double[] x) {
        double dry = x[plant.volatiles()] + x[plant.carbon()];
        return x[plant.gas()] < OUT && x[plant.fuelWater()] > Math.max(DAMP, dry);
    }

    /** Rakes the bed out, all but what has only just been laid on. Returns J taken out. */
    double rake(double[] y, double[] x) {
        double before = plant.fire().energy(x);
        double raw = x[plant.raw()];
        for (int column : new int[] {plant.fuelWater(), plant.volatiles(), plant.carbon()}) y[Plant.state(column)] = 0;
        return before - raw * plant.fire().netHeat();
    }

    /**
     * Wood that still fits into the firebox, kg: stacked as tightly as the person's pile, less what lies in it. A bed that
     * the air cannot burn would else grow from day to day without end.
     */
    double fits(double[] x) {
        double full = plant.rig().stove().firebox() * plant.rig().fuel().stackSolid() * solid;
        return full - plant.fire().bed(x);
    }

    /**
     * Puts wood on and opens the air as the hand does. On a dead bed it is lit: some of the load is kindling, split fine so that
     * it catches at once, and the air stands wide open until it burns. Returns J brought.
     */
    double load(double[] y, double[] x, double t, double mass) {
        double kindling = 0;
        if (x[plant.gas()] < OUT) {
            kindling = Math.min(mass, KINDLING);
            bright = t + LIGHTING;
        }
        Burn burn = plant.fire().burn();
        y[Plant.state(plant.raw())] += mass - kindling;
        y[Plant.state(plant.fuelWater())] += kindling * burn.moisture();
        y[Plant.state(plant.volatiles())] += kindling * burn.volatileShare();
        y[Plant.state(plant.carbon())] += kindling * burn.charShare();
        waitsUntil = t + PAUSE;
        lastMass = mass;
        burning = true;
        return mass * plant.fire().netHeat();
    }

    /** Banks the fire. */
    void bank() {
        burning = false;
    }

    /** The air as it stands now, share of wide open; NaN under a damper. */
    double setAir(double t, double secondOfDay) {
        Stove.Air air = plant.rig().stove().air();
        double open = Double.NaN;
        if (air instanceof Stove.Air.Hand h) open = burning ? h.burning() : h.banked();
        if (air instanceof Stove.Air.Clock c) open = DayClock.setting(c, secondOfDay);
        if (t < bright - 1e-6) open = 1;
        if (air instanceof Stove.Air.Damper d) plant.fire().inlet().damper(d.setpoint(), d.band(), d.least());
        else plant.fire().inlet().open(open);
        return open;
    }
}
