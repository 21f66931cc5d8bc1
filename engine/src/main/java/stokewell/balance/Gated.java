package stokewell.balance;

/**
 * A conductance from several nodes to one, that a switch turns up or down: air blown past something warm.
 *
 * <p>Eased, the switch is taken on the mean of its cycles: it blows by degrees, the more the further its reading is past the
 * middle between on and off, nearly all at the one and nearly nothing at the other. A fit needs that: the cycles of a model
 * never run in step with those of a shop, and nothing can be learnt from their phase.
 */
public final class Gated implements Part {

    private final int[] from;
    private final double[] share;
    private final int to;
    private final int meter;
    private final double on;
    private final double off;
    private final int[] slots;
    private double now;
    private Call[] calls = {};
    private int[] callSlots = {};

    /** A switch that is eased: its reading, K, and where it goes on and off. */
    public record Call(int reading, double on, double off) {

        /** How steep: 0.98 at on, 0.02 at off. */
        private static final double STEEP = 4;

        private double tanh(double[] x) {
            return Math.tanh(STEEP * (x[reading] - 0.5 * (on + off)) / (on - off));
        }

        double share(double[] x) {
            return 0.5 * (1 + tanh(x));
        }

        double slope(double[] x) {
            double h = tanh(x);
            return 0.5 * (1 - h * h) * STEEP / (on - off);
        }
    }

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

    /** Eases the switches, all of which must call. Before the network is made. */
    public void ease(Wiring wiring, Call... eased) {
        calls = eased.clone();
        int rows = from.length + 2;
        callSlots = new int[rows * calls.length];
        for (int k = 0; k < calls.length; k++) {
            int s = k * rows;
            for (int i = 0; i < from.length; i++) callSlots[s + i] = wiring.slot(from[i], calls[k].reading());
            callSlots[s + from.length] = wiring.slot(to, calls[k].reading());
            callSlots[s + from.length + 1] = wiring.slot(meter, calls[k].reading());
        }
    }

    /** Conductance as the eased switches stand, W/K. */
    private double conductance(double[] x) {
        double share = 1;
        for (Call call : calls) share *= call.share(x);
        return off + (now - off) * share;
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
        double conductance = conductance(x);
        for (int i = 0; i < from.length; i++) {
            double q = conductance * share[i] * (x[from[i]] - x[to]);
            p[from[i]] -= q;
            sum += q;
        }
        p[to] += sum;
        p[meter] += sum;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double conductance = conductance(x);
        for (int i = 0, s = 0; i < from.length; i++, s += 6) {
            double g = conductance * share[i];
            v[slots[s]] -= g;
            v[slots[s + 1]] += g;
            v[slots[s + 2]] += g;
            v[slots[s + 3]] -= g;
            v[slots[s + 4]] += g;
            v[slots[s + 5]] -= g;
        }
        if (now == off) return;
        for (int k = 0; k < calls.length; k++) {
            double d = (now - off) * calls[k].slope(x);
            for (int other = 0; other < calls.length; other++) if (other != k) d *= calls[other].share(x);
            int s = k * (from.length + 2);
            double sum = 0;
            for (int i = 0; i < from.length; i++) {
                double q = d * share[i] * (x[from[i]] - x[to]);
                v[callSlots[s + i]] -= q;
                sum += q;
            }
            v[callSlots[s + from.length]] += sum;
            v[callSlots[s + from.length + 1]] += sum;
        }
    }
}
