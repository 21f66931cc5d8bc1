package stokewell.bench;

import java.lang.management.ManagementFactory;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import stokewell.network.Compiler;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.run.NightRun;
import stokewell.run.Other;
import stokewell.run.Simulation;
import stokewell.run.Trace;
import stokewell.solve.Counters;
import stokewell.weather.Weather;

/**
 * Runs the same rig from the same state through the same weather, clock and loads with the engine's integrator and with
 * CVODE and IDA, and sets cost against error.
 *
 * <p>Error: room and mean store temperature at half hours against the engine at a thousandth of its tolerance. Cost:
 * processor time of the thread, median of several runs after one to warm up. From the time of CVODE and IDA the crossings
 * between C and Java are taken away at their measured price.
 */
public final class SideBySide {

    private static final int RUNS = Integer.getInteger("runs", 3);

    private final Rig rig;
    private final Weather weather;
    private final double second;
    private final double[] start;
    private final double from;
    private final double until;
    private final int samples;

    /** Room and store mean at half hours. */
    private record Course(double[] room, double[] store) {

        double rms(Course other) {
            double sum = 0;
            for (int i = 0; i < room.length; i++) {
                sum += (room[i] - other.room[i]) * (room[i] - other.room[i]);
                sum += (store[i] - other.store[i]) * (store[i] - other.store[i]);
            }
            return Math.sqrt(sum / (2.0 * room.length));
        }

        double most(Course other) {
            double most = 0;
            for (int i = 0; i < room.length; i++) {
                most = Math.max(most, Math.abs(room[i] - other.room[i]));
                most = Math.max(most, Math.abs(store[i] - other.store[i]));
            }
            return most;
        }
    }

    /** What one way of running cost. Counts: steps, rejected, rates, Jacobians, factorisations, switches, restarts. */
    private record Result(String name, Course course, double wall, double cpu, double net, long[] counts) {}

    private SideBySide(Rig rig, LocalDateTime begin, int days) {
        this.rig = rig;
        weather = Cases.weather(rig);
        second = weather.start().toLocalTime().toSecondOfDay();
        NightRun.Ask ask = new NightRun.Ask(
                begin,
                begin.plusDays(1),
                Cases.night(1).hour(),
                Cases.night(1).evening(),
                283.15,
                0,
                Simulation.TOLERANCE);
        Simulation settled = NightRun.settled(rig, weather, ask);
        start = settled.states().clone();
        from = settled.time();
        until = from + days * 86400.0;
        samples = days * 48 + 1;
    }

    private interface Way {
        Result run();
    }

    private static Result measured(Way way, int runs) {
        if (runs > 1) way.run();
        double[] wall = new double[runs];
        double[] cpu = new double[runs];
        double[] net = new double[runs];
        Result last = null;
        for (int k = 0; k < runs; k++) {
            last = way.run();
            wall[k] = last.wall;
            cpu[k] = last.cpu;
            net[k] = last.net;
        }
        return new Result(
                last.name, last.course, Clock.median(wall), Clock.median(cpu), Clock.median(net), last.counts);
    }

    private Result ours(double tolerance) {
        Simulation sim = new Simulation(Compiler.compile(rig, weather), second, tolerance);
        long wall = System.nanoTime();
        long cpu = Clock.thread();
        Other.place(sim, from, start);
        Trace trace = Other.run(sim, until, Cases.HALF_HOUR);
        double cpuSeconds = (Clock.thread() - cpu) * 1e-9;
        double wallSeconds = (System.nanoTime() - wall) * 1e-9;
        Course course = new Course(new double[samples], new double[samples]);
        // the trace misses its first moment where a run begins between two of its samples
        float[] room = trace.column("room");
        float[] store = trace.column("store mean");
        for (int i = 0; i < samples; i++) {
            int at = Math.min(i, room.length - 1);
            course.room[i] = room[at];
            course.store[i] = store[at];
        }
        Counters c = sim.counters();
        return new Result("stokewell " + tolerance, course, wallSeconds, cpuSeconds, cpuSeconds, new long[] {
            c.steps(), c.rejected(), c.rates(), c.jacobians(), c.factorisations(), c.events(), -1
        });
    }

    private Result theirs(
            int kind,
            double relative,
            double tolerance,
            int order,
            int ordering,
            double convergence,
            double[] crossing) {
        Plant plant = Compiler.compile(rig, weather);
        Other run = new Other(plant, second);
        Sundials.Problem problem = kind == Sundials.CVODE ? new Reduced(plant) : new Whole(plant);
        try (Sundials solver = new Sundials(problem, kind, relative, tolerance, order, ordering, convergence)) {
            Course course = new Course(new double[samples], new double[samples]);
            long wall = System.nanoTime();
            long cpu = Clock.thread();
            run.place(solver, from, start);
            run.run(from, until, Cases.HALF_HOUR, course.room, course.store);
            double cpuSeconds = (Clock.thread() - cpu) * 1e-9;
            double wallSeconds = (System.nanoTime() - wall) * 1e-9;
            long[] n = solver.counts();
            double crossed =
                    (problem.rateCalls + problem.switchCalls) * crossing[0] + problem.jacobianCalls * crossing[1];
            String name = String.format(
                    Locale.ROOT,
                    "%s %.0e/%.0e q%d %s%s",
                    kind == Sundials.CVODE ? "CVODE" : "IDA",
                    relative,
                    tolerance,
                    order,
                    ordering == 0 ? "AMD" : "COLAMD",
                    convergence > 0 ? " n" + convergence : "");
            return new Result(name, course, wallSeconds, cpuSeconds, cpuSeconds - crossed, new long[] {
                n[0], n[1] + n[4], problem.rateCalls, problem.jacobianCalls, n[2], run.switched(), run.restarts()
            });
        }
    }

