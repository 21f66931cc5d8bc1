package stokewell.matter;

/**
 * What a fuel is made of, as shares of its dry mass; sulphur is left out, wood has none worth counting.
 *
 * @param carbon   share, 0 to 1
 * @param hydrogen share, 0 to 1
 * @param oxygen   share, 0 to 1
 * @param nitrogen share, 0 to 1
 * @param ash      share, 0 to 1; together with the others within 2 % of 1
 */
public record Ultimate(double carbon, double hydrogen, double oxygen, double nitrogen, double ash) {

    /**
     * Wood in general: C 50, H 6, O 43, N 0.1, ash 0.9 %; the analysis to which dew-point tables for wood are drawn.
     */
    public static final Ultimate WOOD = new Ultimate(0.50, 0.06, 0.43, 0.001, 0.009);

    /** Molar masses, kg/mol: IUPAC 2013 conventional values. */
    static final double CARBON = 12.011e-3;

    static final double HYDROGEN = 1.008e-3;

    /** Oxygen in dry air, kg/kg. */
    private static final double OXYGEN_IN_AIR = 0.2314;

    /** Heat that condenses the water of burnt hydrogen at 25 °C, J/kg; ISO 18125. */
    private static final double LATENT_25 = 2.443e6;

    public Ultimate {
        double sum = carbon + hydrogen + oxygen + nitrogen + ash;
        if (!(carbon > 0 && hydrogen >= 0 && oxygen >= 0 && nitrogen >= 0 && ash >= 0 && Math.abs(sum - 1) <= 0.02)) {
            throw new IllegalArgumentException(
                    "shares of carbon, hydrogen, oxygen, nitrogen and ash must not be negative"
                            + " and must add up to 1 within 0.02; they add up to " + sum);
        }
    }

    /** Dry air that burns a dry kilogram with nothing to spare, kg/kg. */
    public double stoichiometricAir() {
        double need = Gas.O2.molarMass * (carbon / CARBON + hydrogen / (4 * HYDROGEN)) - oxygen;
        return need / OXYGEN_IN_AIR;
    }

    /** Gross heating value of dry fuel, J/kg. Channiwala and Parikh, Fuel 81 (2002) 1051; stated error 1.5 %. */
    public double grossHeat() {
        return 1e6 * (34.91 * carbon + 117.83 * hydrogen - 10.34 * oxygen - 1.51 * nitrogen - 2.11 * ash);
    }

    /** Net heating value of dry fuel, J/kg: the gross one less the heat of condensing the water of its hydrogen. */
    public double netHeat() {
        return grossHeat() - LATENT_25 * waterOfHydrogen();
    }

    /** Water that burning a dry kilogram makes, kg/kg. */
    public double waterOfHydrogen() {
        return hydrogen * Gas.H2O.molarMass / (2 * HYDROGEN);
    }
}
