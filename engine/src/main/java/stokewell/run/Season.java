package stokewell.run;

import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.List;
import stokewell.solve.Counters;

/**
 * What a season came to: autumn to spring under real hours. Temperatures in K, times in s on the weather's clock, heat in J.
 *
 * @param months     calendar months, the first and last as far as the season reaches
 * @param mornings   the coldest mornings, coldest first
 * @param limit      room temperature that hours are counted against, K
 * @param hoursBelow hours of the season below it
 * @param boil       the least margin to boiling
 * @param toppedUp   water that somebody filled up on Saturday evenings, kg
 * @param trace      samples of the whole season
 */
public record Season(
        String rig,
        LocalDateTime weatherStart,
        double from,
        double until,
        String start,
        List<Month> months,
        List<Morning> mornings,
        double limit,
        double hoursBelow,
        Night.Boil boil,
        double boilingMinutes,
        double steam,
        double evaporated,
        double toppedUp,
        double wood,
        int loads,
        double flueBelowDew,
        List<Night.Drive> drives,
        Ledger ledger,
        Trace trace,
        Counters counters,
        double solveMillis) {

    /** One month: wood laid on, kg; hours below the limit; mean room and outdoor temperature, K; degree days to 18 °C, K d. */
    public record Month(
            YearMonth month,
            double days,
            double wood,
            double hoursBelow,
            double meanRoom,
            double meanOutdoors,
            double degreeDays) {}

    /** A morning at the chosen hour. */
    public record Morning(double time, double room, double outdoors, double storeMean) {}

    /** The same season with the time that it took to find, measured by who asked for it. */
    public Season timed(double millis) {
        return new Season(
                rig,
                weatherStart,
                from,
                until,
                start,
                months,
                mornings,
                limit,
                hoursBelow,
                boil,
                boilingMinutes,
                steam,
                evaporated,
                toppedUp,
                wood,
                loads,
                flueBelowDew,
                drives,
                ledger,
                trace,
                counters,
                millis);
    }

    /** The local standard time of a time of this run, to the nearest second; null for NaN or infinite. */
    public LocalDateTime at(double time) {
        return Double.isFinite(time) ? weatherStart.plusSeconds(Math.round(time)) : null;
    }
}
