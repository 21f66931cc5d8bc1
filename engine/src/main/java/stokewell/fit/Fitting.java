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
        double from = readings.from();
        double until = readings.until();
        double days = (until - from) / DAY;
        if (days < 1.5) throw new IllegalArgumentException("a fit needs a day and a half of readings or more");
        Simulation settled = settled(rig, weather, readings);
        List<Burn> burns = Burns.of(
                readings.noted(),
                readings.of(Spot.STOVE) != null ? readings.of(Spot.STOVE) : readings.of(Spot.FLUE),
                rig,
                from,
                until,
                weather.start().toLocalTime().toSecondOfDay());
        int kept = keptBack(days);
        double cut = until - kept * DAY;
        double share = kept == 0 ? 0 : 0.6;
        List<Fit.Holdout> holdout = null;
        ShopModel whole = new ShopModel(rig, weather, settled, readings, burns, knobs);
        double[] start = null;
        if (kept > 0) {
            List<Burn> seen = burns.stream().filter(b -> b.time() < cut).toList();
            ShopModel part = new ShopModel(rig, weather, settled, readings.between(from, cut), seen, knobs);
            Estimate first = Estimator.of(part, part.observed(), done -> goOn.test(share * done));
            start = carried(part, first, whole);
            holdout = holdout(whole, start, cut);
        }
        DoublePredicate rest = done -> goOn.test(share + (0.9 - share) * done);
        Estimate told = start == null
                ? Estimator.of(whole, whole.observed(), rest)
                : Estimator.of(whole, whole.observed(), start, rest);
        Estimate estimate = told.widened(WIDER);
        Learnt learnt = Learning.from(whole, weather, readings, estimate, done -> goOn.test(0.9 + 0.1 * done));
        return told(rig, weather, readings, whole, estimate, holdout, learnt);
    }

    /** The rig settled to the mean of those days, fed as on those days. */
    public static Simulation settled(Rig rig, Weather weather, Readings readings) {
        LocalDateTime begin = weather.start().plusSeconds(Math.round(readings.from()));
        LocalDateTime end = weather.start().plusSeconds(Math.round(readings.until()));
        return Replay.settled(rig, weather.meanDay(begin, end), true);
    }

    /** Values by their names from one model to another; what the other has more stays as known before. */
    private static double[] carried(ShopModel part, Estimate first, ShopModel whole) {
        double[] p = new double[whole.unknowns().size()];
        for (int j = 0; j < p.length; j++) {
            Unknown u = whole.unknowns().get(j);
            int at = first.place(u.name());
            p[j] = at < 0 ? u.before() : first.value()[at];
        }
        return p;
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
            Learnt learnt) {
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
                List.copyOf(confused));
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
