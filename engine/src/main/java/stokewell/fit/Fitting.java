package stokewell.fit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoublePredicate;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.run.Simulation;
import stokewell.weather.Weather;

/** Fits a rig to its readings: settles it, keeps the last nights back, estimates, and predicts them. */
public final class Fitting {

    private static final double DAY = 86400;
    /** Probability of every interval. */
    public static final double SURE = 0.9;

    /**
     * Errors of a fit to a rig are this many times those that least squares tells. Least squares knows the sensors' errors, not
     * those of the model: a thermostat taken on its mean, walls that were not settled. Found from 30 invented shops, see
     * docs/fit.md; the check there is on other ones.
     */
    public static final double WIDER = 1.65;
    /** So much less a misfit tells than it would if errors were as small as reckoned. */
    static final double DULL = WIDER * WIDER;

    /** Days that are enough to come near, s. */
    private static final double FIRST = 6 * DAY;

    private static final int MOST_CLOSELY = 2;
    private static final double CONFUSED = 0.85;

    private Fitting() {}

    /** The nights that are kept back of so many days. */
    static int keptBack(double days) {
        return days >= 7 ? 2 : days >= 4 ? 1 : 0;
    }

    /**
     * Fits.
     *
     * @param weather of those days, made for the rig's surfaces, t = 0 at its start
     * @param knobs   what may be turned
     * @param goOn    told the share done, 0 to 1; returns false to stop
     * @throws CancellationException when it is stopped
     */
    public static Fit fit(Rig rig, Weather weather, Readings readings, List<Knob> knobs, DoublePredicate goOn) {
        return fit(rig, weather, readings, knobs, null, goOn);
    }

    /**
     * Fits.
     *
     * @param closely knobs whose likelihood is followed away from its best; null for those that the readings tell least
     */
    public static Fit fit(
            Rig rig, Weather weather, Readings readings, List<Knob> knobs, List<Knob> closely, DoublePredicate goOn) {
        Kept kept = kept(rig, weather, readings, knobs, done -> goOn.test(0.8 * done));
        ShopModel whole = kept.found().model();
        Estimate told = kept.found().told();
        List<Fit.Holdout> holdout = kept.holdout();
        Estimate estimate = told.widened(WIDER);
        Watch watch = Deviations.of(whole, rig, told, done -> goOn.test(0.8 + 0.1 * done));
        List<Fit.Confused> confused = confused(told);
        List<Knob> asked = closely == null ? open(whole, estimate, confused) : closely;
        Telling telling = new Telling(whole, told, estimate);
        List<Profile> profiles = telling.profiles(asked, done -> goOn.test(0.9));
        Learnt learnt = Learning.from(whole, weather, readings, estimate, done -> goOn.test(0.9 + 0.1 * done));
        return told(
                rig,
                weather,
                readings,
                whole,
                estimate,
                holdout,
                learnt,
                new Looked(confused, watch, profiles, telling.advice(asked)));
    }

    /** What was found, and how well the nights that were kept back at first were predicted; null where none were. */
    private record Kept(Found found, List<Fit.Holdout> holdout) {}

    private static Kept kept(Rig rig, Weather weather, Readings readings, List<Knob> knobs, DoublePredicate goOn) {
        double days = (readings.until() - readings.from()) / DAY;
        if (days < 1.5) throw new IllegalArgumentException("a fit needs a day and a half of readings or more");
        int nights = keptBack(days);
        double cut = readings.until() - nights * DAY;
        List<List<Fit.Holdout>> held = new ArrayList<>();
        Way way = nights == 0
                ? Estimator::of
                : (whole, observed, start, go) -> Estimator.of(
                        whole, observed, start, cut, p -> held.add(holdout((ShopModel) whole, p, cut)), go);
        return new Kept(found(rig, weather, readings, knobs, way, goOn), held.isEmpty() ? null : held.get(0));
    }

    /**
     * The numbers as {@link #fit} finds them, nothing else looked at; errors as least squares tells them, not widened.
     *
     * @throws CancellationException when it is stopped
     */
    public static Estimate numbers(
            Rig rig, Weather weather, Readings readings, List<Knob> knobs, DoublePredicate goOn) {
        return kept(rig, weather, readings, knobs, goOn).found().told();
    }

    /** What was looked at beside the numbers themselves. */
    private record Looked(List<Fit.Confused> confused, Watch watch, List<Profile> profiles, List<Advice> advice) {}

