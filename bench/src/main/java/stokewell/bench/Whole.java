package stokewell.bench;

import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.solve.Pattern;

/** The network as it is, index-1 DAE, for IDA. */
final class Whole extends Sundials.Problem {

    private final Network network;
    private final int n;
    private final int[] home;
    private final double[] sums;
    private final double[] sumSlopes;
    private final double[] jacobian;
    private final double[] dfdt;
    private final double[] dgdt;

    Whole(Plant plant) {
        network = plant.network();
        n = network.size();
        Pattern pattern = network.pattern();
        home = new int[pattern.size()];
        columnStart = new int[n + 1];
        row = new int[pattern.size()];
        diagonal = new int[n];
        int at = 0;
        for (int j = 0; j < n; j++) {
            for (int i = 0; i < n; i++) {
                int place = pattern.place(i, j);
                if (place < 0) continue;
                if (i == j) diagonal[j] = at;
                home[place] = at;
                row[at++] = i;
            }
            columnStart[j + 1] = at;
        }
        y = new double[n];
        f = new double[n];
        values = new double[at];
        jacobian = new double[at];
        g = new double[network.switches()];
        sums = new double[network.sums()];
        sumSlopes = new double[network.sumPattern().size()];
        dfdt = new double[n];
        dgdt = new double[network.sums()];
        differential = new boolean[n];
        scale = new double[n];
        for (int i = 0; i < n; i++) {
            differential[i] = !network.algebraic(i);
            scale[i] = network.scale(i);
        }
    }

    @Override
    boolean rates(double t) {
        rateCalls++;
        network.rates(t, y, f, sums);
        return true;
    }

    @Override
    boolean jacobian(double t) {
        jacobianCalls++;
        network.linearize(t, y, jacobian, sumSlopes, dfdt, dgdt);
        for (int p = 0; p < jacobian.length; p++) values[home[p]] = jacobian[p];
        return true;
    }

    @Override
    void switching(double t) {
        switchCalls++;
        network.switching(t, y, g);
    }

    @Override
    void take(double t, double[] all) {
        System.arraycopy(all, 0, y, 0, n);
        network.rates(t, y, f, sums);
    }

    @Override
    void give(double t, double[] all) {
        System.arraycopy(y, 0, all, 0, n);
    }
}
