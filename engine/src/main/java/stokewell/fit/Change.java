package stokewell.fit;

/**
 * Something that changed.
 *
 * @param time  from when, s
 * @param until when it was over; infinite while it lasts
 * @param size  by its cause
 */
public record Change(Cause cause, double time, double until, double size) {

    /** A change that lasts. */
    public static Change lasting(Cause cause, double time, double size) {
        return new Change(cause, time, Double.POSITIVE_INFINITY, size);
    }

    boolean at(double t) {
        return t >= time && t < until;
    }

    /** The knob that it turns; null for a sensor. */
    Knob knob() {
        return cause instanceof Cause.Turned t ? t.knob() : null;
    }
}
