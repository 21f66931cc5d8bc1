package stokewell.run;

import java.util.function.BooleanSupplier;

/**
 * How much time there is to settle a rig.
 *
 * @param near     where a rig that differs little has settled, to begin from; null for none
 * @param mostDays days that may be lived; with fewer than it takes, the best day so far counts
 * @param goOn     asked before every day; false ends it
 */
public record Hurry(Standing near, int mostDays, BooleanSupplier goOn) {

    /** All the time it takes. */
    public static final Hurry NONE = new Hurry(null, Settle.MOST, () -> true);
}