    private void print(Result r, Course reference) {
        System.out.printf(
                Locale.ROOT,
                "| %-28s | %9.5f | %8.4f | %8.3f | %8.3f | %8.3f | %8d | %7d | %8d | %7d | %7d | %6d | %6d |%n",
                r.name,
                r.course.rms(reference),
                r.course.most(reference),
                r.wall,
                r.cpu,
                r.net,
                r.counts[0],
                r.counts[1],
                r.counts[2],
                r.counts[3],
                r.counts[4],
                r.counts[5],
                r.counts[6]);
        System.out.flush();
    }

    /** Arguments: example, days, first day (autumn or winter), clock or rule, quick or full. */
    public static void main(String[] args) {
        Sundials.load();
        String example = args.length > 0 ? args[0] : Cases.LARGEST;
        int days = args.length > 1 ? Integer.parseInt(args[1]) : 30;
        LocalDateTime begin = args.length > 2 && args[2].equals("autumn") ? Cases.AUTUMN : Cases.WINTER;
        Rig rig = Cases.rig(example);
        if (args.length > 3 && args[3].equals("rule")) rig = Cases.byRule(rig);
        boolean full = args.length > 4 && args[4].equals("full");
        new SideBySide(rig, begin, days).compare(full, args.length > 5 ? args[5] : "");
    }

    private void compare(boolean full, String chosen) {
        Plant plant = Compiler.compile(rig, weather);
        new Other(plant, second);
        Reduced reduced = new Reduced(plant);
        Whole whole = new Whole(plant);
        double[] ode = {Sundials.crossing(reduced, false), Sundials.crossing(reduced, true)};
        double[] dae = {Sundials.crossing(whole, false), Sundials.crossing(whole, true)};
        System.out.printf(
                Locale.ROOT,
                "%s: %d states (%d algebraic), %.0f days, JDK %s, load %.1f on %d cores%n"
                        + "crossing: rates %.0f ns, Jacobian %.0f ns (CVODE); %.0f ns, %.0f ns (IDA)%n",
                rig.name(),
                plant.network().size(),
                plant.network().size() - reduced.y.length,
                (until - from) / 86400,
                Runtime.version(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                Runtime.getRuntime().availableProcessors(),
                1e9 * ode[0],
                1e9 * ode[1],
                1e9 * dae[0],
                1e9 * dae[1]);
        Result reference = measured(() -> ours(1e-3 * Simulation.TOLERANCE), 1);
        System.out.println("| way | rms K | max K | wall s | cpu s | cpu less crossings s | steps | rejected | rates |"
                + " Jacobians | factorisations | switches | restarts |");
        System.out.println("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        print(reference, reference.course);
        double[] own = full ? new double[] {4e-2, 2e-2, 1e-2, 5e-3, 2e-3, 1e-3, 5e-4} : new double[] {2e-2, 5e-3, 1e-3};
        List<Result> ours = new ArrayList<>();
        for (double tolerance : own) ours.add(measured(() -> ours(tolerance), RUNS));
        ours.forEach(r -> print(r, reference.course));
        List<double[]> settings = new ArrayList<>();
        if (chosen.isEmpty()) {
            double[] tolerances = full
                    ? new double[] {1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 1e-5}
                    : new double[] {1e-2, 3e-3, 1e-3, 3e-4, 1e-4};
            for (double tolerance : tolerances) {
                for (int order : full ? new int[] {2, 3, 4, 5} : new int[] {3, 5}) {
                    for (double c : full ? new double[] {0.003, 0.01, 0.03, 0} : new double[] {0.01}) {
                        settings.add(new double[] {Sundials.CVODE, 0, tolerance, order, 0, c});
                    }
                }
                if (full) settings.add(new double[] {Sundials.CVODE, 1e-6, tolerance, 5, 0, 0.01});
                if (full) settings.add(new double[] {Sundials.CVODE, 0, tolerance, 5, 1, 0.01});
                if (full || tolerance < 1e-3) settings.add(new double[] {Sundials.IDA, 0, tolerance, 5, 0, 0});
            }
        } else {
            for (String one : chosen.split(";")) {
                settings.add(Arrays.stream(one.split(","))
                        .mapToDouble(Double::parseDouble)
                        .toArray());
            }
        }
        List<Result> theirs = new ArrayList<>();
        for (double[] s : settings) {
            double[] crossing = s[0] == Sundials.CVODE ? ode : dae;
            try {
                Result r = measured(() -> theirs((int) s[0], s[1], s[2], (int) s[3], (int) s[4], s[5], crossing), RUNS);
                theirs.add(r);
                print(r, reference.course);
            } catch (IllegalStateException e) {
                System.out.println("| " + Arrays.toString(s) + " | " + e.getMessage() + " |");
            }
        }
        for (Result mine : ours) {
            double error = mine.course.rms(reference.course);
            theirs.stream()
                    .filter(r -> r.course.rms(reference.course) <= 1.05 * error)
                    .min(Comparator.comparingDouble(Result::net))
                    .ifPresent(r -> System.out.printf(
                            Locale.ROOT,
                            "at rms %.5f K: %s takes %.1f times as long (%.1f with crossings)%n",
                            error,
                            r.name,
                            r.net / mine.cpu,
                            r.cpu / mine.cpu));
        }
    }
}
