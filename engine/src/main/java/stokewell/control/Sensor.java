package stokewell.control;

import stokewell.balance.Part;
import stokewell.balance.Wiring;

/** A sensor that follows what it touches with a first-order lag: dS/dt = (T − S)/lag, T between two nodes by a share. */
public final class Sensor implements Part {

    private final int reading;
    private final int a;
    private final int b;
    private final double shareB;
    private final double rate;
    private final int self;
    private final int slotA;
    private final int slotB;

    /**
     * @param reading rate state of the sensor
     * @param a       column of one node
     * @param b       column of another, may be the same
     * @param shareB  how far from a to b it sits, 0 to 1
     * @param lag     s
     */
    public Sensor(Wiring wiring, int reading, int a, int b, double shareB, double lag) {
        this.reading = reading;
        this.a = a;
        this.b = b;
        this.shareB = shareB;
        rate = 1 / lag;
        self = wiring.slot(reading, reading);
        slotA = wiring.slot(reading, a);
        slotB = wiring.slot(reading, b);
    }

    /** The column of its reading. */
    public int reading() {
        return reading;
    }

    @Override
    public void flows(double[] x, double[] p) {
        p[reading] += rate * ((1 - shareB) * x[a] + shareB * x[b] - x[reading]);
    }

    @Override
    public void slopes(double[] x, double[] v) {
        v[self] -= rate;
        v[slotA] += rate * (1 - shareB);
        v[slotB] += rate * shareB;
    }
}
