package stokewell.bench;

import stokewell.network.Compiler;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.run.Other;
import stokewell.run.Simulation;
import stokewell.solve.SparseLu;
import stokewell.weather.Weather;

/** A rig in mid-burn, three hours after its night began, with work space for single calls of its equations. */
final class Standing {

    private static final double INTO_NIGHT = 3 * 3600;
    private static final double LENGTH = 100;

    final Rig rig;
    final Weather weather;
    final NightRun.Ask ask = Cases.night(Simulation.TOLERANCE);
    final double second;
    final Simulation settled;
    final Simulation burning;
    final Network network;
    final double t;
    final double[] y;
    final double[] f;
    final double[] g;
    final double[] jacobian;
    final double[] sumJacobian;
    final double[] dfdt;
    final double[] dgdt;
    final double[] shift;
    final double[] signals;
    final double[] right;
    final SparseLu lu;

    Standing(String example) {
        rig = Cases.rig(example);
        weather = Cases.weather(rig);
        second = weather.start().toLocalTime().toSecondOfDay();
        settled = NightRun.settled(rig, weather, ask);
        burning = copy();
        Other.run(burning, burning.time() + INTO_NIGHT);
        network = burning.plant().network();
        t = burning.time();
        y = burning.states().clone();
        f = new double[network.size()];
        g = new double[network.sums()];
        jacobian = new double[network.pattern().size()];
        sumJacobian = new double[network.sumPattern().size()];
        dfdt = new double[network.size()];
        dgdt = new double[network.sums()];
        shift = new double[network.size()];
        for (int i = 0; i < shift.length; i++) shift[i] = network.algebraic(i) ? 0 : 4 / LENGTH;
        signals = new double[weather.channels()];
        right = new double[network.size()];
        lu = new SparseLu(network.pattern());
        network.rates(t, y, f, g);
        linearize();
        lu.factorShifted(shift, jacobian);
    }

    /** A run that stands settled at the night's beginning. */
    Simulation copy() {
        Plant plant = Compiler.compile(rig, weather);
        return Other.copy(settled, plant, second, ask.tolerance());
    }

    void rates() {
        network.rates(t, y, f, g);
    }

    void linearize() {
        network.linearize(t, y, jacobian, sumJacobian, dfdt, dgdt);
    }

    int factor() {
        return lu.factorShifted(shift, jacobian);
    }

    void solve() {
        System.arraycopy(f, 0, right, 0, right.length);
        lu.solve(right);
    }

    void outside() {
        weather.at(t, signals);
    }
}
