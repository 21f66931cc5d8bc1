package stokewell.control;

/**
 * A switch with two limits that remembers its state: on at one value of its reading, off at the other. With on above off
 * it calls when the reading is high, with on below off when it is low.
 */
public final class Latch {

    private final int reading;
    private final int minus;
    private final double on;
    private final double off;
    private final boolean callsHigh;
    private boolean closed;

    /** On one reading. */
    public Latch(int reading, double on, double off) {
        this(reading, -1, on, off);
    }

    /** On the difference of two readings; {@code minus} below zero for none. */
    public Latch(int reading, int minus, double on, double off) {
        this.reading = reading;
        this.minus = minus;
        this.on = on;
        this.off = off;
        callsHigh = on > off;
    }

    /** Whether it calls. */
    public boolean closed() {
        return closed;
    }

    private double value(double[] x) {
        return minus < 0 ? x[reading] : x[reading] - x[minus];
    }

    /** Negative until it must change state, zero or positive when it must. */
    public double toChange(double[] x) {
        double limit = closed ? off : on;
        double past = value(x) - limit;
        return callsHigh != closed ? past : -past;
    }

    /** Changes state. */
    public void change() {
        closed = !closed;
    }

    /** Takes the state that the reading alone decides; between the limits it keeps what it was. */
    public void settle(double[] x) {
        if (toChange(x) >= 0) closed = !closed;
    }

    /** Forces a state: a fault, or a state carried over from an earlier run. */
    public void set(boolean state) {
        closed = state;
    }
}
