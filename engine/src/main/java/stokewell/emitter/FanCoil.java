package stokewell.emitter;

/**
 * A finned coil with a fan, known from one line of its maker's table. Crossflow, neither side mixed; the air film has most
 * of the resistance.
 *
 * <p>Off its rated point each film follows its flow by a power: air 0.6, water 0.8, air with three quarters of the rated
 * resistance: common practice for plate-finned coils; rows of a maker's table, where he prints them, fit better.
 *
 * @param ratedUa at both rated flows, W/K
 * @param ratedAir capacity rate of the air, W/K
 * @param ratedWater capacity rate of the water, W/K
 * @param airShare share of the resistance that the air side has at the rated point
 * @param airExponent how its film follows the flow
 * @param waterExponent how the water's film follows the flow
 */
public record FanCoil(
        double ratedUa, double ratedAir, double ratedWater, double airShare, double airExponent, double waterExponent) {

    public static final double USUAL_AIR_SHARE = 0.75;
    public static final double USUAL_AIR_EXPONENT = 0.6;
    public static final double USUAL_WATER_EXPONENT = 0.8;

    public FanCoil {
        if (!(ratedUa > 0 && ratedAir > 0 && ratedWater > 0 && airShare >= 0 && airShare <= 1)) {
            throw new IllegalArgumentException("a fan coil of " + ratedUa + " W/K between " + ratedAir
                    + " W/K of air and " + ratedWater + " W/K of water cannot be");
        }
    }

    /**
     * The coil that a table's line describes.
     *
     * @param power W
     * @param waterIn °C
     * @param airIn °C, colder
     * @param ratedAir capacity rate of the air, W/K
     * @param ratedWater capacity rate of the water, W/K
     * @throws IllegalArgumentException if no coil however large could do that with these flows
     */
    public static FanCoil rated(double power, double waterIn, double airIn, double ratedAir, double ratedWater) {
        double least = Math.min(ratedAir, ratedWater);
        double ratio = least / Math.max(ratedAir, ratedWater);
        double wanted = power / (least * (waterIn - airIn));
        if (!(wanted > 0 && wanted < 0.98)) {
            throw new IllegalArgumentException("the rated power is " + wanted
                    + " of what these flows and temperatures could carry at most; check flows and units");
        }
        double low = 0;
        double high = 1;
        while (effectiveness(high, ratio) < wanted) {
            high *= 2;
            if (high > 1e4) {
                throw new IllegalArgumentException("no coil gives " + wanted + " of what the flows could carry");
            }
        }
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (effectiveness(middle, ratio) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new FanCoil(
                (low + high) / 2 * least,
                ratedAir,
                ratedWater,
                USUAL_AIR_SHARE,
                USUAL_AIR_EXPONENT,
                USUAL_WATER_EXPONENT);
    }

    /**
     * Conductance between water and air, W/K; 0 where either stands still.
     *
     * @param air capacity rate, W/K
     * @param water capacity rate, W/K
     */
    public double ua(double air, double water) {
        if (air <= 0 || water <= 0) {
            return 0;
        }
        double resistance = airShare * Math.pow(ratedAir / air, airExponent)
                + (1 - airShare) * Math.pow(ratedWater / water, waterExponent);
        return ratedUa / resistance;
    }

    /** Conductance between the water and the air as they come in, W/K; times (water in − air in) it is the heat. */
    public double conductance(double air, double water) {
        double least = Math.min(air, water);
        if (least <= 0) {
            return 0;
        }
        return least * effectiveness(ua(air, water) / least, least / Math.max(air, water));
    }

    /** Heat into the air, W. */
    public double power(double waterIn, double airIn, double air, double water) {
        return conductance(air, water) * (waterIn - airIn);
    }

    /** Crossflow, both unmixed; Kays and London, Compact Heat Exchangers; within 1 % of the exact series. */
    private static double effectiveness(double ntu, double ratio) {
        if (ntu <= 0) {
            return 0;
        }
        if (ratio < 1e-9) {
            return -Math.expm1(-ntu);
        }
        double root = Math.pow(ntu, 0.22);
        return -Math.expm1(root / ratio * Math.expm1(-ratio * ntu / root));
    }
}
