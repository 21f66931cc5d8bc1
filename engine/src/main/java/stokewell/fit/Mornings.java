package stokewell.fit;

import java.util.ArrayList;
import java.util.List;
import stokewell.run.Replay;

/** The moments at which the rig is set to its sensors: at the start, then every day before the fire is lit. */
final class Mornings {

    private static final double DAY = 86400;
    /** Second of the day at which the rig is set to its sensors. */
    private static final double HOUR = 5 * 3600;

    private final Readings readings;
    private final int layers;
    private final List<Double> times = new ArrayList<>();

    /**
     * @param layers of the store
     * @param origin second of the day at t = 0
     * @param lead   so long nothing is set after the start, s
     */
    Mornings(Readings readings, int layers, double origin, double lead) {
        this.readings = readings;
        this.layers = layers;
        double first = readings.from();
        times.add(first + 1);
        double day = Math.floor((origin + first) / DAY) * DAY - origin;
        for (double t = day + HOUR; t < readings.until(); t += DAY) if (t > first + lead) times.add(t);
    }

    List<Double> times() {
        return times;
    }

    /** @param change of a sensor, whose readings are then taken back to what they would be; null for none */
    List<Replay.Anchor> anchors(Change change) {
        return times.stream().map(t -> anchor(t, change)).toList();
    }

    private Replay.Anchor anchor(double t, Change change) {
        double room = about(Spot.ROOM, t, change);
        double top = about(Spot.STORE_TOP, t, change);
        double middle = about(Spot.STORE_MIDDLE, t, change);
        double bottom = about(Spot.STORE_BOTTOM, t, change);
        int high = topLayer(layers);
        int low = bottomLayer(layers);
        if (Double.isNaN(top)) {
            top = middle;
            high = layers / 2;
        }
        if (Double.isNaN(bottom)) {
            bottom = middle;
            low = layers / 2;
        }
        if (Double.isNaN(top)) {
            top = bottom;
            high = low;
        }
        if (Double.isNaN(bottom)) {
            bottom = top;
            low = high;
        }
        return new Replay.Anchor(t, room, top, high, bottom, low);
    }

    private double about(Spot spot, double t, Change change) {
        double read = read(spot, t);
        // the hour around a change is half of the one and half of the other
        if (change == null || !change.at(t + 900)) return read;
        if (change.cause() instanceof Cause.Drifted d && d.spot() == spot) return read - change.size();
        if (change.cause() instanceof Cause.Loose l && l.spot() == spot) {
            return (read - change.size() * read(Spot.ROOM, t)) / (1 - change.size());
        }
        return read;
    }

    /** The middle of what a sensor said within half an hour; NaN where it said nothing. */
    private double read(Spot spot, double t) {
        Series s = readings.of(spot);
        return s == null ? Double.NaN : s.between(t - 1800, t + 1800).quantile(0.5);
    }

    // a sensor in a well stands a tenth of the height off the end: common practice, no source
    static int topLayer(int layers) {
        return (int) Math.floor(0.1 * layers);
    }

    static int bottomLayer(int layers) {
        return layers - 1 - topLayer(layers);
    }
}
