package stokewell.bench;

import java.util.List;
import stokewell.balance.Wiring;
import stokewell.network.Network;
import stokewell.solve.Equations;
import stokewell.solve.Pattern;

/** A network with pipes in its slab that bring a measured power: each square metre of concrete gets as much. No books are kept of it. */
final class Underfloor implements Equations {

    private final Network network;
    private final int[] slab;
    private final double capacity;
    private double power;

    Underfloor(Network network) {
        this.network = network;
        slab = slabs(network);
        double sum = 0;
        for (int i : slab) sum += network.capacity(i);
        capacity = sum;
    }

    /** Places of the concrete among the states. */
    static int[] slabs(Network network) {
        List<Wiring.State> states = network.wiring().states();
        return java.util.stream.IntStream.range(0, states.size())
                .filter(i -> states.get(i).name().endsWith(" slab"))
                .toArray();
    }

    /** Sets the power, W. */
    void power(double watts) {
        power = watts;
    }

    @Override
    public void rates(double t, double[] y, double[] f, double[] g) {
        network.rates(t, y, f, g);
        for (int i : slab) f[i] += power / capacity;
    }

    @Override
    public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
        network.linearize(t, y, dfdy, dgdy, dfdt, dgdt);
    }

    @Override
    public int size() {
        return network.size();
    }

    @Override
    public boolean algebraic(int i) {
        return network.algebraic(i);
    }

    @Override
    public int sums() {
        return network.sums();
    }

    @Override
    public Pattern pattern() {
        return network.pattern();
    }

    @Override
    public Pattern sumPattern() {
        return network.sumPattern();
    }

    @Override
    public double scale(int i) {
        return network.scale(i);
    }

    @Override
    public int switches() {
        return network.switches();
    }

    @Override
    public void switching(double t, double[] y, double[] values) {
        network.switching(t, y, values);
    }
}
