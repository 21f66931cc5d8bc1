package stokewell.store;

import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.matter.Curve;

/** Water that evaporates from a store whose cover does not seal: heat and water that leave for good. */
public final class OpenSurface implements Part {

    private final int top;
    private final int account;
    private final int meter;
    private final Curve heat;
    private final double perLatent;
    private final int[] slots;

    /**
     * @param heat   W against the water's temperature, K; never negative
     * @param latent J/kg
     */
    public OpenSurface(Wiring wiring, int top, int account, int meter, Curve heat, double latent) {
        this.top = top;
        this.account = account;
        this.meter = meter;
        this.heat = heat;
        perLatent = 1 / latent;
        slots = new int[] {wiring.slot(top, top), wiring.slot(account, top), wiring.slot(meter, top)};
    }

    @Override
    public void flows(double[] x, double[] p) {
        double q = heat.at(x[top]);
        p[top] -= q;
        p[account] += q;
        p[meter] += q * perLatent;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double d = heat.slope(x[top]);
        v[slots[0]] -= d;
        v[slots[1]] += d;
        v[slots[2]] += d * perLatent;
    }
}
