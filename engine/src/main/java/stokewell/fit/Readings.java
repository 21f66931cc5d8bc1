package stokewell.fit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stokewell.run.Replay;

/**
 * What was read in a shop, each sensor in its place, and the wood that was noted.
 *
 * @param at    the sensor of each place
 * @param noted loads of wood that were written down
 * @param from  where the readings begin, s on the weather's clock
 * @param until where they end
 */
public record Readings(Map<Spot, Series> at, List<Replay.Load> noted, double from, double until) {

    public Readings {
        at = new EnumMap<>(at);
        noted = List.copyOf(noted);
    }

    /** The sensor at a place; null without one. */
    public Series of(Spot spot) {
        return at.get(spot);
    }

    /** The same from one time to another. */
    public Readings between(double begin, double end) {
        Map<Spot, Series> part = new EnumMap<>(Spot.class);
        at.forEach((spot, series) -> part.put(spot, series.between(begin, end)));
        return new Readings(part, noted, Math.max(from, begin), Math.min(until, end));
    }
}
