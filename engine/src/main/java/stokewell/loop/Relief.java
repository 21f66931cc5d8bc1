package stokewell.loop;

/** What a relief valve or an open vent must pass, and what one passes. Sizes to think with; the code and a maker decide. */
public final class Relief {

    private static final double SQUARE_INCH = 6.4516e-4;
    private static final double POUND = 0.45359237;
    private static final double PSI = 6894.757293168;

    private Relief() {}

    /**
     * Steam made by a power that all goes into boiling, kg/s.
     *
     * @param power W
     * @param latentHeat J/kg at the relieving pressure
     */
    public static double steamRate(double power, double latentHeat) {
        return power / latentHeat;
    }

    /**
     * Dry saturated steam through a nozzle, kg/s: Napier's rule {@code W = 51.5 K A P} in lb/h, in², psi abs, as in ASME
     * VIII-1. Choked flow only, above about 1.9 bar abs against the atmosphere.
     *
     * @param coefficient K, coefficient of discharge with any derating
     * @param area m²
     * @param pressure relieving, Pa abs
     */
    public static double napier(double coefficient, double area, double pressure) {
        return 51.5 * coefficient * (area / SQUARE_INCH) * (pressure / PSI) * POUND / 3600;
    }

    /** The C of ISO 4126-1 for an isentropic exponent, from memory: {@code 3.948 √(k (2/(k+1))^((k+1)/(k−1)))}. */
    public static double isoConstant(double isentropicExponent) {
        double k = isentropicExponent;
        return 3.948 * Math.sqrt(k * Math.pow(2 / (k + 1), (k + 1) / (k - 1)));
    }

    /**
     * Choked gas or steam through a valve, kg/s. ISO 4126-1 (from memory): {@code q = 0.2883 C A Kdr √(p/v)} in kg/h, mm²,
     * bar abs, m³/kg.
     */
    public static double iso4126(
            double isentropicExponent, double coefficient, double area, double pressure, double specificVolume) {
        double kgPerHour = 0.2883
                * isoConstant(isentropicExponent)
                * (area * 1e6)
                * coefficient
                * Math.sqrt(pressure / 1e5 / specificVolume);
        return kgPerHour / 3600;
    }

    /** Least bore of the open safety flow pipe, m: 15 + 1.4 √kW mm and 19 mm. DIN 4751-1 / EN 12828, from memory. */
    public static double ventBore(double power) {
        return Math.max(19, 15 + 1.4 * Math.sqrt(power / 1000)) / 1000;
    }

    /** Least bore of the safety return (cold feed), m: 15 + 0.93 √kW mm and 19 mm. DIN 4751-1 / EN 12828, from memory. */
    public static double coldFeedBore(double power) {
        return Math.max(19, 15 + 0.93 * Math.sqrt(power / 1000)) / 1000;
    }
}
