package stokewell.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import stokewell.rig.Rig;
import stokewell.run.Season;
import stokewell.run.SeasonRun;
import stokewell.run.Simulation;
import stokewell.weather.Weather;

/** Heap that a season of 212 days with its full trace holds when it is done. */
public final class Memory {

    private static Season kept;

    private Memory() {}

    /** Argument: seconds from sample to sample, 300 if left out. */
    public static void main(String[] args) {
        double step = args.length > 0 ? Double.parseDouble(args[0]) : 300;
        Rig rig = Cases.rig(Cases.LARGEST);
        Weather weather = Cases.weather(rig);
        double before = used();
        Weather second = Cases.weather(rig);
        double held = used() - before;
        SeasonRun.Ask s = Cases.season(Cases.AUTUMN, Cases.SEASON, Simulation.TOLERANCE);
        SeasonRun.Ask ask = new SeasonRun.Ask(s.from(), s.until(), s.hour(), s.limit(), step, s.tolerance());
        for (int k = 0; k < 2; k++) {
            kept = null;
            before = used();
            kept = SeasonRun.run(rig, weather, ask, done -> true);
            System.out.printf(
                    Locale.ROOT,
                    "%s: %d samples of %d columns every %.0f s: %.1f MB held; its weather %.1f MB%n",
                    rig.name(),
                    kept.trace().size(),
                    kept.trace().names().size(),
                    step,
                    used() - before,
                    held);
        }
        if (!second.start().equals(weather.start())) throw new IllegalStateException();
    }

    /** MB. */
    private static double used() {
        for (int k = 0; k < 4; k++) System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1048576.0;
    }
}
