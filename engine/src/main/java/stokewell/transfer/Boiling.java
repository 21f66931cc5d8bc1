package stokewell.transfer;

import stokewell.matter.Water;

/**
 * Boiling on surfaces under water.
 *
 * <p>Rohsenow is trusted to a factor of two in flux at a given excess, 30 % in excess at a given flux; the critical
 * flux to 15 % on large, clean, level surfaces. SI units.
 */
public final class Boiling {

    /** Zuber's constant of the critical flux, pi/24; Lienhard and Dhir's is 0.149 for wide plates. */
    public static final double ZUBER = Math.PI / 24;

    /** Surface constants of water on metals, Rohsenow's table as in Incropera et al. (2007) table 10.1; exponent 1. */
    public static final double POLISHED_COPPER = 0.0128;

    public static final double GROUND_STAINLESS = 0.0080;
    public static final double MECHANICALLY_POLISHED_STAINLESS = 0.0132;

    private Boiling() {}

    /**
     * Nucleate boiling heat flux, W/m2. Rohsenow, Trans. ASME 74 (1952) 969.
     *
     * @param excess      wall over saturation temperature, K, about 5 to 30
     * @param liquidHeat  specific heat of liquid, J/(kg K)
     * @param viscosity   of liquid, Pa s
     * @param latentHeat  J/kg
     * @param liquid      density, kg/m3
     * @param vapour      density, kg/m3
     * @param tension     surface tension, N/m
     * @param prandtl     of liquid
     * @param surface     Csf, 0.006 to 0.015
     * @param exponent    of the Prandtl number, 1 for water
     */
    public static double rohsenow(
            double excess,
            double liquidHeat,
            double viscosity,
            double latentHeat,
            double liquid,
            double vapour,
            double tension,
            double prandtl,
            double surface,
            double exponent) {
        double jakob = liquidHeat * excess / (surface * latentHeat * Math.pow(prandtl, exponent));
        return viscosity
                * latentHeat
                * Math.sqrt(Convection.GRAVITY * (liquid - vapour) / tension)
                * jakob
                * jakob
                * jakob;
    }

    /**
     * Nucleate boiling heat flux of water, W/m2.
     *
     * @param excess wall over saturation, K
     * @param saturation K
     * @param surface Csf
     */
    public static double rohsenow(double excess, double saturation, double surface) {
        return rohsenow(
                excess,
                Water.specificHeat(saturation),
                Water.viscosity(saturation),
                Water.latentHeat(saturation),
                Water.density(saturation),
                Water.steamDensity(saturation),
                Water.surfaceTension(saturation),
                Water.prandtl(saturation),
                surface,
                1);
    }

    /**
     * Critical heat flux, W/m2, past which a surface dries out. Zuber (1959), Kutateladze's form.
     *
     * @param constant 0.131 to 0.149
     */
    public static double criticalFlux(
            double latentHeat, double liquid, double vapour, double tension, double constant) {
        return constant
                * latentHeat
                * vapour
                * Math.sqrt(Math.sqrt(tension * Convection.GRAVITY * (liquid - vapour) / (vapour * vapour)));
    }

    /** Critical heat flux of water with {@link #ZUBER}, W/m2. @param saturation K, 373 to 450 */
    public static double criticalFlux(double saturation) {
        return criticalFlux(
                Water.latentHeat(saturation),
                Water.density(saturation),
                Water.steamDensity(saturation),
                Water.surfaceTension(saturation),
                ZUBER);
    }
}
