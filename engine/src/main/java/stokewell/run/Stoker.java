package stokewell.run;

import stokewell.balance.Wiring;
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

    /** How long a load is put off when the store is hot enough, s. */
    private static final double LOOK_AGAIN = 1800;

    private final Plant plant;
    /** Mass of solid wood with its water, kg/m3. */
    private final double solid;

    private double waitsUntil = Double.NEGATIVE_INFINITY;
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
        bank(Double.NaN);
    }

    /** Moves what it remembers of the clock when a settled day begins again. */
    void shift(double seconds) {
        waitsUntil += seconds;
    }

    /** What a stoker remembers. */
    record Memory(double waitsUntil, double lastMass, boolean burning) {}

    Memory memory() {
        return new Memory(waitsUntil, lastMass, burning);
    }

    /** Takes over a memory, its clock moved. */
    void take(Memory other, double seconds) {
        waitsUntil = other.waitsUntil + seconds;
        lastMass = other.lastMass;
        burning = other.burning;
    }

    /** A load was left out because the store is hot enough: look again later. */
    void skipped(double t) {
        waitsUntil = t + LOOK_AGAIN;
    }

    boolean burning() {
        return burning;
    }

    double lastMass() {
        return lastMass;
    }

    /** Negative until the rule calls for a load. */
    double ruleCalls(double[] x, double t, double secondOfDay) {
        if (!(plant.rig().habit() instanceof Habit.Rule r)) return -1;
        if (!Driven.within(r.from(), r.until() + 1, secondOfDay) || t < waitsUntil - 1e-6) return -1;
        double cold = r.whenBelow() - x[plant.body()];
        double empty = 10 * (0.35 * r.mass() - plant.fire().bed(x));
        return Math.min(cold, empty);
    }

    /** When the pause after the last load ends: a time at which a run must look again. */
    double pauseEnds() {
        return plant.rig().habit() instanceof Habit.Rule ? waitsUntil : Double.POSITIVE_INFINITY;
    }

    /** Negative while there is more than coals. */
    double coalsOnly(double[] x) {
        if (!burning || !(plant.rig().stove().air() instanceof Stove.Air.Hand)) return -1;
        return 0.05 * lastMass - x[plant.raw()] - x[plant.volatiles()];
    }

    /** Whether a load is left out because the store is hot enough. */
    boolean skips(double[] x) {
        if (plant.store().length == 0) return false;
        double limit = plant.rig().habit() instanceof Habit.Rule r
                ? r.skipAbove()
                : ((Habit.Clock) plant.rig().habit()).skipAbove();
        return x[plant.store()[0]] > limit;
    }

    /**
     * Wood that still fits into the firebox, kg: stacked as tightly as the person's pile, less what lies in it. A bed that
     * the air cannot burn would else grow from day to day without end.
     */
    double fits(double[] x) {
        double full = plant.rig().stove().firebox() * plant.rig().fuel().stackSolid() * solid;
        return full - plant.fire().bed(x);
    }

    /** Puts wood on: adds it to the raw state and opens the air as the hand does. Returns J brought. */
    double load(double[] y, double t, double secondOfDay, double mass) {
        y[plant.raw() - Wiring.OUTSIDE] += mass;
        waitsUntil = t + PAUSE;
        lastMass = mass;
        burning = true;
        setAir(secondOfDay);
        return mass * plant.fire().netHeat();
    }

    /** Banks the fire. */
    void bank(double secondOfDay) {
        burning = false;
        setAir(secondOfDay);
    }

    /** The air as it stands now, share of wide open; NaN under a damper. */
    double setAir(double secondOfDay) {
        Stove.Air air = plant.rig().stove().air();
        double open = Double.NaN;
        if (air instanceof Stove.Air.Hand h) open = burning ? h.burning() : h.banked();
        if (air instanceof Stove.Air.Clock c) open = DayClock.setting(c, Double.isNaN(secondOfDay) ? 0 : secondOfDay);
        if (air instanceof Stove.Air.Damper d) plant.fire().damper(d.setpoint(), d.band(), d.least());
        else plant.fire().open(open);
        return open;
    }
}
