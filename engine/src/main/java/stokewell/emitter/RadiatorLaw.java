package stokewell.emitter;

/**
 * A radiator, convector or finned pipe by the power law of EN 442: {@code P = P0 (ΔT/ΔT0)^n}.
 *
 * <p>No heat comes from water at or below the room. Over the first kelvin above, the law is faded in by {@code 3t² − 2t³} so that
 * power and slope are continuous for every n; from 1 K up it is exact.
 *
 * @param rated P0 at the rated excess, W
 * @param exponent n: panel radiator 1.3, column 1.3, finned pipe and convector 1.35 to 1.45, floor 1.1
 * @param ratedExcess ΔT0, water above room, K: 50 by EN 442, 60 in older tables
 */
public record RadiatorLaw(double rated, double exponent, double ratedExcess) {

    /** Excess of EN 442, K. */
    public static final double EN_442 = 50;

    private static final double FADE = 1;

    public RadiatorLaw {
        if (!(rated >= 0 && exponent >= 1 && exponent < 2 && ratedExcess > 0)) {
            throw new IllegalArgumentException(
                    "a radiator of " + rated + " W at " + ratedExcess + " K with exponent " + exponent + " cannot be");
        }
    }

    /** A radiator rated at 75/65/20 °C. */
    public RadiatorLaw(double rated, double exponent) {
        this(rated, exponent, EN_442);
    }

    /**
     * Heat given, W.
     *
     * @param excess mean water above room, K; 0 or less gives nothing
     */
    public double power(double excess) {
        if (excess <= 0) {
            return 0;
        }
        return rated * Math.pow(excess / ratedExcess, exponent) * fade(excess);
    }

    /** Derivative of {@link #power} by the excess, W/K. */
    public double powerSlope(double excess) {
        if (excess <= 0) {
            return 0;
        }
        double law = rated * Math.pow(excess / ratedExcess, exponent);
        return law * (exponent / excess * fade(excess) + fadeSlope(excess));
    }

    /**
     * Heat given by water that cools on its way through at a given flow, W: the power law at every place, integrated in
     * closed form, {@code ΔT_out^(1−n) = ΔT_in^(1−n) + (n−1) P0/(ΔT0^n m c)}.
     *
     * @param supplyExcess water entering above room, K
     * @param capacityRate of the water, W/K, 0 or more
     */
    public double powerAlong(double supplyExcess, double capacityRate) {
        if (supplyExcess <= 0 || capacityRate <= 0) {
            return 0;
        }
        return capacityRate * (supplyExcess - returnExcess(supplyExcess, capacityRate)) * fade(supplyExcess);
    }

    /** Derivative of {@link #powerAlong} by the supply's excess, W/K. */
    public double powerAlongSlope(double supplyExcess, double capacityRate) {
        if (supplyExcess <= 0 || capacityRate <= 0) {
            return 0;
        }
        double out = returnExcess(supplyExcess, capacityRate);
        double outSlope = Math.pow(out / supplyExcess, exponent);
        return capacityRate * ((1 - outSlope) * fade(supplyExcess) + (supplyExcess - out) * fadeSlope(supplyExcess));
    }

    private double returnExcess(double supplyExcess, double capacityRate) {
        double grade = exponent - 1;
        double ua = rated / ratedExcess * Math.pow(supplyExcess / ratedExcess, grade);
        double ntu = ua / capacityRate;
        if (grade < 1e-9) {
            return supplyExcess * Math.exp(-ntu);
        }
        return supplyExcess * Math.exp(-Math.log1p(grade * ntu) / grade);
    }

    /** Share of the power at 50 K. */
    public static double factor(double excess, double exponent) {
        return Math.pow(excess / EN_442, exponent);
    }

    /**
     * Log-mean excess of water that cools from supply to return, K; 0 where either is not above the room.
     *
     * @param supply °C
     * @param returning °C
     * @param room °C
     */
    public static double logMean(double supply, double returning, double room) {
        double a = supply - room;
        double b = returning - room;
        if (a <= 0 || b <= 0) {
            return 0;
        }
        double x = (a - b) / (a + b);
        if (Math.abs(x) < 1e-3) {
            double x2 = x * x;
            return (a + b) / 2 / (1 + x2 * (1.0 / 3 + x2 / 5));
        }
        return (a - b) / Math.log(a / b);
    }

    private static double fade(double excess) {
        if (excess >= FADE) {
            return 1;
        }
        double t = excess / FADE;
        return t * t * (3 - 2 * t);
    }

    private static double fadeSlope(double excess) {
        if (excess >= FADE) {
            return 0;
        }
        double t = excess / FADE;
        return 6 * t * (1 - t) / FADE;
    }
}
