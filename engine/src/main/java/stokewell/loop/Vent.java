package stokewell.loop;

import stokewell.balance.Part;
import stokewell.balance.Wiring;

/** Water that turns its surplus over saturation to steam and lets it go: hot pipes at their vent, the store's top. */
public final class Vent implements Part {

    private final int node;
    private final int steamAccount;
    private final int steamMeter;
    private final double saturation;
    private final double venting;
    private final double latent;
    private final int nodeSlot;
    private final int accountSlot;
    private final int meterSlot;
    private double raised;

    /**
     * @param saturation K
     * @param venting    W per kelvin over saturation
     * @param latent     J/kg
     */
    public Vent(
            Wiring wiring,
            int node,
            int steamAccount,
            int steamMeter,
            double saturation,
            double venting,
            double latent) {
        this.node = node;
        this.steamAccount = steamAccount;
        this.steamMeter = steamMeter;
        this.saturation = saturation;
        this.venting = venting;
        this.latent = latent;
        nodeSlot = wiring.slot(node, node);
        accountSlot = wiring.slot(steamAccount, node);
        meterSlot = wiring.slot(steamMeter, node);
    }

    /** The row that it watches. */
    public int node() {
        return node;
    }

    /** Saturation temperature there, K. */
    public double saturation() {
        return saturation;
    }

    /** Raises the boiling point here, K: steam that the loop's vent does not pass presses on the water. */
    public void raise(double kelvin) {
        raised = kelvin;
    }

    @Override
    public void flows(double[] x, double[] p) {
        double q = venting * Steam.ramp(x[node] - saturation - raised);
        p[node] -= q;
        p[steamAccount] += q;
        p[steamMeter] += q / latent;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double d = venting * Steam.rampSlope(x[node] - saturation - raised);
        v[nodeSlot] -= d;
        v[accountSlot] += d;
        v[meterSlot] += d / latent;
    }
}
