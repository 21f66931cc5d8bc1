package stokewell.balance;

/** Grey radiation from one node to another: g (Ta⁴ − Tb⁴), with g = ε σ A. */
public final class Radiation implements Part {

    private final int a;
    private final int b;
    private final int meter;
    private final double g;
    private final int[] slots;

    /** @param g W/K4 */
    public Radiation(Wiring wiring, int a, int b, int meter, double g) {
        this.a = a;
        this.b = b;
        this.meter = meter;
        this.g = g;
        slots = new int[] {
            wiring.slot(a, a),
            wiring.slot(a, b),
            wiring.slot(b, a),
            wiring.slot(b, b),
            wiring.slot(meter, a),
            wiring.slot(meter, b)
        };
    }

    @Override
    public void flows(double[] x, double[] p) {
        double sa = x[a] * x[a];
        double sb = x[b] * x[b];
        double q = g * (sa * sa - sb * sb);
        p[a] -= q;
        p[b] += q;
        p[meter] += q;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double da = 4 * g * x[a] * x[a] * x[a];
        double db = 4 * g * x[b] * x[b] * x[b];
        v[slots[0]] -= da;
        v[slots[1]] += db;
        v[slots[2]] += da;
        v[slots[3]] -= db;
        v[slots[4]] += da;
        v[slots[5]] -= db;
    }
}
