package stokewell.balance;

/** A conductance from several nodes to one, that a switch turns up or down: air blown past something warm. */
public final class Gated implements Part {

    private final int[] from;
    private final double[] share;
    private final int to;
    private final int meter;
    private final double on;
    private final double off;
    private final int[] slots;
    private double now;

    /**
     * @param from  nodes that give
     * @param share of the conductance at each, sum 1
     * @param to    node that takes
     * @param meter meter that reads the flow
     * @param on    W/K when running
     * @param off   W/K when not
     */
    public Gated(Wiring wiring, int[] from, double[] share, int to, int meter, double on, double off) {
        this.from = from.clone();
        this.share = share.clone();
        this.to = to;
        this.meter = meter;
        this.on = on;
        this.off = off;
        now = off;
        slots = new int[6 * from.length];
        for (int i = 0; i < from.length; i++) {
            slots[6 * i] = wiring.slot(from[i], from[i]);
            slots[6 * i + 1] = wiring.slot(from[i], to);
            slots[6 * i + 2] = wiring.slot(to, from[i]);
            slots[6 * i + 3] = wiring.slot(to, to);
            slots[6 * i + 4] = wiring.slot(meter, from[i]);
            slots[6 * i + 5] = wiring.slot(meter, to);
        }
    }

    /** Runs or stops what blows. */
    public void run(boolean running) {
        now = running ? on : off;
    }

    /** Conductance when running, W/K. */
    public double whenRunning() {
        return on;
    }

    @Override
    public void flows(double[] x, double[] p) {
        double sum = 0;
        for (int i = 0; i < from.length; i++) {
            double q = now * share[i] * (x[from[i]] - x[to]);
            p[from[i]] -= q;
            sum += q;
        }
        p[to] += sum;
        p[meter] += sum;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        for (int i = 0, s = 0; i < from.length; i++, s += 6) {
            double g = now * share[i];
            v[slots[s]] -= g;
            v[slots[s + 1]] += g;
            v[slots[s + 2]] += g;
            v[slots[s + 3]] -= g;
            v[slots[s + 4]] += g;
            v[slots[s + 5]] -= g;
        }
    }
}
