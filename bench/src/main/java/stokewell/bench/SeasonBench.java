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
import stokewell.rig.Rig;
import stokewell.run.Season;
import stokewell.run.SeasonRun;
import stokewell.run.Simulation;
import stokewell.weather.Weather;

/** Days in a row from the first of October, settling and trace included; the weather is already read. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 5, time = 3)
public class SeasonBench {

    @Param({"boat-shed", "joinery"})
    public String rig;

    @Param({"10", "50", "212"})
    public int days;

    /** Layers of the store; 0 for as many as the file says. */
    @Param("0")
    public int layers;

    /** Loads by the clock or by rule. */
    @Param("clock")
    public String habit;

    private Rig built;
    private Weather weather;

    @Setup
    public void build() {
        built = layers > 0 ? Cases.rig(rig, "store.nodes=" + layers) : Cases.rig(rig);
        if (habit.equals("rule")) built = Cases.byRule(built);
        weather = Cases.weather(built);
    }

    @Benchmark
    public Season season() {
        return SeasonRun.run(built, weather, Cases.season(Cases.AUTUMN, days, Simulation.TOLERANCE), done -> true);
    }
}
