package stokewell.solve;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LedgerTest {

    private static final double DAY = 86400;

    @Property(tries = 24)
    void storedHeatIsHeaterLessLossAtEveryStep(
            @ForAll @IntRange(min = 0, max = 3) int method,
            @ForAll @IntRange(min = 0, max = 8) int massless,
            @ForAll boolean repeat,
            @ForAll @IntRange(max = 1000) int seed) {
        Network network = new Network(30, massless, seed);
        Stepping stepping = Stepping.standard().withCut(repeat ? Stepping.Cut.REPEAT : Stepping.Cut.INTERPOLATE);
        Integrator integrator =
                new Integrator(network, Tolerances.absolute(1e-2), Rosenbrock.ALL.get(method), stepping);
        State state = network.start(290);
        integrator.restart(state);
        double began = network.stored(state.y);
        double[] worst = {0};
        Sink sink = step -> {
            for (double x = 0.25; x <= 1; x += 0.25) {
                double t = step.start() + x * (step.end() - step.start());
                double now = 0;
                for (int i = 0; i < network.n; i++) now += network.capacity[i] * step.value(i, t);
                worst[0] = Math.max(worst[0], Math.abs(now - began - step.sum(0, t) + step.sum(1, t)) / began);
            }
        };
        network.run(integrator, state, 2 * DAY, sink);
        assertThat(worst[0]).isLessThan(1e-12);
        assertThat(Math.abs(network.stored(state.y) - began - state.sums[0] + state.sums[1]) / began)
                .isLessThan(1e-12);
    }

    @Test
    void restartPutsMasslessNodesInBalance() {
        Network network = new Network(30, 8, 5);
        Integrator integrator = new Integrator(network, Tolerances.absolute(1e-3));
        State state = network.start(280);
        for (int i = 0; i < network.n; i++) state.y[i] += network.algebraic(i) ? 300 : i;
        integrator.restart(state);
        double[] f = new double[network.n];
        network.rates(0, state.y, f, new double[2]);
        for (int i = 0; i < network.n; i++) {
            if (network.algebraic(i)) assertThat(Math.abs(f[i])).isLessThan(1e-7);
            else assertThat(state.y[i]).isEqualTo(280 + i);
        }
    }

    @Test
    void steppingAllocatesNothing() {
        Network network = new Network(60, 6, 1);
        Integrator integrator = new Integrator(network, Tolerances.absolute(1e-4));
        State state = network.start(290);
        integrator.restart(state);
        Sink sink = step -> step.value(3, step.end());
        network.run(integrator, state, 5 * DAY, sink);
        long steps = integrator.counters().steps();
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        network.run(integrator, state, 40 * DAY, sink);
        long after = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        assertThat(integrator.counters().steps() - steps).isGreaterThan(1000);
        assertThat(after - before).isLessThan(4096);
    }
}
