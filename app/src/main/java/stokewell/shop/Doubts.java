package stokewell.shop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stokewell.file.SensorKind;

/**
 * How a sensor's readings lie in time, and which to distrust. Nothing is taken out of the shop; who computes asks for
 * {@link #sound}. The rules are our own common practice, no source; docs/readings.md tells them to the reader.
 *
 * @param step   usual time from one reading to the next, s: the median; 0 with fewer than two readings
 * @param steady whether most readings come at that step, and not only on change
 * @param gaps   stretches without readings; from the last before to the first after
 * @param spikes single readings, or two, far from those before and after
 * @param stuck  stretches in which the value does not move at all, though this sensor's does
 */
public record Doubts(long step, boolean steady, List<Stretch> gaps, List<Stretch> spikes, List<Stretch> stuck) {

    /**
     * Readings from one place to another, both counted.
     *
     * @param seconds from the first to the last
     */
    public record Stretch(int first, int last, long seconds) {}

    /** As many differences are looked at for what is usual; of more, evenly so many. */
    private static final int SAMPLE = 200_000;

    private static final double MISSED = 1.8;
    private static final double IRREGULAR = 3;
    private static final double SILENT = 10;
    private static final long STUCK = 12 * 3600;
    private static final int STUCK_READINGS = 12;
    private static final double STUCK_TIMES = 10;

    /** What there is to say of the readings. */
    public static Doubts of(SensorKind kind, Readings readings) {
        int n = readings.size();
        if (n < 2) return new Doubts(0, true, List.of(), List.of(), List.of());
        double[] steps = new double[Math.min(SAMPLE, n - 1)];
        for (int k = 0; k < steps.length; k++) {
            int i = place(k, steps.length, n - 1);
            steps[k] = readings.time(i + 1) - readings.time(i);
        }
        Arrays.sort(steps);
        long step = (long) steps[steps.length / 2];
        double rare = share(steps, 0.9);
        boolean steady = rare <= IRREGULAR * step;
        double limit = steady ? MISSED * step : SILENT * rare;
        List<Stretch> gaps = new ArrayList<>();
        for (int i = 1; i < n; i++) {
            long apart = readings.time(i) - readings.time(i - 1);
            if (apart > limit) gaps.add(new Stretch(i - 1, i, apart));
        }
        return new Doubts(step, steady, List.copyOf(gaps), spikes(kind, readings, limit), stuck(kind, readings, limit));
    }

    /** The readings without spikes and stuck stretches. */
    public Readings sound(Readings readings) {
        if (spikes.isEmpty() && stuck.isEmpty()) return readings;
        boolean[] out = new boolean[readings.size()];
        for (Stretch s : spikes) Arrays.fill(out, s.first, s.last + 1, true);
        for (Stretch s : stuck) Arrays.fill(out, s.first, s.last + 1, true);
        Growing sound = new Growing();
        for (int i = 0; i < out.length; i++) if (!out[i]) sound.add(readings.time(i), readings.value(i));
        return sound.readings();
    }

    /** How many readings stand in such stretches. */
    public static int count(List<Stretch> stretches) {
        int n = 0;
        for (Stretch s : stretches) n += s.last - s.first + 1;
        return n;
    }

    private static List<Stretch> spikes(SensorKind kind, Readings readings, double gap) {
        List<Stretch> spikes = new ArrayList<>();
        int n = readings.size();
        if (kind == SensorKind.SWITCH || n < 5) return spikes;
        double limit = spikeLimit(kind, readings);
        for (int i = 1; i < n - 1; i++) {
            for (int wide = 1; wide <= 2 && i + wide < n; wide++) {
                if (!stands(readings, i - 1, i + wide, limit, gap)) continue;
                spikes.add(new Stretch(i, i + wide - 1, readings.time(i + wide - 1) - readings.time(i)));
                i += wide;
                break;
            }
        }
        return List.copyOf(spikes);
    }

    /** Whether all between two readings stand out to the same side by more than the limit, while these two are alike. */
    private static boolean stands(Readings r, int before, int after, double limit, double gap) {
        if (r.time(after) - r.time(before) > (after - before) * gap) return false;
        double a = r.value(before);
        double b = r.value(after);
        double up = Double.POSITIVE_INFINITY;
        double down = Double.POSITIVE_INFINITY;
        for (int i = before + 1; i < after; i++) {
            up = Math.min(up, r.value(i) - Math.max(a, b));
            down = Math.min(down, Math.min(a, b) - r.value(i));
        }
        double out = Math.max(up, down);
        return out > limit && Math.abs(a - b) < out / 4;
    }

    /** How far out is too far: many times what is usual from one reading to the next, and never little. */
    private static double spikeLimit(SensorKind kind, Readings readings) {
        int n = readings.size();
        double[] moves = new double[Math.min(SAMPLE, n - 1)];
        for (int k = 0; k < moves.length; k++) {
            int i = place(k, moves.length, n - 1);
            moves[k] = Math.abs(readings.value(i + 1) - readings.value(i));
        }
        Arrays.sort(moves);
        return switch (kind) {
            case TEMPERATURE -> Math.max(5, 8 * share(moves, 0.9));
            case HUMIDITY -> Math.max(0.15, 8 * share(moves, 0.9));
            default -> {
                double usual = 10 * share(moves, 0.99);
                yield usual > 0 ? usual : Double.POSITIVE_INFINITY;
            }
        };
    }

    private static List<Stretch> stuck(SensorKind kind, Readings readings, double gap) {
        // a damp night holds the humidity at 100 % for as long as it lasts
        if (kind != SensorKind.TEMPERATURE) return List.of();
        List<Stretch> runs = new ArrayList<>();
        int n = readings.size();
        int from = 0;
        for (int i = 1; i <= n; i++) {
            boolean on = i < n
                    && readings.value(i) == readings.value(i - 1)
                    && readings.time(i) - readings.time(i - 1) <= gap;
            if (on) continue;
            runs.add(new Stretch(from, i - 1, readings.time(i - 1) - readings.time(from)));
            from = i;
        }
        double[] lengths = new double[Math.min(SAMPLE, runs.size())];
        for (int k = 0; k < lengths.length; k++) {
            lengths[k] = runs.get(place(k, lengths.length, runs.size())).seconds;
        }
        Arrays.sort(lengths);
        double usual = runs.size() < 3 ? 0 : share(lengths, 0.9);
        runs.removeIf(run ->
                run.seconds < STUCK || run.last - run.first + 1 < STUCK_READINGS || run.seconds <= STUCK_TIMES * usual);
        return List.copyOf(runs);
    }

    private static int place(int k, int of, int among) {
        return (int) ((long) k * among / of);
    }

    private static double share(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
    }
}
