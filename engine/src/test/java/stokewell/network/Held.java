package stokewell.network;

import java.util.Arrays;
import stokewell.solve.Equations;
import stokewell.solve.Pattern;

/** The equations of a compiled rig with some of its states held where they are, as a laboratory holds a room. */
final class Held implements Equations {

    private final Network network;
    private final boolean[] held;

    Held(Network network, int... states) {
        this.network = network;
        held = new boolean[network.size()];
        for (int s : states) held[s] = true;
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
    public void rates(double t, double[] y, double[] f, double[] g) {
        network.rates(t, y, f, g);
        for (int i = 0; i < held.length; i++) if (held[i]) f[i] = 0;
    }

    @Override
    public void linearize(double t, double[] y, double[] dfdy, double[] dgdy, double[] dfdt, double[] dgdt) {
        network.linearize(t, y, dfdy, dgdy, dfdt, dgdt);
        for (int i = 0; i < held.length; i++) {
            if (!held[i]) continue;
            Arrays.fill(dfdy, pattern().start()[i], pattern().start()[i + 1], 0);
            dfdt[i] = 0;
        }
    }

    @Override
    public double scale(int i) {
        return network.scale(i);
    }

    @Override
    public int switches() {
        return 0;
    }

    @Override
    public void switching(double t, double[] y, double[] values) {}
}
