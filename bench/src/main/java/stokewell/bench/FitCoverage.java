package stokewell.bench;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import stokewell.file.RigFile;
import stokewell.file.WeatherFile;
import stokewell.fit.Burns;
import stokewell.fit.Estimate;
import stokewell.fit.Estimator;
import stokewell.fit.Knob;
import stokewell.fit.Rehearsal;
import stokewell.fit.ShopModel;
import stokewell.fit.Spot;
import stokewell.network.Compiler;
import stokewell.rig.Habit;
import stokewell.rig.Place;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.Site;
import stokewell.weather.Weather;

/**
 * How often the interval of a fit holds the truth: invented readings of a rig whose numbers are drawn at random, with noise,
 * a slow error that no model knows, offsets and badly weighed wood, fitted by the same rig as its file tells it.
 *
 * <p>Arguments: rig file, weather file, first moment, days, runs, seed.
 */
public final class FitCoverage {

    private FitCoverage() {}

    public static void main(String[] args) throws Exception {
        Rig rig = RigFile.read(Path.of(args[0]), List.of()).rig();
        Place place = rig.place();
        Site site = new Site(place.latitude(), place.longitude(), place.utcOffset(), place.altitude());
        LocalDateTime begin = LocalDateTime.parse(args[2]);
        int days = Integer.parseInt(args[3]);
        int runs = Integer.parseInt(args[4]);
        long seed = Long.parseLong(args[5]);
        Weather weather =
                Weather.of(WeatherFile.read(Path.of(args[1]), site).hourly(), site, Compiler.surfaces(rig), begin);
        List<Spot> spots = List.of(Spot.ROOM, Spot.STORE_TOP, Spot.STORE_BOTTOM, Spot.OUTDOOR);
        List<Knob> knobs = Knob.of(rig);
        Simulation settled = Replay.settled(rig, weather.meanDay(begin, begin.plusDays(days)), true);
        int[] held = new int[100];
        int[] count = new int[100];
        double[] told = new double[100];
        List<String> names = new ArrayList<>();
        double seconds = 0;
        int engineRuns = 0;
        for (int run = 0; run < runs; run++) {
            Random dice = new Random(seed + run);
            Rig truth = rig;
            double[] factor = new double[knobs.size()];
            double heat = 1;
            for (int k = 0; k < factor.length; k++) {
                factor[k] = Math.max(-1.5, Math.min(1.5, dice.nextGaussian())) * knobs.get(k).spread;
                truth = knobs.get(k).turned(truth, Math.exp(factor[k]));
                if (knobs.get(k) == Knob.WOOD) heat = Math.exp(factor[k]);
            }
            List<Replay.Load> loads = new ArrayList<>();
            for (int d = 0; d < days; d++) {
                for (Habit.Load l : ((Habit.Clock) rig.habit()).loads()) {
                    if (dice.nextDouble() < 0.15) continue;
                    double t = d * 86400 + l.at() - begin.toLocalTime().toSecondOfDay() + 1200 * dice.nextGaussian();
                    if (t > 600) loads.add(new Replay.Load(t, l.mass() * (0.8 + 0.4 * dice.nextDouble())));
                }
            }
            Simulation trueStart = Replay.settled(truth, weather.meanDay(begin, begin.plusDays(days)), false);
            Rehearsal.Invented invented = Rehearsal.readings(
                    truth,
                    weather,
                    trueStart,
                    loads,
                    heat,
                    spots,
                    0,
                    days * 86400.0,
                    new Rehearsal.Spoilt(0.1, 0.3, 3 * 3600, 0.3, 300, 0.07, seed + run));
            long t0 = System.nanoTime();
            ShopModel model = new ShopModel(
                    rig,
                    weather,
                    settled,
                    invented.readings(),
                    Burns.of(
                            loads,
                            null,
                            rig,
                            0,
                            days * 86400.0,
                            begin.toLocalTime().toSecondOfDay()),
                    knobs);
            Estimate e = Estimator.of(model, model.observed(), share -> true);
            seconds += (System.nanoTime() - t0) * 1e-9;
            engineRuns += e.runs();
            names = model.unknowns().stream().map(u -> u.name()).toList();
            StringBuilder line = new StringBuilder();
            for (int j = 0; j < names.size(); j++) {
                double right;
                if (j < knobs.size()) right = factor[j];
                else if (names.get(j).endsWith(" offset"))
                    right = invented.offsets().get(Spot.named(names.get(j).replace(" offset", "")));
                else continue;
                count[j]++;
                told[j] += e.told(j);
                if (Math.abs(e.value()[j] - right) <= e.half(j, 0.9)) held[j]++;
                if (run < 3)
                    line.append(String.format(
                            Locale.ROOT, " %s %.2f(%.2f+-%.2f)", names.get(j), right, e.value()[j], e.half(j, .9)));
            }
            if (run < 3)
                System.out.println(line + " rounds " + e.rounds() + " runs " + e.runs() + " f " + e.freedom() + " "
                        + e.disturbances());
        }
        int all = 0;
        int allHeld = 0;
        for (int j = 0; j < names.size(); j++) {
            if (count[j] == 0) continue;
            System.out.printf(
                    Locale.ROOT,
                    "%-22s held %5.1f %%  told %.2f%n",
                    names.get(j),
                    100.0 * held[j] / count[j],
                    told[j] / count[j]);
            all += count[j];
            allHeld += held[j];
        }
        System.out.printf(
                Locale.ROOT,
                "all %.1f %% of %d intervals; %.2f s and %d runs of the engine a fit%n",
                100.0 * allHeld / all,
                all,
                seconds / runs,
                engineRuns / runs);
    }
}
