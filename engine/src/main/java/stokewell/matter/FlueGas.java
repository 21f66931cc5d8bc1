package stokewell.matter;

/**
 * The gas that a kilogram of fuel as fired leaves when it burns completely, and how that gas behaves.
 *
 * <p>Amounts are mol per kg of fuel as fired (water included). Nitrogen is that of air with its argon, molar mass
 * 28.15 g/mol. Ideal mixture: specific heat and enthalpy add by amount; viscosity mixes by Wilke (1950), conductivity
 * by Wassiljewa with Wilke's factors (Mason and Saxena 1958). Against air at 300 to 1000 K viscosity comes
 * within 3 %, conductivity within 6 %. Range 250 to 2500 K; no dissociation, which matters above 2000 K only.
 * Temperatures in K.
 *
 * @param carbonDioxide mol/kg
 * @param oxygen        mol/kg
 * @param water         mol/kg
 * @param nitrogen      mol/kg
 * @param air           dry air that went in, kg/kg
 */
public record FlueGas(double carbonDioxide, double oxygen, double water, double nitrogen, double air) {

    private static final double AIR_NITROGEN = 28.15e-3;
    private static final double OXYGEN_IN_AIR = 0.2314;
    private static final double REFERENCE = 298.15;

    /**
     * Siegert's coefficient of wood for oxygen readings, and the oxygen of fresh air that it is paired with, per cent.
     */
    private static final double SIEGERT_WOOD = 0.765;

    private static final double SIEGERT_AIR = 21;

    public FlueGas {
        if (!(carbonDioxide >= 0 && oxygen >= 0 && water >= 0 && nitrogen > 0 && air > 0)) {
            throw new IllegalArgumentException("flue gas needs air and no negative amounts: CO2 " + carbonDioxide
                    + ", O2 " + oxygen + ", H2O " + water + ", N2 " + nitrogen + " mol/kg, air " + air + " kg/kg");
        }
    }

    /** Burnt with dry air; see {@link #of(Ultimate, double, double, double)}. */
    public static FlueGas of(Ultimate fuel, double wet, double lambda) {
        return of(fuel, wet, lambda, 0);
    }

    /**
     * Complete combustion.
     *
     * @param fuel        its dry analysis
     * @param wet         moisture on wet mass, 0 to 0.7
     * @param lambda      air over stoichiometric air, 1 or more
     * @param airHumidity kg water per kg dry air
     */
    public static FlueGas of(Ultimate fuel, double wet, double lambda, double airHumidity) {
        if (!(wet >= 0 && wet < 1) || !(lambda >= 1) || !(airHumidity >= 0)) {
            throw new IllegalArgumentException("burning needs moisture from 0 to 1, lambda of 1 or more and no negative"
                    + " humidity, not " + wet + ", " + lambda + ", " + airHumidity);
        }
        double dry = 1 - wet;
        double stoichiometric = dry * fuel.stoichiometricAir();
        double air = lambda * stoichiometric;
        return new FlueGas(
                dry * fuel.carbon() / Ultimate.CARBON,
                (air - stoichiometric) * OXYGEN_IN_AIR / Gas.O2.molarMass,
                dry * fuel.hydrogen() / (2 * Ultimate.HYDROGEN) + (wet + air * airHumidity) / Gas.H2O.molarMass,
                dry * fuel.nitrogen() / Gas.N2.molarMass + air * (1 - OXYGEN_IN_AIR) / AIR_NITROGEN,
                air);
    }

    /** Gas from a kilogram of fuel as fired, mol. */
    public double amount() {
        return carbonDioxide + oxygen + water + nitrogen;
    }

    /** Gas from a kilogram of fuel as fired, kg. */
    public double mass() {
        return carbonDioxide * Gas.CO2.molarMass
                + oxygen * Gas.O2.molarMass
                + water * Gas.H2O.molarMass
                + nitrogen * AIR_NITROGEN;
    }

    /** Specific gas constant, J/(kg K). */
    public double gasConstant() {
        return Gas.UNIVERSAL * amount() / mass();
    }

    /** Density, kg/m3. @param t K @param p Pa */
    public double density(double t, double p) {
        return p / (gasConstant() * t);
    }

    /** Volume share of carbon dioxide in the gas as it is. */
    public double carbonDioxideWet() {
        return carbonDioxide / amount();
    }

