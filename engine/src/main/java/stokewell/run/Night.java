package stokewell.run;

import java.time.LocalDateTime;
import java.util.List;
import stokewell.solve.Counters;

/**
 * What a night came to. Temperatures in K, times in s on the clock of the weather (see {@link #at}), heat in J, mass in kg.
 *
 * @param weatherStart    moment of t = 0
 * @param from            start of the run, s
 * @param until           end, s
 * @param start           where it started from, in words
 * @param morning         what stands at the chosen hour
 * @param lowestRoom      of the night: from the hour the night begins on
 * @param limit           the limit that hours are counted against, K
 * @param hoursAbove      hours of the run above it
 * @param hoursCarried    hours from the fire's end until the room first falls below it; NaN if the fire never ends, infinite
 *                        if the room does not fall below it in the run
 * @param boil            least margin to boiling, where and when
 * @param boilingMinutes  minutes with any water at or over saturation
 * @param steam           water lost as steam, kg
 * @param evaporated      water lost from an open surface, kg
 * @param headerLeft      water left in the header, kg; NaN without a loop
 * @param wood            burnt or laid on, kg
 * @param loads           how many
 * @param waterShare      share of the fire's released heat that went into water
 * @param charge          room left in the store against heat still in the stove, at the last load; null without a store
 * @param minutesToBoil   for each pickup: least minutes to boiling if its flow stops
 * @param flueBelowDew    share of burning time with the flue's top below the dew point
 * @param hottestBody     hottest stove body, K
 * @param drives          starts and hours of pump and fans
 */
public record Night(
        String rig,
        LocalDateTime weatherStart,
        double from,
        double until,
        String start,
        Morning morning,
        Lowest lowestRoom,
        double limit,
        double hoursAbove,
        double hoursCarried,
        Boil boil,
        double boilingMinutes,
        double steam,
        double evaporated,
        double headerLeft,
        double wood,
        int loads,
        double waterShare,
        Charge charge,
        List<ToBoil> minutesToBoil,
        double flueBelowDew,
        double hottestBody,
        List<Drive> drives,
        Ledger ledger,
        Trace trace,
        List<Event> events,
        Counters counters,
        double solveMillis) {

    /** At the chosen hour; store temperatures NaN without one. */
    public record Morning(double time, double room, double storeMean, double storeTop) {}

    /** The room's lowest. */
    public record Lowest(double time, double room) {}

    /** The least margin to boiling, K; infinite margin without water. */
    public record Boil(double margin, double time, String where) {}

    /**
     * What no gauge shows.
     *
     * @param time         of the load that leaves the store least room
     * @param roomLeft     heat the store then still takes before it is full, J
     * @param coming       heat that the fire, as it then stands, will still bring into water, J
     * @param full         mean store temperature that counts as full, K
     * @param lastSafeLoad latest time at which one more load of the usual size would still have fitted; NaN: never;
     *                     infinite: at any time
     */
    public record Charge(double time, double roomLeft, double coming, double full, double lastSafeLoad) {}

    /** Least minutes to boiling of a pickup if its flow stops, and when that is. */
    public record ToBoil(String pickup, double minutes, double time) {}

    /** A pump or fan. */
    public record Drive(String name, int starts, double hours) {}

    /** The same night with the time that it took to find, measured by who asked for it. */
    public Night timed(double millis) {
        return new Night(
                rig,
                weatherStart,
                from,
                until,
                start,
                morning,
                lowestRoom,
                limit,
                hoursAbove,
                hoursCarried,
                boil,
                boilingMinutes,
                steam,
                evaporated,
                headerLeft,
                wood,
                loads,
                waterShare,
                charge,
                minutesToBoil,
                flueBelowDew,
                hottestBody,
                drives,
                ledger,
                trace,
                events,
                counters,
                millis);
    }

    /** The local standard time of a time of this run, to the nearest second; null for NaN or infinite. */
    public LocalDateTime at(double time) {
        return Double.isFinite(time) ? weatherStart.plusSeconds(Math.round(time)) : null;
    }
}
