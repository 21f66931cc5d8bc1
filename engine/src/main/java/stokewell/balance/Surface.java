package stokewell.balance;

import stokewell.matter.Curve;

/**
 * Heat from one node to another that follows a curve of their difference, split between two takers: a warm surface to air
 * and to what it radiates on, a radiator by its exponent law. The curve passes through zero at zero difference.
 */
public final class Surface implements Part {

    private final int from;
    private final int to;
    private final int other;
    private final double otherShare;
    private final int meter;
    private final Curve heat;
    private final int[] slots;

    /**
     * @param from       warm node
     * @param to         node whose temperature counts, and that takes the rest
     * @param other      node that takes a share
     * @param otherShare of the heat, 0 to 1
     * @param meter      meter that reads the flow
     * @param heat       W against difference, K
     */
    public Surface(Wiring wiring, int from, int to, int other, double otherShare, int meter, Curve heat) {
        this.from = from;
        this.to = to;
        this.other = other;
        this.otherShare = otherShare;
        this.meter = meter;
        this.heat = heat;
        slots = new int[] {
            wiring.slot(from, from), wiring.slot(from, to),
            wiring.slot(to, from), wiring.slot(to, to),
            wiring.slot(other, from), wiring.slot(other, to),
            wiring.slot(meter, from), wiring.slot(meter, to)
        };
    }

    @Override
    public void flows(double[] x, double[] p) {
        double q = heat.at(x[from] - x[to]);
        p[from] -= q;
        p[to] += (1 - otherShare) * q;
        p[other] += otherShare * q;
        p[meter] += q;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double d = heat.slope(x[from] - x[to]);
        v[slots[0]] -= d;
        v[slots[1]] += d;
        v[slots[2]] += (1 - otherShare) * d;
        v[slots[3]] -= (1 - otherShare) * d;
        v[slots[4]] += otherShare * d;
        v[slots[5]] -= otherShare * d;
        v[slots[6]] += d;
        v[slots[7]] -= d;
    }
}
