package stokewell.fire;

/**
 * How a kind of wood burns: heats that sum to the wood's and the time constants of catching, drying, release and burn-out.
 *
 * @param netHeat          of the wood as fired, J/kg, net
 * @param moisture         water over all the wood
 * @param volatileShare    kg of volatiles per kg of wood as fired
 * @param charShare        kg of char per kg of wood as fired
 * @param heatOfVolatiles  J/kg, net
 * @param heatOfChar       J/kg, net
 * @param airPerHeat       stoichiometric air per heat released, kg/J
 * @param catchTime        for raw wood to heat through, s
 * @param dryingTime       at a firebox gas near 800 K, s
 * @param volatileTime     to release volatiles at full air, s
 * @param charTime         to burn char out at full air, s
 */
public record Burn(
        double netHeat,
        double moisture,
        double volatileShare,
        double charShare,
        double heatOfVolatiles,
        double heatOfChar,
        double airPerHeat,
        double catchTime,
        double dryingTime,
        double volatileTime,
        double charTime) {

    /** Latent heat counted for fuel water, J/kg, at 25 °C as heating values are: ISO 18125. */
    public static final double LATENT = 2.443e6;

    /** Least excess-air ratio at which a fire in a stove still burns: common practice, no source. */
    public static final double LEAST_EXCESS = 1.25;

    /** Char left by dry wood, kg/kg: common practice, no source (0.18 to 0.25). */
    public static final double CHAR_YIELD = 0.22;

    /** Net heat of wood char, J/kg: common practice, 30 to 33 MJ/kg. */
    public static final double CHAR_HEAT = 31e6;

    /**
     * A burn of wood of this dry net heat.
     *
     * @param dryNetHeat        J/kg of dry wood
     * @param moisture          water over all the wood
     * @param stoichiometricAir kg of air per kg of dry wood
     * @param pace              1 for splits; below for thin offcuts, above for rounds
     */
    public static Burn of(double dryNetHeat, double moisture, double stoichiometricAir, double pace) {
        double dry = 1 - moisture;
        double volatiles = (dryNetHeat - CHAR_YIELD * CHAR_HEAT) / (1 - CHAR_YIELD);
        return new Burn(
                dryNetHeat * dry - LATENT * moisture,
                moisture,
                dry * (1 - CHAR_YIELD),
                dry * CHAR_YIELD,
                volatiles,
                CHAR_HEAT,
                stoichiometricAir / dryNetHeat,
                300 * pace,
                900 * pace,
                1500 * pace,
                3600 * pace);
    }
}
