package stokewell.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.solve.Integrator;
import stokewell.solve.State;
import stokewell.solve.Tolerances;
import stokewell.store.Layers;

/** Cold water pushed through a hot store, layer by layer. */
class FlushingTest {

    /**
     * N equal mixed layers in series leave Q(N, N V/V_tank) of the step at the outlet, the regularised upper gamma function:
     * an upwind store must show exactly that.
     */
    @Test
    void layersInSeriesFlushByTheIncompleteGammaFunction() {
        int[] layers = {2, 5, 10, 50};
        double[][] expected = {
            {0.73576, 0.40601, 0.19915},
            {0.89118, 0.44049, 0.13206},
            {0.96817, 0.45793, 0.06985},
            {0.99999, 0.48119, 0.00090}
        };
        for (int i = 0; i < layers.length; i++) {
            double[] outlet = flushed(layers[i]);
            for (int k = 0; k < 3; k++) {
                assertThat(outlet[k])
                        .as("%d layers, %.1f tanks", layers[i], 0.5 * (k + 1))
                        .isCloseTo(expected[i][k], Offset.offset(3e-5));
            }
        }
    }

    /** Share of the step left at the top after half a tank, a tank, one and a half: 200 kg flushed at 0.1 kg/s from below. */
    private static double[] flushed(int n) {
        double cp = 4185;
        double mass = 200;
        double flow = 0.1;
        double cold = 300;
        double hot = 340;
        Wiring wiring = new Wiring();
        int[] node = new int[n];
        for (int i = 0; i < n; i++) node[i] = wiring.node("layer " + i, mass / n * cp, hot);
        int push = wiring.rate("flow", flow, 1);
        double[] never = new double[n];
        java.util.Arrays.fill(never, 1000);
        wiring.add(new Layers(wiring, node, cp, 0, never, 0, List.of(new Layers.Through(push, -1, n - 1, 0))));
        // what comes in at the bottom and leaves at the top, on the base that the layers count from
        double base = 330;
        int in = wiring.slot(node[0], node[0]);
        wiring.add(new stokewell.balance.Part() {
            @Override
            public void flows(double[] x, double[] p) {
                p[node[n - 1]] += cp * Circuit.forward(flow) * (cold - base);
                p[node[0]] -= cp * Circuit.forward(flow) * (x[node[0]] - base);
            }

            @Override
            public void slopes(double[] x, double[] v) {
                v[in] -= cp * Circuit.forward(flow);
            }
        });
        Network network = new Network(wiring, new Network.Signals() {
            @Override
            public void at(double t, double[] out) {}

            @Override
            public void slopeAt(double t, double[] out) {}
        });
        State state = new State(0, network.start(), new double[network.sums()]);
        Integrator integrator = new Integrator(network, Tolerances.absolute(1e-6));
        double[] outlet = new double[3];
        for (int k = 0; k < 3; k++) {
            integrator.advance(state, 0.5 * (k + 1) * mass / flow, step -> {});
            outlet[k] = (state.y[0] - cold) / (hot - cold);
        }
        return outlet;
    }
}
