package stokewell.run;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Changed;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Store;
import stokewell.solve.Counters;

/** What a run costs, counted, not timed: it must grow with the days as the days do, and with a store's layers hardly faster. */
class CostTest {

    private static final double BEGIN = 7 * 3600;
    private static final int SEASON = 212;

    private final ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private static Simulation simulation(Rig rig, double tolerance) {
        Plant plant = Compiler.compile(rig, RandomRunsTest.weather(rig));
        Simulation sim = new Simulation(plant, 0, tolerance);
        sim.place(BEGIN, plant.network().start());
        return sim;
    }

    private static void live(Simulation sim, int days) {
        sim.run(sim.time() + days * DayClock.DAY);
    }

    private static Rig withLayers(int layers) {
        Rig r = Rigs.pumped();
        Store s = r.store();
        Store store = Changed.with(s, "nodes", layers);
        return Changed.with(r, "store", store);
    }

    private long allocated() {
        return threads.getThreadAllocatedBytes(Thread.currentThread().getId());
    }

    /** Bytes and steps of the days after a warm-up. */
    private long[] spent(double tolerance, int days) {
        Simulation sim = simulation(Rigs.pumped(), tolerance);
        live(sim, 12);
        sim.freshBooks();
        long steps = sim.counters().steps();
        long before = allocated();
        live(sim, days);
        return new long[] {allocated() - before, sim.counters().steps() - steps};
    }

    @Test
    void whatIsAllocatedGoesByTheSwitchesAndNeverByTheSteps() {
        long[] usual = spent(Simulation.TOLERANCE, 10);
        long[] tight = spent(Simulation.TOLERANCE / 300, 10);
        assertThat(tight[1]).isGreaterThan(2 * usual[1]);
        assertThat(tight[0] - usual[0]).isLessThan(8 * (tight[1] - usual[1]));
        assertThat(usual[0]).isLessThan(10 * 64 * 1024);
    }

    @Test
    void aLaterDayAllocatesNoMoreThanAnEarlierOne() {
        long early = spent(Simulation.TOLERANCE, 10)[0];
        long late = spent(Simulation.TOLERANCE, 40)[0];
        assertThat(late).isLessThan(5 * early);
    }

    @Test
    void costIsLinearInDays() {
        Simulation sim = simulation(Rigs.pumped(), Simulation.TOLERANCE);
        live(sim, 10);
        Counters begun = sim.counters();
        live(sim, 10);
        Counters ten = sim.counters();
        live(sim, 40);
        Counters fifty = sim.counters();
        assertThat((double) (fifty.steps() - ten.steps()) / (ten.steps() - begun.steps()))
                .isBetween(3.5, 4.5);
        assertThat((double) (fifty.rates() - ten.rates()) / (ten.rates() - begun.rates()))
                .isBetween(3.5, 4.5);
    }

    /** Evaluations times what one has to fill in: what the time of a run goes by. */
    @Test
    void costIsNearlyLinearInStoreLayers() {
        double[] cost = new double[2];
        int[] layers = {15, 60};
        for (int i = 0; i < 2; i++) {
            Simulation sim = simulation(withLayers(layers[i]), Simulation.TOLERANCE);
            live(sim, 2);
            cost[i] = (double) sim.counters().rates()
                    * sim.plant().network().pattern().size();
        }
        assertThat(cost[1] / cost[0]).isLessThan(4);
    }

    /** Single precision, five minutes from sample to sample, the largest rig there is. */
    @Test
    void theTraceOfASeasonHoldsLessThan64Megabytes() {
        Simulation sim = simulation(Rigs.hall(), Simulation.TOLERANCE);
        long before = allocated();
        Recorder recorder = sim.record(BEGIN + SEASON * DayClock.DAY, 300);
        long bytes = allocated() - before;
        assertThat(recorder.trace().names()).hasSizeGreaterThan(40);
        assertThat(bytes).isBetween(1L << 22, 64L << 20);
    }
}
