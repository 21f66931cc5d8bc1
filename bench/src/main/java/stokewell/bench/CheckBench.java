package stokewell.bench;

import java.util.EnumSet;
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
import stokewell.check.Check;
import stokewell.check.Drills;
import stokewell.check.Fault;
import stokewell.check.Looked;
import stokewell.run.Given;

/** All drills and the check of a rig that stands settled; the same with the settling; and a night with what it is told. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
public class CheckBench {

    @Param({"boat-shed", "saddlery", "joinery"})
    public String rig;

    private Standing standing;

    @Setup
    public void stand() {
        standing = new Standing(rig);
    }

    @Benchmark
    public Check drillsAndCheck() {
        Drills.Outcome outcome =
                Drills.run(standing.rig, standing.weather, standing.ask, EnumSet.allOf(Fault.class), standing.settled);
        return Check.of(standing.rig, outcome.day(), outcome.drills());
    }

    @Benchmark
    public Check withSettling() {
        Drills.Outcome outcome = Drills.run(standing.rig, standing.weather, standing.ask, EnumSet.allOf(Fault.class));
        return Check.of(standing.rig, outcome.day(), outcome.drills());
    }

    @Benchmark
    public Looked nightAndItsStops() {
        return Looked.run(standing.rig, standing.weather, standing.ask, Given.NOTHING, n -> n);
    }
}
