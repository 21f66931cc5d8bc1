package stokewell.transfer;

/**
 * Effectiveness of heat exchangers: the heat passed over the most that could pass.
 *
 * <p>Kays and London, Compact Heat Exchangers (1984). {@code ntu} is UA over the lesser heat capacity rate, 0 to 500;
 * {@code c} is the lesser rate over the greater, 0 (one side boils or condenses) to 1.
 */
public final class Exchanger {

    private static final double ALMOST = 1e-9;

    private Exchanger() {}

    /** One side keeps its temperature (c = 0): every arrangement is alike. */
    public static double isothermal(double ntu) {
        return -Math.expm1(-ntu);
    }

    /** Counterflow. */
    public static double counter(double ntu, double c) {
        if (1 - c < ALMOST) {
            return ntu / (1 + ntu);
        }
        double x = -Math.expm1(-ntu * (1 - c));
        return x / (1 - c + c * x);
    }

    /** Transfer units that a counterflow exchanger needs. @param effectiveness 0 to below 1 */
    public static double counterUnits(double effectiveness, double c) {
        if (1 - c < ALMOST) {
            return effectiveness / (1 - effectiveness);
        }
        return Math.log((1 - c * effectiveness) / (1 - effectiveness)) / (1 - c);
    }

    /** Parallel flow. */
    public static double parallel(double ntu, double c) {
        return -Math.expm1(-ntu * (1 + c)) / (1 + c);
    }

    /** Crossflow, neither side mixed, by the usual approximation; up to 1 % off {@link #crossUnmixedExact}. */
    public static double crossUnmixed(double ntu, double c) {
        if (c < ALMOST) {
            return isothermal(ntu);
        }
        return -Math.expm1(Math.pow(ntu, 0.22) / c * Math.expm1(-c * Math.pow(ntu, 0.78)));
    }

    /**
     * Crossflow, neither side mixed, by Nusselt's series (Baehr and Stephan, Heat and Mass Transfer, sec. 1.3), to
     * 1e-12.
     */
    public static double crossUnmixedExact(double ntu, double c) {
        if (c < ALMOST || ntu == 0) {
            return isothermal(ntu);
        }
        double hot = Math.exp(-ntu);
        double cold = Math.exp(-c * ntu);
        double hotTail = -Math.expm1(-ntu);
        double coldTail = -Math.expm1(-c * ntu);
        double sum = 0;
        for (int n = 1; ; n++) {
            double term = hotTail * coldTail;
            sum += term;
            if (term <= 1e-14 * sum) {
                return sum / (c * ntu);
            }
            hot *= ntu / n;
            cold *= c * ntu / n;
            hotTail = Math.max(0, hotTail - hot);
            coldTail = Math.max(0, coldTail - cold);
        }
    }

    /**
     * Crossflow, the side of the greater capacity rate mixed: air through a register whose tubes hold the lesser flow.
     */
    public static double crossGreaterMixed(double ntu, double c) {
        if (c < ALMOST) {
            return isothermal(ntu);
        }
        return -Math.expm1(c * Math.expm1(-ntu)) / c;
    }

    /** Crossflow, the side of the lesser capacity rate mixed. */
    public static double crossLesserMixed(double ntu, double c) {
        if (c < ALMOST) {
            return isothermal(ntu);
        }
        return -Math.expm1(Math.expm1(-c * ntu) / c);
    }

    /** Logarithmic mean of the temperature differences at the two ends, K; both above 0. */
    public static double logMeanDifference(double one, double other) {
        double ratio = one / other;
        return Math.abs(ratio - 1) < 1e-6 ? (one + other) / 2 : (one - other) / Math.log(ratio);
    }
}