    /** Volume share of oxygen in the gas as it is. */
    public double oxygenWet() {
        return oxygen / amount();
    }

    /** Volume share of water vapour in the gas as it is. */
    public double waterWet() {
        return water / amount();
    }

    /** Volume share of nitrogen in the gas as it is. */
    public double nitrogenWet() {
        return nitrogen / amount();
    }

    /** Volume share of carbon dioxide once dried, as an analyser shows it. */
    public double carbonDioxideDry() {
        return carbonDioxide / (amount() - water);
    }

    /** Volume share of oxygen once dried, as an analyser shows it. */
    public double oxygenDry() {
        return oxygen / (amount() - water);
    }

    /** Volume share of nitrogen once dried. */
    public double nitrogenDry() {
        return nitrogen / (amount() - water);
    }

    /**
     * Temperature at which water begins to condense, K. Acids of wood smoke may condense some degrees warmer.
     *
     * @param p Pa
     */
    public double dewPoint(double p) {
        return If97.saturationTemperature(p * waterWet());
    }

    /** Isobaric specific heat, J/(kg K). @param t K */
    public double specificHeat(double t) {
        double sum = carbonDioxide * Gas.CO2.molarHeat(t)
                + oxygen * Gas.O2.molarHeat(t)
                + water * Gas.H2O.molarHeat(t)
                + nitrogen * Gas.N2.molarHeat(t);
        return sum / mass();
    }

    /** Sensible heat above 25 °C, J/kg, water staying vapour. @param t K */
    public double enthalpy(double t) {
        double sum = carbonDioxide * (Gas.CO2.molarEnthalpy(t) - Gas.CO2.molarEnthalpy(REFERENCE))
                + oxygen * (Gas.O2.molarEnthalpy(t) - Gas.O2.molarEnthalpy(REFERENCE))
                + water * (Gas.H2O.molarEnthalpy(t) - Gas.H2O.molarEnthalpy(REFERENCE))
                + nitrogen * (Gas.N2.molarEnthalpy(t) - Gas.N2.molarEnthalpy(REFERENCE));
        return sum / mass();
    }

    /** Dynamic viscosity, Pa s. @param t K */
    public double viscosity(double t) {
        return mixed(t, false);
    }

    /** Thermal conductivity, W/(m K). @param t K */
    public double conductivity(double t) {
        return mixed(t, true);
    }

    /** Prandtl number. @param t K */
    public double prandtl(double t) {
        return viscosity(t) * specificHeat(t) / conductivity(t);
    }

    /**
     * Siegert's flue-gas loss of wood, share of the net heat: the chimney sweep's formula from an oxygen reading.
     *
     * @param flue   gas temperature, K
     * @param room   combustion-air temperature, K
     * @param oxygen dry volume share, 0 to 0.2; constants as in common analysers (A2 0.765, B 0)
     */
    public static double siegertLoss(double flue, double room, double oxygen) {
        return siegertLoss(flue, room, oxygen, SIEGERT_WOOD, 0);
    }

    /** Siegert's flue-gas loss with a fuel's own constants A2 and B (gas 0.660, 0.009; oil 0.680, 0.007). */
    public static double siegertLoss(double flue, double room, double oxygen, double a2, double b) {
        return (flue - room) * (a2 / (SIEGERT_AIR - 100 * oxygen) + b) / 100;
    }

    private double mixed(double t, boolean conductivity) {
        double sum = 0;
        for (Gas i : GASES) {
            double mui = i.viscosity(t);
            double weight = 0;
            for (Gas j : GASES) {
                weight += amount(j) * wilke(mui / j.viscosity(t), i.molarMass / j.molarMass);
            }
            sum += amount(i) * (conductivity ? i.conductivity(t) : mui) / weight;
        }
        return sum;
    }

    private static final Gas[] GASES = Gas.values();

    private double amount(Gas gas) {
        return switch (gas) {
            case N2 -> nitrogen;
            case O2 -> oxygen;
            case CO2 -> carbonDioxide;
            case H2O -> water;
        };
    }

    private static double wilke(double viscosities, double masses) {
        double root = 1 + Math.sqrt(viscosities) / Math.sqrt(Math.sqrt(masses));
        return root * root / Math.sqrt(8 * (1 + masses));
    }
}
