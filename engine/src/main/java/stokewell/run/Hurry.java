package stokewell.run;

import java.util.function.BooleanSupplier;

/**
 * How much time there is to settle a rig.
 *
 * @param near      where a rig that differs little has settled, to begin from; null for none
 * @param mostDays  days that may be lived; with fewer than it takes, the best that is known by then counts
 * @param livedDays days lived through before a night in weather that does not repeat, at most; what the days before them
 *                  change is taken from {@code near}
 * @param goOn      asked before every day; false ends it
 */
public record Hurry(Standing near, int mostDays, int livedDays, BooleanSupplier goOn) {

    /** All the time it takes. */
    public static final Hurry NONE = new Hurry(null, Settle.MOST, NightRun.LIVED_DAYS, () -> true);

    /** As much time, but from nowhere. */
    Hurry alone() {
        return new Hurry(null, Settle.MOST, NightRun.LIVED_DAYS, goOn);
    }
}
