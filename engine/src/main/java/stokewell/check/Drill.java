package stokewell.check;

import java.util.List;

/**
 * What happens when one thing fails at the worst moment of a normal day. Temperatures in K, times in s from the fault unless
 * said otherwise; infinite where a thing never happens in the time looked at, NaN where it does not apply.
 *
 * @param fault        what fails
 * @param possible     false where this rig has nothing that can fail so; the rest is then empty
 * @param start        when it fails, on the run's clock, s
 * @param lasted       how long it was followed, s
 * @param boils        when each pickup boils
 * @param water        hottest water
 * @param metal        hottest metal of a pickup
 * @param pressure     highest pressure over the air's at the lowest pickup, Pa; infinite where nothing holds it
 * @param steam        steam made at most, mean of a minute, kg/s
 * @param steamPower   its heat, W
 * @param heat         most heat that fire and plate give all pickups, W: what a relief must carry
 * @param reliefNeeded capacity that steam or heat asks for, W; 0 where nothing boils
 * @param reliefFitted capacity of vent or relief valve, W; NaN where not known, 0 for none
 * @param waterLost    kg
 * @param exposed      when the first metal is bare of water
 * @param freezing     when the first water is at its freezing point
 * @param roomLowest   K
 * @param roomHighest  K
 * @param stove        hottest stove body, K
 * @param storeTop     hottest store top, K
 * @param draft        least draft while anything burns, Pa
 * @param drawn        heat that the pickups take out of the water, back into stove and chimney, J
 * @param flash        what water let into the hot dry metal does; null where the metal is wet
 * @param course       how it went
 * @param guards       what stands between this fault and boiling, and what each buys
 * @param level        how bad the outcome is
 * @param sentence     what happens, how long there is, what to do
 */
public record Drill(
        Fault fault,
        boolean possible,
        double start,
        double lasted,
        List<Boils> boils,
        Hottest water,
        Hottest metal,
        double pressure,
        double steam,
        double steamPower,
        double heat,
        double reliefNeeded,
        double reliefFitted,
        double waterLost,
        double exposed,
        double freezing,
        double roomLowest,
        double roomHighest,
        double stove,
        double storeTop,
        double draft,
        double drawn,
        Flashed flash,
        Course course,
        List<Guard> guards,
        Level level,
        String sentence) {

    public Drill {
        boils = List.copyOf(boils);
        guards = List.copyOf(guards);
    }

    /** When a pickup boils, s from the fault; infinite for never. */
    public record Boils(String pickup, double after) {}

    /** The hottest of something, K, where, and when, s from the fault. */
    public record Hottest(double temperature, String where, double after) {}

    /**
     * A protection and what it buys.
     *
     * @param name    of the protection
     * @param without s to the first boiling without it
     * @param with    s to the first boiling as the rig is
     * @param steam   kg of water that it keeps from boiling off in the time followed
     * @param hottestWithout hottest water without it, K
     * @param hottestWith    hottest water with it, K
     * @param pressureWithout most pressure over the air's without it, Pa; infinite where nothing holds it, NaN where it is no matter
     * @param pressureWith    the same with it, Pa
     * @param heat    that the fire still gives the water in the hour after a hand has done it, a mean, W; NaN of what is no hand
     * @param course  how the other run went: without a protection that is there, or with what a hand can do
     * @param byHand  whether it is something that a hand does, not something that is there
     */
    public record Guard(
            String name,
            double without,
            double with,
            double steam,
            double hottestWithout,
            double hottestWith,
            double pressureWithout,
            double pressureWith,
            double heat,
            Course course,
            boolean byHand) {}

    /**
     * Water let into hot dry metal.
     *
     * @param steam kg in all
     * @param most  kg, had the metal given all its heat above boiling
     * @param peak  most at once, kg/s
     * @param heat  that makes it then, W
     * @param lasts s
     */
    public record Flashed(double steam, double most, double peak, double heat, double lasts) {}

    /** Whether the fire was lit on ice that this rig does not make in the time looked at: told for whoever lights it colder. */
    public boolean withoutIce() {
        return fault == Fault.FROZEN_RUN && possible && freezing == Double.POSITIVE_INFINITY;
    }

    /** When the first pickup boils, s; infinite for never. */
    public double firstBoil() {
        double least = Double.POSITIVE_INFINITY;
        for (Boils b : boils) least = Math.min(least, b.after());
        return least;
    }

    /** The same drill in other words. */
    public Drill told(String words) {
        return new Drill(
                fault,
                possible,
                start,
                lasted,
                boils,
                water,
                metal,
                pressure,
                steam,
                steamPower,
                heat,
                reliefNeeded,
                reliefFitted,
                waterLost,
                exposed,
                freezing,
                roomLowest,
                roomHighest,
                stove,
                storeTop,
                draft,
                drawn,
                flash,
                course,
                guards,
                level,
                words);
    }

    /** A drill of a fault that this rig cannot have. */
    static Drill impossible(Fault fault, String why) {
        return without(fault, why, Level.FINE);
    }

    /** One whose run failed: nobody knows how it ends, so it counts as not passed. */
    static Drill unreckoned(Fault fault, String failure) {
        return without(
                fault,
                "This could not be reckoned (" + failure
                        + "). Count it as not passed, and please report it with the rig file.",
                Level.MEND);
    }

    /** Whether its run failed. */
    public boolean failed() {
        return !possible && level != Level.FINE;
    }

    private static Drill without(Fault fault, String why, Level level) {
        double none = Double.NaN;
        Hottest nothing = new Hottest(none, "", none);
        return new Drill(
                fault,
                false,
                none,
                0,
                List.of(),
                nothing,
                nothing,
                none,
                0,
                0,
                none,
                0,
                none,
                0,
                Double.POSITIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                none,
                none,
                none,
                none,
                none,
                none,
                null,
                Course.NONE,
                List.of(),
                level,
                why);
    }
}
