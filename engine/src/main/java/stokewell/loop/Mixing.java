package stokewell.loop;

import stokewell.balance.Part;
import stokewell.balance.Wiring;

/**
 * A thermostatic mixing valve before a device: cool water from behind the device joins the hot water before it, so that what goes
 * in is held at one temperature. Of the flow through the device the share s comes from the store,
 *
 * <pre>s = (held − back) / (hot − back)</pre>
 *
 * and all of it where the hot water is not hot enough. Both ends are blurred over a kelvin, as a valve's are: where
 * a(u) = (u + √(u² + w²))/2, s = a(held − back) / (a(held − back) + a(hot − held)).
 */
public final class Mixing implements Part {

    /** Over which the valve shuts or opens, K; makers' sheets give 1 to 3. */
    private static final double BLUR = 1;

    private final int share;
    private final int hot;
    private final int back;
    private final double held;
    private final int first;
    private final int last;
    private final int own;
    private final int byHot;
    private final int byBack;

    /**
     * @param share algebraic state of the share
     * @param hot   node before the valve
     * @param back  node behind the device
     * @param held  K
     * @param first of the device's cells, counted in the circuit's
     * @param last  of them
     */
    public Mixing(Wiring wiring, int share, int hot, int back, double held, int first, int last) {
        this.share = share;
        this.hot = hot;
        this.back = back;
        this.held = held;
        this.first = first;
        this.last = last;
        own = wiring.slot(share, share);
        byHot = wiring.slot(share, hot);
        byBack = wiring.slot(share, back);
    }

    /** The column of the share. */
    public int share() {
        return share;
    }

    /** The share that these temperatures ask for. */
    public double standing(double[] x) {
        double closed = open(held - x[back]);
        return closed / (closed + open(x[hot] - held));
    }

    /** Which of the circuit's cells comes first behind the valve. */
    int first() {
        return first;
    }

    /** Which of the circuit's cells gives the cool water. */
    int last() {
        return last;
    }

    private static double open(double u) {
        return 0.5 * (u + Math.sqrt(u * u + BLUR * BLUR));
    }

    private static double openSlope(double u) {
        return 0.5 * (1 + u / Math.sqrt(u * u + BLUR * BLUR));
    }

    @Override
    public void flows(double[] x, double[] p) {
        p[share] += standing(x) - x[share];
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double a = open(held - x[back]);
        double b = open(x[hot] - held);
        double sum = a + b;
        v[own] -= 1;
        v[byHot] -= a * openSlope(x[hot] - held) / (sum * sum);
        v[byBack] -= b * openSlope(held - x[back]) / (sum * sum);
    }
}
