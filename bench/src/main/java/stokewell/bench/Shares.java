package stokewell.bench;

import java.util.Locale;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.run.Other;
import stokewell.run.Season;
import stokewell.run.SeasonRun;
import stokewell.run.Simulation;
import stokewell.solve.Counters;

/** Where the time of a season goes: what each call costs times how often it is made. Processor time, best of many. */
public final class Shares {

    private static final int CALLS = 20_000;
    private static final int NIGHTS = 200;

    private Shares() {}

    public static void main(String[] args) {
        for (String example : args.length > 0 ? args : new String[] {"boat-shed", Cases.LARGEST}) show(example);
    }

    private static void show(String example) {
        Standing s = new Standing(example);
        Rig rig = s.rig;
        SeasonRun.Ask ask = Cases.season(Cases.AUTUMN, Cases.SEASON, Simulation.TOLERANCE);
        double season = Double.POSITIVE_INFINITY;
        Season last = null;
        for (int k = 0; k < 5; k++) {
            long begun = Clock.thread();
            last = SeasonRun.run(rig, s.weather, ask, done -> true);
            season = Math.min(season, (Clock.thread() - begun) * 1e-9);
        }
        Counters c = last.counters();
        // settling is no part of the counts
        System.out.printf(
                Locale.ROOT,
                "%s: %d states, season with settling %.3f s; %s%n",
                rig.name(),
                s.network.size(),
                season,
                c);
        System.out.printf(
                Locale.ROOT,
                "  a night of 24 h with its trace %.2f ms, with settling %.2f ms%n",
                best(() -> Other.night(s.copy(), s.weather, s.ask)) - best(s::copy),
                best(() -> NightRun.run(rig, s.weather, s.ask)));
        double rest = season;
        rest -= line("rates", season, c.rates(), s::rates);
        rest -= line("linearize", season, c.jacobians(), s::linearize);
        rest -= line("factor", season, c.factorisations(), s::factor);
        rest -= line("solve", season, c.solves(), s::solve);
        line("  of rates: weather", season, c.rates(), s::outside);
        System.out.printf(
                Locale.ROOT,
                "  %-20s %38.1f %%: stage algebra, switches, recorder, settling, harness%n",
                "rest",
                100 * rest / season);
    }

    /** Least of many calls, ms. */
    private static double best(Runnable call) {
        long best = Long.MAX_VALUE;
        for (int k = 0; k < NIGHTS; k++) {
            long begun = Clock.thread();
            call.run();
            best = Math.min(best, Clock.thread() - begun);
        }
        return best * 1e-6;
    }

    private static double line(String name, double season, long count, Runnable call) {
        double best = Double.POSITIVE_INFINITY;
        for (int k = 0; k < 30; k++) {
            long begun = Clock.thread();
            for (int i = 0; i < CALLS; i++) call.run();
            best = Math.min(best, (Clock.thread() - begun) * 1e-9 / CALLS);
        }
        double all = best * count;
        System.out.printf(
                Locale.ROOT,
                "  %-20s %8.0f ns x %9d = %7.3f s %6.1f %%%n",
                name,
                1e9 * best,
                count,
                all,
                100 * all / season);
        return all;
    }
}
