package stokewell.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.DoublePredicate;
import stokewell.rig.Rig;

/**
 * Looks for a change in what was read: a generalised likelihood ratio over every morning and every cause (Willsky and Jones,
 * IEEE Trans. Autom. Control 21 (1976) 108), on innovations of the fit, everything that was fitted being fitted anew. Since
 * every morning sets the model to its sensors, what a change does from a day on is the slope over the whole record, cut off
 * before that day. The likeliest causes are then played with the engine, each with its own size, and ranked.
 */
final class Deviations {

    /** Mornings that must be on either side of a change. */
    private static final double BEFORE = 1.5 * 86400;

    private static final double AFTER = 0.8 * 86400;
    /** Causes that are played: those whose gain is not far below the best. */
    private static final int MOST = 6;

    private static final double WORTH = 0.2;
    /** What passes in a day must show twice as strongly: a load badly weighed does that on any day. */
    private static final double PASSING = 0.5;

    private static final double NEAR = 2.5 * 86400;

    private final ShopModel model;
    private final Observed observed;
    private final Estimate estimate;
    private final DoublePredicate goOn;
    private final double[] rest;
    private final Whitened about;

    private Deviations(ShopModel model, Estimate estimate, DoublePredicate goOn) {
        this.model = model;
        this.estimate = estimate;
        this.goOn = goOn;
        observed = model.observed();
        rest = observed.less(estimate.predicted());
        about = joint(estimate.disturbances(), rest, estimate.jacobian(), estimate.value(), null, 0);
    }

    /**
     * Looks.
     *
     * @param estimate of least squares, not widened
     */
    static Watch of(ShopModel model, Rig rig, Estimate estimate, DoublePredicate goOn) {
        return new Deviations(model, estimate, goOn).watch(Cause.of(rig, model.spots()));
    }

    /** A cause from a morning on, and what it would bring. */
    private record Hypothesis(Change change, double fall) {}

    private Watch watch(List<Cause> causes) {
        List<Hypothesis> all = new ArrayList<>();
        double[][] columns = new double[causes.size()][];
        java.util.stream.IntStream.range(0, columns.length).parallel().forEach(k -> columns[k] = column(causes.get(k)));
        for (int k = 0; k < columns.length; k++) hypotheses(causes.get(k), columns[k], all);
        all.sort(Comparator.comparingDouble((Hypothesis h) -> -h.fall()));
        double strength = all.isEmpty() ? 0 : all.get(0).fall();
        Watch.Deviation found = strength < Watch.THRESHOLD ? null : deviation(all);
        return new Watch(nights(), strength, found);
    }

    private void ask(double share) {
        if (!goOn.test(share)) throw new CancellationException("fit stopped");
    }

    /** What a cause does to every row if it is there from the start; nothing where the engine cannot run it. */
    private double[] column(Cause cause) {
        ask(0);
        if (cause instanceof Cause.Turned t && model.knobs().contains(t.knob())) {
            return Arrays.copyOf(estimate.jacobian()[model.knobs().indexOf(t.knob())], observed.rows());
        }
        double[] there = model.at(estimate.value(), Change.lasting(cause, Double.NEGATIVE_INFINITY, cause.step()));
        double[] column = new double[observed.rows()];
        if (there == null) return column;
        for (int i = 0; i < column.length; i++) column[i] = (there[i] - estimate.predicted()[i]) / cause.step();
        return column;
    }

    private void hypotheses(Cause cause, double[] column, List<Hypothesis> into) {
        List<Double> mornings = model.mornings();
        double first = mornings.get(0);
        double last = observed.time()[observed.channels().get(0).until() - 1];
        for (int k = 1; k < mornings.size(); k++) {
            double t = mornings.get(k);
            double next = k + 1 < mornings.size() ? mornings.get(k + 1) : Double.POSITIVE_INFINITY;
            if (t >= first + BEFORE && t <= last - AFTER)
                into.add(hypothesis(cause, column, t, Double.POSITIVE_INFINITY));
            boolean passing = cause instanceof Cause.Turned turned
                    && (turned.knob() == Knob.WOOD || turned.knob() == Knob.LEAKAGE);
            if (passing && next < last) into.add(hypothesis(cause, column, t, next));
        }
    }

    private Hypothesis hypothesis(Cause cause, double[] column, double from, double until) {
        double[] cut = column.clone();
        for (int i = 0; i < cut.length; i++) {
            if (observed.time()[i] < from || observed.time()[i] >= until) cut[i] = 0;
        }
        Whitened.Gain gain = about.gain(cut, cause.spread());
        double counts = Double.isFinite(until) ? PASSING : 1;
        if (Math.abs(gain.size()) < cause.least()) counts = 0;
        return new Hypothesis(new Change(cause, from, until, cause.held(gain.size())), counts * gain.fall());
    }

