package stokewell.fit;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;
import stokewell.rig.Rig;
import stokewell.run.Replay;
import stokewell.weather.Weather;

/**
 * What the model of the rig as it was says of a saving: fitted to the days before, run through the days after with the loads of
 * those days, all of them so many times as heavy that the room is as warm in the mean as it was read. Sun and wind are in it.
 *
 * <p>The same factor is found for the days before; the share saved is taken from the ratio of both, so that what the model
 * errs in alike, as in the heat of the wood, falls out.
 *
 * @param before factor on the loads before; 1 for a perfect model
 * @param after  factor on the loads after
 * @param share  saved, with its 90 % interval: by the delta method over all knobs, the room's slow error, and what the model errs
 *     in besides, {@link #MODEL} and {@link #KEPT}
 * @param days   that were fitted, and then compared
 */
public record ModelSaving(double before, double after, Figure share, double fitted, double days) {

    private static final double DAY = 86400;
    /** A fit needs no more, and costs by the day. */
    private static final double MOST_FITTED = 10 * DAY;

    private static final double MOST_COMPARED = 28 * DAY;
    /** Where the room does not feel the wood by so much, K for e times the wood, a thermostat holds it. */
    private static final double FELT = 1;

    /**
     * Standard error of the logarithm of the ratio that no fit tells of: the two periods begin otherwise, and walls and floor
     * remember it. Found from 43 invented pairs, see docs/saved-wood.md; the check there is on others.
     */
    private static final double MODEL = 0.06;
    /** Share of what the model misses on the days before, as a logarithm, that does not fall out of the ratio: found likewise. */
    private static final double KEPT = 0.3;

    /** Standard errors to either side that hold {@link Saving#SURE} of a normal distribution. */
    private static final double SURE_NORMAL = 1.645;

    private static final double LOW = -1.2;
    private static final double HIGH = 1.5;

    /** One period's model with what a fit has found put into it. */
    private static final class Side {
        private final ShopModel model;
        private final Readings readings;
        private final double[] p;
        private final int wood;
        private final double wanted;
        /** In which the room was read: only these are compared. */
        private final Set<Long> hours = new HashSet<>();

        private double factor;
        private double slope;

        Side(Rig rig, Weather weather, Readings readings, Estimate e) {
            this.readings = readings;
            List<Knob> knobs = Knob.of(rig);
            List<Burn> burns = Fitting.burns(rig, weather, readings);
            model = new ShopModel(rig, weather, Fitting.settled(rig, weather, readings), readings, burns, knobs);
            p = new double[model.unknowns().size()];
            for (int j = 0; j < p.length; j++) {
                Unknown u = model.unknowns().get(j);
                int at = u.name().equals("floor start") || u.name().startsWith("unnoted") ? -1 : e.place(u.name());
                p[j] = at < 0 ? u.before() : e.value()[at];
            }
            wood = knobs.indexOf(Knob.WOOD);
            int offset = e.place(Spot.ROOM.words + " offset");
            Series room = readings.of(Spot.ROOM)
                    .between(readings.from() + ShopModel.LEAD, readings.until())
                    .averaged(3600);
            for (double t : room.time()) hours.add((long) Math.floor(t / 3600));
            wanted = room.mean() - (offset < 0 ? 0 : e.value()[offset]);
        }

        /** How much warmer than read the room is with the loads so many times as heavy, K; NaN where it cannot be run. */
        double excess(double[] q, double logFactor) {
            double[] heavier = q.clone();
            heavier[wood] += logFactor;
            Replay.Played played =
                    model.play(heavier, model.rig(heavier), Probing.of(List.of(Spot.ROOM)), readings.until());
            if (played == null) return Double.NaN;
            double[] room = played.read()[0];
            double[] time = new double[room.length];
            for (int i = 0; i < time.length; i++) time[i] = readings.from() + i * ShopModel.STEP;
            Series hourly = new Series("", time, room)
                    .between(readings.from() + ShopModel.LEAD, readings.until())
                    .averaged(3600);
            double sum = 0;
            int n = 0;
            for (int i = 0; i < hourly.size(); i++) {
                if (!hours.contains((long) Math.floor(hourly.time()[i] / 3600))) continue;
                sum += hourly.value()[i];
                n++;
            }
            return sum / n - wanted;
        }

