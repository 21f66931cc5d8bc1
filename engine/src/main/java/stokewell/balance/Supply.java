package stokewell.balance;

/**
 * Power from outside into nodes: a signal times a factor (the sun on a wall), or a fixed power that a switch turns on (a
 * person at work, a fan's motor). Booked in an account as heat that came in, so with a minus.
 */
public final class Supply implements Part {

    private final int account;
    private final int signal;
    private final int[] node;
    private final double[] share;
    private final double factor;
    private final int[] slots;
    private double power;

    private Supply(Wiring wiring, int account, int signal, double factor, int[] node, double[] share) {
        this.account = account;
        this.signal = signal;
        this.factor = factor;
        this.node = node.clone();
        this.share = share.clone();
        slots = new int[node.length + 1];
        if (signal >= 0) {
            for (int i = 0; i < node.length; i++) slots[i] = wiring.slot(node[i], signal);
            slots[node.length] = wiring.slot(account, signal);
        }
    }

    /** A signal times a factor, m2 for W/m2. */
    public static Supply ofSignal(Wiring wiring, int account, int signal, double factor, int[] node, double[] share) {
        return new Supply(wiring, account, signal, factor, node, share);
    }

    /** A power that is set from time to time; none at first. */
    public static Supply ofPower(Wiring wiring, int account, int[] node, double[] share) {
        return new Supply(wiring, account, -1, 0, node, share);
    }

    /** Sets the power, W. */
    public void power(double watts) {
        power = watts;
    }

    @Override
    public void flows(double[] x, double[] p) {
        double q = signal >= 0 ? factor * x[signal] : power;
        for (int i = 0; i < node.length; i++) p[node[i]] += share[i] * q;
        p[account] -= q;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        if (signal < 0) return;
        for (int i = 0; i < node.length; i++) v[slots[i]] += share[i] * factor;
        v[slots[node.length]] -= factor;
    }
}