    /** The best of all, the causes that come near it, and their ranks once they are played. */
    private Watch.Deviation deviation(List<Hypothesis> ranked) {
        Hypothesis best = ranked.get(0);
        List<Hypothesis> shortlist = new ArrayList<>();
        for (Hypothesis h : ranked) {
            boolean there = shortlist.stream()
                    .anyMatch(s -> s.change().cause().equals(h.change().cause()));
            boolean near = Math.abs(h.change().time() - best.change().time()) < NEAR;
            if (!there && near && h.fall() > WORTH * best.fall()) shortlist.add(h);
            if (shortlist.size() == MOST) break;
        }
        double before = Whitened.misfit(
                        observed, estimate.skipped(), Whitened.disturbances(observed, estimate.skipped(), rest), rest)
                + estimate.known(estimate.value());
        List<Watch.Suspect> suspects = new ArrayList<>(shortlist.parallelStream()
                .map(h -> played(h.change(), before))
                .filter(s -> s.fall() > 0
                        && Math.abs(s.change().size()) >= s.change().cause().least())
                .sorted(Comparator.comparingDouble((Watch.Suspect s) -> -s.fall()))
                .toList());
        if (suspects.isEmpty()) return null;
        suspects = shared(suspects);
        Change named = suspects.get(0).change();
        double earliest = named.time();
        double latest = named.time();
        double top = ranked.stream()
                .filter(h -> alike(h.change(), named) && h.change().time() == named.time())
                .mapToDouble(Hypothesis::fall)
                .max()
                .orElse(0);
        for (Hypothesis h : ranked) {
            if (!alike(h.change(), named) || h.fall() < top - 2.7 * Fitting.DULL) continue;
            earliest = Math.min(earliest, h.change().time());
            latest = Math.max(latest, h.change().time());
        }
        boolean over = Double.isFinite(named.until());
        return new Watch.Deviation(
                named.time(), over ? named.time() : earliest, over ? named.time() : latest, over, suspects);
    }

    private static List<Watch.Suspect> shared(List<Watch.Suspect> suspects) {
        double top = suspects.get(0).fall();
        double sum = 0;
        for (Watch.Suspect s : suspects) sum += Math.exp((s.fall() - top) / (2 * Fitting.DULL));
        List<Watch.Suspect> shared = new ArrayList<>();
        for (Watch.Suspect s : suspects) {
            shared.add(new Watch.Suspect(
                    s.change(), s.half(), s.fall(), Math.exp((s.fall() - top) / (2 * Fitting.DULL)) / sum));
        }
        return List.copyOf(shared);
    }

    /** A cause with its likeliest size, all else fitted anew, by a few runs of the engine. */
    private Watch.Suspect played(Change guess, double before) {
        int n = estimate.value().length;
        Cause cause = guess.cause();
        double size = Math.abs(guess.size()) < 0.3 * cause.step() ? cause.step() : guess.size();
        double[] p = estimate.value().clone();
        double[] f = null;
        double[][] slopes = Arrays.copyOf(estimate.jacobian(), n + 1);
        double bestFall = Double.NEGATIVE_INFINITY;
        double bestSize = size;
        double half = 0;
        for (int turn = 0; turn < 4; turn++) {
            ask(0.5);
            Change now = new Change(cause, guess.time(), guess.until(), size);
            double[] there = model.at(p, now);
            if (there == null) break;
            if (turn == 0) slopes[n] = slope(there, size);
            f = there;
            double[] r = observed.less(f);
            List<Disturbance> d = Whitened.disturbances(observed, estimate.skipped(), r);
            double fall = before
                    - Whitened.misfit(observed, estimate.skipped(), d, r)
                    - estimate.known(p)
                    - Math.pow(size / cause.spread(), 2);
            Whitened linear = joint(d, r, slopes, p, cause, size);
            if (fall > bestFall) {
                bestFall = fall;
                bestSize = size;
                half = estimate.quantile(Fitting.SURE) * Fitting.WIDER * linear.error(n);
            }
            double[] step = linear.step();
            for (int j = 0; j < n; j++) p[j] = estimate.unknowns().get(j).held(p[j] + step[j]);
            size = cause.held(size + step[n]);
        }
        return new Watch.Suspect(new Change(cause, guess.time(), guess.until(), bestSize), half, bestFall, 0);
    }

    private double[] slope(double[] there, double size) {
        double[] slope = new double[observed.rows()];
        for (int i = 0; i < slope.length; i++) slope[i] = (there[i] - estimate.predicted()[i]) / size;
        return slope;
    }

    private Whitened joint(List<Disturbance> d, double[] r, double[][] slopes, double[] p, Cause cause, double size) {
        int n = p.length;
        double[] off = new double[slopes.length];
        double[] spread = new double[slopes.length];
        for (int j = 0; j < n; j++) {
            off[j] = p[j] - estimate.unknowns().get(j).before();
            spread[j] = estimate.unknowns().get(j).spread();
        }
        if (cause != null) {
            off[n] = size;
            spread[n] = cause.spread();
        }
        return new Whitened(observed, estimate.skipped(), d, r, slopes, off, spread);
    }

    /** Whether two changes differ only in when they came. */
    private static boolean alike(Change a, Change b) {
        return a.cause().equals(b.cause()) && Double.isInfinite(a.until()) == Double.isInfinite(b.until());
    }

    private List<Watch.Night> nights() {
        List<Watch.Night> nights = new ArrayList<>();
        List<Double> mornings = model.mornings();
        for (int c = 0; c < observed.channels().size(); c++) {
            Observed.Channel channel = observed.channels().get(c);
            for (int k = 0; k < mornings.size(); k++) {
                double end = k + 1 < mornings.size() ? mornings.get(k + 1) : Double.POSITIVE_INFINITY;
                double sum = 0;
                int count = 0;
                for (int i = channel.from(); i < channel.until(); i++) {
                    double t = observed.time()[i];
                    if (t < mornings.get(k) || t >= end || estimate.skipped()[i]) continue;
                    sum += about.rest()[i];
                    count++;
                }
                if (count > 0)
                    nights.add(new Watch.Night(model.spots().get(c), mornings.get(k), sum / Math.sqrt(count)));
            }
        }
        return List.copyOf(nights);
    }
}
