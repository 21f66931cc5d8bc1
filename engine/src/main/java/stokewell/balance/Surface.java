package stokewell.balance;

import stokewell.matter.Curve;

/**
 * Heat from one node to another that follows a curve of their difference: a warm surface to the air or to what it shines on, a
 * radiator by its exponent law. The curve passes through zero at zero difference, so that nothing flows uphill. What gives to
 * two takers is two of these, each against its taker's own temperature.
 */
public final class Surface implements Part {

    private final int from;
    private final int to;
    private final int meter;
    private final Curve heat;
    private final int[] slots;

    /**
     * @param from  warm node
     * @param to    node that takes
     * @param meter meter that reads the flow
     * @param heat  W against difference, K
     */
    public Surface(Wiring wiring, int from, int to, int meter, Curve heat) {
        this.from = from;
        this.to = to;
        this.meter = meter;
        this.heat = heat;
        slots = new int[] {
            wiring.slot(from, from), wiring.slot(from, to),
            wiring.slot(to, from), wiring.slot(to, to),
            wiring.slot(meter, from), wiring.slot(meter, to)
        };
    }

    @Override
    public void flows(double[] x, double[] p) {
        double q = heat.at(x[from] - x[to]);
        p[from] -= q;
        p[to] += q;
        p[meter] += q;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double d = heat.slope(x[from] - x[to]);
        v[slots[0]] -= d;
        v[slots[1]] += d;
        v[slots[2]] += d;
        v[slots[3]] -= d;
        v[slots[4]] += d;
        v[slots[5]] -= d;
    }
}
