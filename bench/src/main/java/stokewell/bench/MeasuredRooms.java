package stokewell.bench;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import stokewell.file.RigFile;
import stokewell.fit.Estimate;
import stokewell.fit.Estimator;
import stokewell.rig.Rig;

/**
 * Predicts days of measured rooms that it has not seen, from measured weather and heat: the room of this engine fitted by the
 * estimator, against a plain first-order room fitted by a general library, and against saying that all will be as the day
 * before. Each fold is fitted on its days, set to the last reading, and run on through the days kept back.
 *
 * <p>Arguments: folder of the measured data, folder of the rigs.
 */
public final class MeasuredRooms {

    private static final String[] WAYS = {"engine", "first order, whole run", "first order, hour ahead", "day before"};

    private MeasuredRooms() {}

    public static void main(String[] args) throws Exception {
        Path data = Path.of(args[0]);
        Path rigs = Path.of(args[1]);
        compare("flexhouse", RoomLog.flexhouse(data), rigs, 96, 24, 15);
        compare("solarhouse", RoomLog.solarhouse(data), rigs, 168, 48, 72);
        compare("slab-hall", RoomLog.slabHall(data), rigs, 240, 48, 96);
    }

    private static void compare(String name, RoomLog log, Path rigs, int train, int keep, int every) throws Exception {
        Rig rig = RigFile.read(rigs.resolve(name + ".yaml"), List.of()).rig();
        double[] squares = new double[WAYS.length];
        int[] best = new int[WAYS.length];
        int hours = 0;
        int folds = 0;
        long t0 = System.nanoTime();
        for (int from = 0; from + train + keep <= log.hours(); from += every) {
            RoomLog fold = log.part(from, from + train + keep);
            double[][] said = predicted(rig, fold, train);
            double[] own = new double[WAYS.length];
            for (int w = 0; w < WAYS.length; w++) {
                for (int h = 0; h < keep; h++) {
                    double off = fold.room()[train + h] - said[w][h];
                    own[w] += off * off;
                }
                squares[w] += own[w];
            }
            int first = 0;
            for (int w = 1; w < WAYS.length; w++) if (own[w] < own[first]) first = w;
            best[first]++;
            hours += keep;
            folds++;
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %d h read, %d folds of %d h fitted and %d h kept back, %.0f s%n",
                name,
                log.hours(),
                folds,
                train,
                keep,
                (System.nanoTime() - t0) * 1e-9);
        for (int w = 0; w < WAYS.length; w++) {
            System.out.printf(
                    Locale.ROOT, "  %-24s %5.2f K rms, best in %d%n", WAYS[w], Math.sqrt(squares[w] / hours), best[w]);
        }
    }

    private static double[][] predicted(Rig rig, RoomLog fold, int train) {
        RoomLog seen = fold.part(0, train);
        RoomLog rest = fold.part(train - 1, fold.hours());
        EngineRoom room = new EngineRoom(rig, fold, train);
        Estimate e = Estimator.of(room, room.observed(), share -> true);
        if (Boolean.getBoolean("tell")) {
            StringBuilder b = new StringBuilder();
            for (int j = 0; j < e.value().length; j++) {
                b.append(String.format(
                        Locale.ROOT, " %s %.2f", e.unknowns().get(j).name(), e.value()[j]));
            }
            System.out.println(b + " rounds " + e.rounds() + " " + e.disturbances());
        }
        double[] run = room.run(e.value(), train - 1).room();
        double[] before = seen.room();
        int keep = fold.hours() - train;
        double[] lazy = new double[keep];
        for (int h = 0; h < keep; h++) lazy[h] = before[train - 24 + h % 24];
        double start = before[train - 1];
        return new double[][] {
            java.util.Arrays.copyOfRange(run, train, fold.hours()),
            after(FirstOrder.predicted(FirstOrder.wholeRun(seen), start, rest)),
            after(FirstOrder.predicted(FirstOrder.hourAhead(seen), start, rest)),
            lazy
        };
    }

    /** Without the hour that it began with. */
    private static double[] after(double[] run) {
        return java.util.Arrays.copyOfRange(run, 1, run.length);
    }
}
