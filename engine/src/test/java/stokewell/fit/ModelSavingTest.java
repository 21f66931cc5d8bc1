package stokewell.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import stokewell.network.Compiler;
import stokewell.rig.Changed;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.DayRange;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/** The model of the rig as it was, run through the days after: with walls that are mended it needs more wood than was burnt. */
class ModelSavingTest {

    private static final double DAYS = 3;

    /** A stove in a room, without water: nothing but wood holds the room. */
    private static Rig rig() {
        Rig r = Rigs.pumped();
        return Changed.with(
                r,
                "name",
                "stove alone",
                "story",
                "",
                "pickups",
                List.of(),
                "loop",
                null,
                "store",
                null,
                "emitters",
                List.of(),
                "switches",
                List.of());
    }

    private static Weather weather(Rig rig, double low, double high) {
        Site site = Compiler.site(rig);
        DayRange range = new DayRange(273.15 + low, 273.15 + high);
        return Weather.day(range, 3, 0.4, site, LocalDate.of(2025, 1, 20), Compiler.surfaces(rig));
    }

    private static Readings read(Rig truth, Weather weather, long seed) {
        List<Replay.Load> loads = new ArrayList<>();
        for (int d = 0; d < DAYS; d++) {
            for (int hour : new int[] {8, 11, 14, 17}) loads.add(new Replay.Load(86400.0 * d + 3600 * hour, 5));
        }
        return Rehearsal.readings(
                        truth,
                        weather,
                        Replay.settled(truth, weather, true),
                        loads,
                        1,
                        List.of(Spot.ROOM, Spot.OUTDOOR),
                        0,
                        DAYS * 86400,
                        new Rehearsal.Spoilt(0.1, 0.1, 7200, 0, 600, 0.02, seed))
                .readings();
    }

    /** The share by playing the old rig through the new days with so many times the wood, until the room is as warm. */
    private static double truth(Rig old, Rig mended, Weather weather) {
        Readings now = read(mended, weather, 9);
        double wanted = mean(now);
        Simulation settled = Replay.settled(old, weather, true);
        double low = 1;
        double high = 2.5;
        for (int k = 0; k < 12; k++) {
            double middle = 0.5 * (low + high);
            Replay replay = Replay.from(old, weather, settled, 0, 0, 1e-2, false);
            List<Replay.Load> loads = new ArrayList<>();
            for (Replay.Load l : now.noted()) {
                loads.add(new Replay.Load(l.time(), l.mass() * middle));
            }
            double[] room = replay.play(
                            loads, List.of(), Probing.of(List.of(Spot.ROOM)).of(replay.plant()), DAYS * 86400, 600)
                    .read()[0];
            double sum = 0;
            for (double v : room) sum += v;
            if (sum / room.length > wanted) high = middle;
            else low = middle;
        }
        return 1 - 1 / low;
    }

    private static double mean(Readings r) {
        return r.of(Spot.ROOM).mean();
    }

    /** What was truly saved and what the model says. */
    private record Pair(double truth, ModelSaving said) {

        boolean holds() {
            return Math.abs(said.share().value() - truth) <= said.share().half();
        }
    }

    /**
     * Winters as they come: every number of the rig off its file, walls and leaks mended by some share, cold and mild days; null
     * where the truth lies at an end of its search, or the model says that it cannot tell.
     */
    private static Pair pair(long seed) {
        Random dice = new Random(seed);
        Rig filed = rig();
        Rig old = filed;
        for (Knob k : Knob.of(filed)) {
            double off = Math.max(-1.5, Math.min(1.5, dice.nextGaussian())) * k.spread;
            if (k != Knob.WOOD) old = k.turned(old, Math.exp(off));
        }
        double better = 0.5 + 0.5 * dice.nextDouble();
        Rig mended = Knob.LEAKAGE.turned(Knob.WALLS.turned(old, better), better);
        Weather cold = weather(old, -14 + 6 * dice.nextDouble(), -4 + 3 * dice.nextDouble());
        Weather mild = weather(old, -10 + 6 * dice.nextDouble(), 1 + 3 * dice.nextDouble());
        double truth = truth(old, mended, mild);
        if (truth < 0.001 || truth > 0.599) return null;
        Readings before = read(old, cold, 2 * seed);
        Readings after = read(mended, mild, 2 * seed + 1);
        ModelSaving said = ModelSaving.of(filed, cold, before, mild, after, done -> true);
        return said == null ? null : new Pair(truth, said);
    }

    @Test
    void theIntervalHoldsTheTruthOfPairsThatWereNotUsedToSetIt() {
        int held = 0;
        int all = 0;
        for (long seed = 1000; all < 6; seed++) {
            Pair p = pair(seed);
            if (p == null) continue;
            all++;
            if (p.holds()) held++;
        }
        // six intervals of 90 %: fewer than four once in sixty times by chance. As the interval was, three held on the
        // mean
        assertThat(held).isGreaterThanOrEqualTo(4);
    }

    /** The same for many, by command: docs/saved-wood.md. */
    @Test
    @EnabledIfSystemProperty(named = "pairs", matches = "\\d+")
    void printsHowOftenTheIntervalHolds() {
        int held = 0;
        int all = 0;
        double width = 0;
        for (int k = 0; k < Integer.getInteger("pairs"); k++) {
            Pair p = pair(Integer.getInteger("seed", 1000) + k);
            if (p == null) continue;
            all++;
            width += p.said().share().half();
            if (p.holds()) held++;
        }
        System.out.printf(Locale.ROOT, "%d of %d intervals hold, +/- %.3f on the mean%n", held, all, width / all);
    }

    @Test
    void findsWhatMendedWallsSave() {
        Rig old = rig();
        Rig mended = Knob.LEAKAGE.turned(Knob.WALLS.turned(old, 0.6), 0.6);
        Weather cold = weather(old, -12, -3);
        Weather mild = weather(old, -8, 2);
        double truth = truth(old, mended, mild);
        assertThat(truth).isGreaterThan(0.1);
        ModelSaving said = ModelSaving.of(old, cold, read(old, cold, 1), mild, read(mended, mild, 2), share -> true);
        assertThat(said.share().value()).isCloseTo(truth, within(0.06));
        assertThat(said.share().half()).isBetween(1e-4, 0.1);
        assertThat(said.before()).isCloseTo(1, within(0.1));
    }
}
