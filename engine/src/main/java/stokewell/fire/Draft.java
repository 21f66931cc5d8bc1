package stokewell.fire;

/**
 * The pull of a chimney and the gas that it moves, after the manner of EN 13384-1: a column of ideal gas at its mean temperature
 * against the air outdoors, losses as a sum of coefficients. Temperatures here in K.
 */
public final class Draft {

    /** Standard gravity, m/s². */
    public static final double GRAVITY = 9.80665;

    /** Gas constant of outdoor air, J/(kg K); EN 13384-1 counts its moisture and takes 288. */
    public static final double AIR = 287.055;

    /** Usual gas constant of the flue gas of wood, J/(kg K); EN 13384-1, from memory. */
    public static final double FLUE_GAS = 300;

    /** Below this pull the square root is rounded off, Pa. */
    private static final double ROUNDING = 0.1;

    private Draft() {}

    /**
     * Density of a gas, kg/m³.
     *
     * @param gasConstant J/(kg K)
     * @param temperature K
     * @param pressure Pa
     */
    public static double density(double gasConstant, double temperature, double pressure) {
        return pressure / (gasConstant * temperature);
    }

    /** Pull of the column, Pa: {@code H g (ρ_out − ρ_gas)}; negative where the chimney is colder than outdoors. */
    public static double pull(double height, double outdoorDensity, double gasDensity) {
        return height * GRAVITY * (outdoorDensity - gasDensity);
    }

    /**
     * Pull of the column, Pa.
     *
     * @param height m
     * @param outdoors K
     * @param gas mean of the column, K
     * @param gasConstant of the flue gas, J/(kg K)
     * @param pressure of the air outdoors, Pa
     */
    public static double pull(double height, double outdoors, double gas, double gasConstant, double pressure) {
        return height * GRAVITY * pressure * (1 / (AIR * outdoors) - 1 / (gasConstant * gas));
    }

    /** Derivative of the pull by the gas temperature, Pa/K. */
    public static double pullByGas(double height, double gas, double gasConstant, double pressure) {
        return height * GRAVITY * pressure / (gasConstant * gas * gas);
    }

    /**
     * Temperature of gas that has cooled along a chimney, K.
     *
     * @param entry K
     * @param around K
     * @param ua from gas to surroundings, W/K
     * @param capacityRate of the gas, m c, W/K; 0 leaves it as cold as its surroundings
     */
    public static double topTemperature(double entry, double around, double ua, double capacityRate) {
        return around + (entry - around) * Math.exp(-cooling(ua, capacityRate));
    }

    /** Mean temperature of that gas along the chimney, K: {@code T_u + (T_e − T_u)(1 − e^−K)/K}, K = UA/mc. */
    public static double meanTemperature(double entry, double around, double ua, double capacityRate) {
        double k = cooling(ua, capacityRate);
        double share = k < 1e-8 ? 1 - k / 2 : -Math.expm1(-k) / k;
        return around + (entry - around) * share;
    }

    private static double cooling(double ua, double capacityRate) {
        return ua > 0 ? ua / Math.abs(capacityRate) : 0;
    }

    /**
     * Resistance of a passage, Pa s²/kg²: pressure lost per square of the flow. Those in line add.
     *
     * @param zeta sum of coefficients, see {@link #wallZeta}
     * @param area m²
     * @param density of what flows there, kg/m³
     */
    public static double resistance(double zeta, double area, double density) {
        return zeta / (2 * density * area * area);
    }

    /**
     * Resistance of an air inlet, Pa s²/kg²; infinite when shut.
     *
     * @param opening m²
     * @param discharge coefficient: sharp slot 0.6, smooth duct up to 0.9 (common practice)
     */
    public static double openingResistance(double opening, double discharge, double density) {
        double effective = discharge * opening;
        return 1 / (2 * density * effective * effective);
    }

    /**
     * Coefficient of friction along the wall, {@code f L/D}.
     *
     * @param darcy Darcy friction factor; rough masonry 0.04 to 0.05, metal liner 0.03 (common practice)
     */
    public static double wallZeta(double darcy, double length, double bore) {
        return darcy * length / bore;
    }

    /**
     * Mass flow that a pull drives through resistances in line, kg/s: {@code √(P/R)}, odd, and of finite slope through
     * zero: {@code P/√R / (P² + (0.1 Pa)²)^¼}, which is 0.003 % low at 10 Pa, 0.25 % at 1 Pa.
     *
     * @param pull Pa, either sign
     * @param resistance sum, Pa s²/kg²
     */
    public static double massFlow(double pull, double resistance) {
        return pull / (Math.sqrt(resistance) * Math.sqrt(Math.sqrt(pull * pull + ROUNDING * ROUNDING)));
    }

    /** Derivative of {@link #massFlow} by the pull, kg/(s Pa). */
    public static double massFlowByPull(double pull, double resistance) {
        double square = pull * pull + ROUNDING * ROUNDING;
        return (1 - pull * pull / (2 * square)) / (Math.sqrt(resistance) * Math.sqrt(Math.sqrt(square)));
    }

    /** Speed of the gas, m/s. Below about 0.5 m/s wind and cold air push back down (EN 13384-1 in spirit, from memory). */
    public static double speed(double massFlow, double area, double density) {
        return massFlow / (density * area);
    }
}
