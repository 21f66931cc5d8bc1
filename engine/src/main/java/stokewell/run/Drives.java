package stokewell.run;

import java.util.Arrays;
import java.util.List;
import stokewell.network.Driven;

/** What runs of pumps and fans, how often each has started and how long it ran. */
final class Drives {

    /** Hears of a start or a stop. */
    interface Heard {
        void switched(int drive, boolean on);
    }

    private final List<Driven> driven;
    private final boolean[] running;
    private final int[] starts;
    private final double[] seconds;
    private final double[] since;
    private final Boolean[] forced;

    Drives(List<Driven> driven) {
        this.driven = driven;
        running = new boolean[driven.size()];
        starts = new int[running.length];
        seconds = new double[running.length];
        since = new double[running.length];
        forced = new Boolean[running.length];
    }

    int count() {
        return running.length;
    }

    boolean running(int drive) {
        return running[drive];
    }

    int starts(int drive) {
        return starts[drive];
    }

    /** How long it ran, s, up to the last {@link #count(double)}. */
    double seconds(int drive) {
        return seconds[drive];
    }

    /** Counts from here on. */
    void begin(double t) {
        Arrays.fill(starts, 0);
        Arrays.fill(seconds, 0);
        Arrays.fill(since, t);
    }

    /** Counts what runs up to now. */
    void count(double t) {
        for (int i = 0; i < running.length; i++) {
            if (!running[i]) continue;
            seconds[i] += t - since[i];
            since[i] = t;
        }
    }

    /** Holds one running or still, whatever its switch calls for. */
    void force(String name, boolean on) {
        for (int i = 0; i < running.length; i++) if (driven.get(i).name().equals(name)) forced[i] = on;
    }

    /** Leaves all to their switches. */
    void free() {
        Arrays.fill(forced, null);
    }

    /** Runs and stops what latches and hours say; true if anything changed. */
    boolean actuate(double t, double secondOfDay, Heard heard) {
        boolean changed = false;
        for (int i = 0; i < running.length; i++) {
            boolean on = forced[i] == null ? driven.get(i).called(secondOfDay) : forced[i];
            driven.get(i).run(on);
            if (on == running[i]) continue;
            changed = true;
            running[i] = on;
            if (on) {
                starts[i]++;
                since[i] = t;
            } else {
                seconds[i] += t - since[i];
            }
            heard.switched(i, on);
        }
        return changed;
    }
}
