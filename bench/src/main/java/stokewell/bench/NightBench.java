package stokewell.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.run.Night;
import stokewell.run.NightRun;
import stokewell.run.Other;
import stokewell.run.Simulation;

/** A night of 24 hours with its trace, from a settled start and with the settling; and compiling alone. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 8, time = 2)
public class NightBench {

    @Param({"boat-shed", "joinery"})
    public String rig;

    private Standing standing;

    @Setup
    public void stand() {
        standing = new Standing(rig);
    }

    /** A fresh run for every call. */
    @State(Scope.Thread)
    public static class Fresh {
        Simulation simulation;

        @Setup(Level.Invocation)
        public void copy(NightBench bench) {
            simulation = bench.standing.copy();
        }
    }

    @Benchmark
    public Night night(Fresh fresh) {
        return Other.night(fresh.simulation, standing.weather, standing.ask);
    }

    @Benchmark
    public Night nightWithSettling() {
        return NightRun.run(standing.rig, standing.weather, standing.ask);
    }

    @Benchmark
    public Plant compile() {
        return Compiler.compile(standing.rig, standing.weather);
    }
}
