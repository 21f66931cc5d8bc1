package stokewell.fire;

import stokewell.matter.Ultimate;
import stokewell.matter.Wood;

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
 * @param waterOfVolatiles water that burning a kilogram of volatiles makes, kg/kg: all the wood's hydrogen is in them
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
        double waterOfVolatiles,
        double catchTime,
        double dryingTime,
        double volatileTime,
        double charTime) {

    /** Latent heat counted for fuel water, J/kg, at 25 °C as heating values are: ISO 18125. */
    public static final double LATENT = Wood.DRYING_HEAT;

    /**
     * Least excess-air ratio at which a fire in a room stove burns, for not all its air meets the gas: 1.6 leaves 12.7 %
     * carbon dioxide in the dry gas, the upper end of what such stoves show. Common practice, no source: 1.5 to 3.
     */
    public static final double LEAST_EXCESS = 1.6;

    /**
     * A burn of wood.
     *
     * @param wood     gives the dry net heat
     * @param made     what it is made of
     * @param moisture water over all the wood
     * @param pace     1 for splits; below for thin offcuts, above for rounds
     */
    public static Burn of(Wood wood, Ultimate made, double moisture, double pace) {
        double dry = 1 - moisture;
        return new Burn(
                wood.netHeat(moisture),
                moisture,
                dry * (1 - Wood.CHAR_SHARE),
                dry * Wood.CHAR_SHARE,
                wood.volatileHeat(Wood.CHAR_SHARE),
                Wood.CHAR_HEAT,
                made.stoichiometricAir() / wood.netHeatDry(),
                made.waterOfHydrogen() / (1 - Wood.CHAR_SHARE),
                300 * pace,
                900 * pace,
                1500 * pace,
                3600 * pace);
    }
}
