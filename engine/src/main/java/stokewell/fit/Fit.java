package stokewell.fit;

import java.time.LocalDateTime;
import java.util.List;
import stokewell.rig.Rig;

/**
 * A rig held against its readings. Temperatures K, times s on the weather's clock, heat J.
 *
 * @param filed    the rig as its file tells it
 * @param fitted   the same with what was learnt
 * @param estimate of every unknown
 * @param factors  the knobs among them, as factors
 * @param traces   each compared sensor: read, modelled, and the band
 * @param holdout  nights kept back and predicted; null where there were too few days
 * @param burns    the loads behind it, with their weights as estimated
 * @param learnt   what follows from it
 * @param confused pairs of unknowns that these readings cannot tell apart
 * @param watch    whether something changed
 * @param profiles of the knobs that were looked at more closely
 * @param advice   what would tell them better
 */
public record Fit(
        Rig filed,
        Rig fitted,
        LocalDateTime weatherStart,
        double from,
        double until,
        Estimate estimate,
        List<Factor> factors,
        List<Trace> traces,
        List<Holdout> holdout,
        List<Burn> burns,
        Learnt learnt,
        List<Confused> confused,
        Watch watch,
        List<Profile> profiles,
        List<Advice> advice) {

    /** A prediction further off than this, K, and by more than twice what "as the day before" is: the file is of another rig. */
    private static final double ASTRAY = 4;
    /** A factor is at its limit where so much more changes nothing. */
    private static final double NUDGE = 1.02;

    /** How much the readings have told of a number. */
    public enum Told {
        WELL,
        PARTLY,
        HARDLY
    }

    /**
     * A knob as found.
     *
     * @param factor on what the rig file says
     * @param low    lower end of the 90 % interval
     * @param high   upper end
     * @param share  0 nothing was learnt, 1 all
     */
    public record Factor(Knob knob, double factor, double low, double high, double share) {

        /** In one word. */
        public Told told() {
            return share > 0.75 ? Told.WELL : share > 0.3 ? Told.PARTLY : Told.HARDLY;
        }

        /** Whether the interval leaves out what the rig file says. */
        public boolean differs() {
            return low > 1 || high < 1;
        }
    }

    /**
     * One sensor.
     *
     * @param band   half the width of the 90 % band at each time: parameters and disturbance together
     * @param rms    root mean square of read less modelled
     * @param within share of the readings inside the band
     */
    public record Trace(
            Spot spot,
            double[] time,
            double[] read,
            double[] modelled,
            double[] band,
            boolean[] skipped,
            double rms,
            double within,
            double offset,
            Disturbance disturbance) {}

    /**
     * Nights kept back: the fit saw nothing after they began but the weather and the wood.
     *
     * @param hours       that were predicted
     * @param rms         of the prediction, K
     * @param persistence of saying that each hour will be as it was a day before, K
     */
    public record Holdout(Spot spot, double hours, double rms, double persistence) {}

    /** Two unknowns that can only be told together. */
    public record Confused(Unknown one, Unknown other, double correlation) {}

    /** The local standard time of a time, to the nearest second. */
    public LocalDateTime at(double time) {
        return weatherStart.plusSeconds(Math.round(time));
    }

    /** A knob as found; null where the rig has none or it was not turned. */
    public Factor factor(Knob knob) {
        for (Factor f : factors) if (f.knob() == knob) return f;
        return null;
    }

    /**
     * Where the nights that were kept back were foretold worst, if so badly that the rig file cannot be of this rig or of those
     * days; null otherwise. Limits: common practice, no source.
     */
    public Holdout astray() {
        Holdout worst = null;
        if (holdout == null) return null;
        for (Holdout h : holdout) {
            boolean bad = h.rms() > ASTRAY && h.rms() > 2 * h.persistence();
            if (bad && (worst == null || h.rms() > worst.rms())) worst = h;
        }
        return worst;
    }

    /** Knobs that came to where they turn no further: what they stand for is not what the readings ask for. */
    public List<Knob> atLimits() {
        return factors.stream()
                .filter(f -> f.knob() != Knob.WOOD && isAtLimit(f))
                .map(Factor::knob)
                .toList();
    }

    private boolean isAtLimit(Factor f) {
        if (Math.abs(Math.log(f.factor())) > 3.9 * f.knob().spread) return true;
        Rig found = f.knob().turned(filed, f.factor());
        return found.equals(f.knob().turned(filed, f.factor() * NUDGE))
                || found.equals(f.knob().turned(filed, f.factor() / NUDGE));
    }
}
