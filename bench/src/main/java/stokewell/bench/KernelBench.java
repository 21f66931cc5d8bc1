package stokewell.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stokewell.solve.Counters;
import stokewell.solve.Integrator;
import stokewell.solve.Sink;
import stokewell.solve.Tolerances;

/** What one step is made of, in mid-burn. {@link #steps} is a stretch of twenty minutes without a switch. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 8, time = 1)
public class KernelBench {

    private static final double STRETCH = 1200;

    @Param({"boat-shed", "joinery"})
    public String rig;

    private Standing standing;
    private Integrator integrator;
    private stokewell.solve.State state;

    @Setup
    public void stand() {
        standing = new Standing(rig);
        integrator = new Integrator(standing.network, Tolerances.absolute(standing.ask.tolerance()));
        state = stokewell.solve.State.of(standing.network, standing.t);
        steps();
        long before = integrator.counters().steps();
        steps();
        Counters c = integrator.counters();
        System.out.printf(
                "%n%s: %d states, %d places in L + U, %d steps in the stretch%n",
                rig, standing.network.size(), standing.lu.factorSize(), c.steps() - before);
    }

    @Benchmark
    public double[] rates() {
        standing.rates();
        return standing.f;
    }

    @Benchmark
    public double[] linearize() {
        standing.linearize();
        return standing.jacobian;
    }

    @Benchmark
    public int factor() {
        return standing.factor();
    }

    @Benchmark
    public double[] solve() {
        standing.solve();
        return standing.right;
    }

    @Benchmark
    public double[] weather() {
        standing.outside();
        return standing.signals;
    }

    @Benchmark
    public int steps() {
        state.t = standing.t;
        System.arraycopy(standing.y, 0, state.y, 0, state.y.length);
        integrator.forget(Double.POSITIVE_INFINITY);
        return integrator.advance(state, standing.t + STRETCH, Sink.NONE);
    }
}
