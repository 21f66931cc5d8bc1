package stokewell.show;

import stokewell.fit.Saving;

/**
 * A comparison of two periods, and where its numbers come from.
 *
 * @param saving what was found
 * @param source of the numbers
 * @param room   whether the room was measured in both periods
 */
public record SavedFacts(Saving saving, Source source, boolean room) {

    /**
     * Where the numbers come from.
     *
     * @param moisture       whether moistures count, or weights alone
     * @param measuredBefore share of the wood before whose moisture was measured
     * @param measuredAfter  the same after
     * @param moistureBefore mean of it; NaN where none was measured
     * @param moistureAfter  the same after
     * @param watchBefore    the sensor that would have seen a fire nobody noted; empty for none
     * @param watchAfter     the same after
     */
    public record Source(
            boolean moisture,
            double measuredBefore,
            double measuredAfter,
            double moistureBefore,
            double moistureAfter,
            String watchBefore,
            String watchAfter) {}
}