    /** The knobs that are worth a closer look: of pairs that only show together, then those hardly told that bear on wood. */
    private static List<Knob> open(ShopModel model, Estimate e, List<Fit.Confused> confused) {
        List<Knob> open = new ArrayList<>();
        for (Fit.Confused c : confused) {
            for (Unknown u : List.of(c.one(), c.other())) {
                int j = e.place(u.name());
                if (j < model.knobs().size() && !open.contains(model.knobs().get(j)))
                    open.add(model.knobs().get(j));
            }
        }
        for (Knob k : List.of(Knob.BASE, Knob.JACKET, Knob.WALLS, Knob.LEAKAGE)) {
            int j = model.knobs().indexOf(k);
            if (j >= 0 && !open.contains(k) && e.told(j) < 0.75) open.add(k);
        }
        return List.copyOf(open.subList(0, Math.min(MOST_CLOSELY, open.size())));
    }

    private static List<Fit.Confused> confused(Estimate e) {
        List<Fit.Confused> confused = new ArrayList<>();
        for (int i = 0; i < e.value().length; i++) {
            for (int j = 0; j < i; j++) {
                double r = e.correlation(i, j);
                if (Math.abs(r) > CONFUSED) {
                    confused.add(
                            new Fit.Confused(e.unknowns().get(j), e.unknowns().get(i), r));
                }
            }
        }
        return List.copyOf(confused);
    }

    /**
     * Looks for a change in the readings, and for nothing else.
     *
     * @throws CancellationException when it is stopped
     */
    public static Watch watch(Rig rig, Weather weather, Readings readings, List<Knob> knobs, DoublePredicate goOn) {
        Found found = found(rig, weather, readings, knobs, done -> goOn.test(0.8 * done));
        return Deviations.of(found.model(), rig, found.told(), done -> goOn.test(0.8 + 0.2 * done));
    }

    /** A model of the shop, and the values with which it reads as was read; errors not widened. */
    record Found(ShopModel model, Estimate told) {}

    /** Finds values from given ones on. */
    private interface Way {
        Estimate from(Response model, Observed observed, double[] start, DoublePredicate goOn);
    }

    /** Finds the values, and looks at nothing else. */
    static Found found(Rig rig, Weather weather, Readings readings, List<Knob> knobs, DoublePredicate goOn) {
        return found(rig, weather, readings, knobs, Estimator::of, goOn);
    }

    private static Found found(
            Rig rig, Weather weather, Readings readings, List<Knob> knobs, Way way, DoublePredicate goOn) {
        Simulation settled = settled(rig, weather, readings);
        List<Burn> burns = burns(rig, weather, readings);
        ShopModel whole = new ShopModel(rig, weather, settled, readings, burns, knobs);
        double[] start = near(rig, weather, settled, readings, burns, knobs, whole, done -> goOn.test(0.375 * done));
        return new Found(whole, way.from(whole, whole.observed(), start, done -> goOn.test(0.375 + 0.625 * done)));
    }

    /** What was burnt in those days: what was noted, and what a sensor of the fire shows besides. */
    static List<Burn> burns(Rig rig, Weather weather, Readings readings) {
        return Burns.of(
                readings.noted(),
                readings.of(Spot.STOVE) != null ? readings.of(Spot.STOVE) : readings.of(Spot.FLUE),
                rig,
                readings.from(),
                readings.until(),
                weather.start().toLocalTime().toSecondOfDay());
    }

    /** Values to begin from: as known before for a short record, else what its first days say, which takes less time. */
    private static double[] near(
            Rig rig,
            Weather weather,
            Simulation settled,
            Readings readings,
            List<Burn> burns,
            List<Knob> knobs,
            ShopModel whole,
            DoublePredicate goOn) {
        double[] p = whole.unknowns().stream().mapToDouble(Unknown::before).toArray();
        double cut = Math.min(
                readings.from() + FIRST, readings.until() - keptBack((readings.until() - readings.from()) / DAY) * DAY);
        List<Burn> seen = burns.stream().filter(b -> b.time() < cut).toList();
        ShopModel part = new ShopModel(rig, weather, settled, readings.between(readings.from(), cut), seen, knobs);
        double[] q = part.unknowns().stream().mapToDouble(Unknown::before).toArray();
        double[] found = Estimator.near(part, part.observed(), q, goOn);
        for (int j = 0; j < q.length; j++) {
            for (int i = 0; i < p.length; i++) {
                if (whole.unknowns().get(i).name().equals(part.unknowns().get(j).name())) p[i] = found[j];
            }
        }
        return p;
    }

    /** The rig settled to the mean of those days, fed as on those days. */
    public static Simulation settled(Rig rig, Weather weather, Readings readings) {
        LocalDateTime begin = weather.start().plusSeconds(Math.round(readings.from()));
        LocalDateTime end = weather.start().plusSeconds(Math.round(readings.until()));
        return Replay.settled(rig, weather.meanDay(begin, end), true);
    }

