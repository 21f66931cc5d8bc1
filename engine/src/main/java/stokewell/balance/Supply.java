package stokewell.balance;

/**
 * A power from outside that is turned on and off: a person at work, a fan's motor. Booked in an account as heat that came in,
 * so with a minus.
 */
public final class Supply implements Part {

    private final int account;
    private final int[] node;
    private final double[] share;
    private double power;

    /**
     * None at first.
     *
     * @param share of the power into each node, sum 1
     */
    public Supply(int account, int[] node, double[] share) {
        this.account = account;
        this.node = node.clone();
        this.share = share.clone();
    }

    /** Sets the power, W. */
    public void power(double watts) {
        power = watts;
    }

    @Override
    public boolean steadySlopes() {
        return true;
    }

    @Override
    public void flows(double[] x, double[] p) {
        if (power == 0) return;
        for (int i = 0; i < node.length; i++) p[node[i]] += share[i] * power;
        p[account] -= power;
    }

    @Override
    public void slopes(double[] x, double[] v) {}
}