        /** Finds the factor, by a secant that is kept between two ends; false where there is none. */
        boolean solved(DoublePredicate goOn, double done) {
            double a = 0;
            double fa = excess(p, a);
            double b = fa > 0 ? -0.2 : 0.2;
            boolean near = false;
            for (int k = 0; k < 8 && !near; k++) {
                if (!goOn.test(done)) throw new CancellationException("stopped");
                double fb = excess(p, b);
                slope = (fb - fa) / (b - a);
                if (Double.isNaN(slope) || slope < FELT) return false;
                double next = Math.max(LOW, Math.min(HIGH, b - fb / slope));
                near = Math.abs(next - b) < 0.005;
                a = b;
                fa = fb;
                b = next;
                if (a == b) return false;
            }
            factor = b;
            return near && factor > LOW && factor < HIGH;
        }

        /** How the factor's logarithm moves with a knob. */
        double moves(int j) {
            double step = 0.4 * model.knobs().get(j).spread;
            double[] up = p.clone();
            up[j] += step;
            double[] down = p.clone();
            down[j] -= step;
            return -(excess(up, factor) - excess(down, factor)) / (2 * step) / slope;
        }
    }

    /**
     * Fits, runs, compares.
     *
     * @param rig  as it was before
     * @param goOn told the share done, 0 to 1; returns false to stop
     * @return null where the model cannot tell: the room is held by a thermostat, no factor makes it as warm, or the engine
     *     cannot run near by
     */
    public static ModelSaving of(
            Rig rig, Weather first, Readings before, Weather second, Readings after, DoublePredicate goOn) {
        Readings known = before.between(before.until() - MOST_FITTED, before.until());
        Fitting.Found found = Fitting.found(rig, first, known, Knob.of(rig), done -> goOn.test(0.5 * done));
        Estimate e = found.told().widened(Fitting.WIDER);
        Side one = new Side(rig, first, before.between(before.until() - MOST_COMPARED, before.until()), e);
        Side two = new Side(rig, second, after.between(after.from(), after.from() + MOST_COMPARED), e);
        if (!one.solved(goOn, 0.55) || !two.solved(goOn, 0.7)) return null;
        int n = one.model.knobs().size();
        double[] gradient = new double[n];
        IntStream.range(0, n)
                .parallel()
                .filter(j -> goOn.test(0.8))
                .forEach(j -> gradient[j] = two.moves(j) - one.moves(j));
        if (!goOn.test(0.99)) throw new CancellationException("stopped");
        double variance = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                variance += gradient[i] * gradient[j] * e.covariance().getEntry(i, j);
            }
        }
        Disturbance room = e.disturbances().get(found.model().spots().indexOf(Spot.ROOM));
        for (Side s : new Side[] {one, two}) {
            double span = s.readings.until() - s.readings.from();
            double mean = Fitting.WIDER * room.slow() * Math.sqrt(Math.min(1, 2 * room.memory() / span));
            variance += mean * mean / (s.slope * s.slope);
        }
        if (Double.isNaN(variance)) return null;
        double left = Math.exp(one.factor - two.factor);
        // the fit's part with the few degrees of freedom of the fit, the model's, found from many pairs, without
        double ofFit = e.quantile(Saving.SURE) * Math.sqrt(Math.max(0, variance));
        double ofModel = SURE_NORMAL * Math.hypot(MODEL, KEPT * one.factor);
        Figure share = new Figure(1 - left, left * Math.hypot(ofFit, ofModel));
        return new ModelSaving(
                Math.exp(one.factor),
                Math.exp(two.factor),
                share,
                (known.until() - known.from()) / DAY,
                (two.readings.until() - two.readings.from()) / DAY);
    }
}