    private static List<Fit.Holdout> holdout(ShopModel whole, double[] p, double cut) {
        double[] predicted = whole.predicted(p, cut);
        if (predicted == null) return null;
        Observed o = whole.observed();
        List<Fit.Holdout> all = new ArrayList<>();
        for (int c = 0; c < o.channels().size(); c++) {
            Observed.Channel channel = o.channels().get(c);
            double sum = 0;
            double lazy = 0;
            int n = 0;
            for (int i = channel.from(); i < channel.until(); i++) {
                if (o.time()[i] < cut) continue;
                int before = dayBefore(o, channel, i, cut);
                if (before < 0) continue;
                sum += square(o.value()[i] - predicted[i]);
                lazy += square(o.value()[i] - o.value()[before]);
                n++;
            }
            if (n > 0) {
                all.add(new Fit.Holdout(
                        whole.spots().get(c), n * ShopModel.BIN / 3600, Math.sqrt(sum / n), Math.sqrt(lazy / n)));
            }
        }
        return all;
    }

    /** What was read at the same hour on the last day before the nights were kept back; -1 where nothing was. */
    private static int dayBefore(Observed o, Observed.Channel channel, int i, double cut) {
        double days = Math.ceil((o.time()[i] - cut) / DAY + 1e-9);
        double wanted = o.time()[i] - days * DAY;
        for (int k = i; k >= channel.from(); k--) {
            if (Math.abs(o.time()[k] - wanted) <= 0.5 * ShopModel.BIN && o.time()[k] < cut) return k;
        }
        return -1;
    }

    private static double square(double x) {
        return x * x;
    }

    private static Fit told(
            Rig rig,
            Weather weather,
            Readings readings,
            ShopModel model,
            Estimate e,
            List<Fit.Holdout> holdout,
            Learnt learnt,
            Looked looked) {
        List<Fit.Factor> factors = new ArrayList<>();
        for (int j = 0; j < model.knobs().size(); j++) {
            double half = e.half(j, SURE);
            factors.add(new Fit.Factor(
                    model.knobs().get(j),
                    Math.exp(e.value()[j]),
                    Math.exp(e.value()[j] - half),
                    Math.exp(e.value()[j] + half),
                    e.told(j)));
        }
        Rig fitted = model.rig(e.value());
        List<Burn> burns = new ArrayList<>();
        List<Replay.Load> loads = model.loads(e.value());
        for (int i = 0; i < loads.size(); i++) {
            burns.add(new Burn(
                    loads.get(i).time(),
                    loads.get(i).mass(),
                    model.burns().get(i).noted()));
        }
        return new Fit(
                rig,
                fitted,
                weather.start(),
                readings.from(),
                readings.until(),
                e,
                List.copyOf(factors),
                traces(model, e),
                holdout,
                List.copyOf(burns),
                learnt,
                looked.confused(),
                looked.watch(),
                looked.profiles(),
                looked.advice());
    }

    private static List<Fit.Trace> traces(ShopModel model, Estimate e) {
        Observed o = model.observed();
        List<Fit.Trace> traces = new ArrayList<>();
        double wide = e.quantile(SURE);
        for (int c = 0; c < o.channels().size(); c++) {
            Observed.Channel channel = o.channels().get(c);
            int n = channel.until() - channel.from();
            double[] time = new double[n];
            double[] read = new double[n];
            double[] modelled = new double[n];
            double[] band = new double[n];
            boolean[] skipped = new boolean[n];
            Disturbance d = e.disturbances().get(c);
            double sum = 0;
            int used = 0;
            int within = 0;
            for (int k = 0; k < n; k++) {
                int i = channel.from() + k;
                time[k] = o.time()[i];
                read[k] = o.value()[i];
                modelled[k] = e.predicted()[i];
                skipped[k] = e.skipped()[i];
                double variance = d.noise() * d.noise() + d.slow() * d.slow();
                for (int a = 0; a < e.value().length; a++) {
                    for (int b = 0; b < e.value().length; b++) {
                        variance += e.jacobian()[a][i]
                                * e.jacobian()[b][i]
                                * e.covariance().getEntry(a, b);
                    }
                }
                band[k] = wide * Math.sqrt(variance);
                if (skipped[k]) continue;
                used++;
                sum += square(read[k] - modelled[k]);
                if (Math.abs(read[k] - modelled[k]) <= band[k]) within++;
            }
            traces.add(new Fit.Trace(
                    model.spots().get(c),
                    time,
                    read,
                    modelled,
                    band,
                    skipped,
                    Math.sqrt(sum / Math.max(1, used)),
                    within / (double) Math.max(1, used),
                    e.value()[e.place(model.spots().get(c).words + " offset")],
                    d));
        }
        return List.copyOf(traces);
    }
}
