package stokewell.check;

import stokewell.matter.Water;
import stokewell.transfer.Boiling;

/**
 * Water let into hot dry metal: how much flashes to steam, how fast at the most, and how long the metal stays hot.
 *
 * <p>One lump of metal under a boiling curve: film boiling above the Leidenfrost point (Bromley's form for a horizontal
 * cylinder, with radiation left out), the least flux there by Zuber and Berenson, a straight line in the logarithms up to
 * the critical flux of Zuber, and the nucleate branch of the engine below it. The water comes at the rate that the pipe lets
 * in and wets the metal as it fills; what boils off is gone from it.
 *
 * @param steam    kg in all
 * @param peak     most steam at once, kg/s
 * @param peakHeat heat that makes it, W
 * @param lasts    until the metal is at the boiling point, s
 */
record Flash(double steam, double peak, double peakHeat, double lasts) {

    private static final double STEEL = 480;
    /** Engine's nucleate branch at one atmosphere, W/(m2 K3): {@link stokewell.loop.PickupWater}. */
    private static final double NUCLEATE = 130;
    /** Film boiling ends so far above saturation on rough steel, K: 100 to 150 in the handbooks. */
    private static final double LEIDENFROST = 120;

    private static final double G = 9.80665;
    private static final double STEP = 0.02;
    private static final double LONGEST = 1800;
    private static final double FILM_DIAMETER = 0.03;

    /**
     * Reckons.
     *
     * @param mass   of the metal, kg
     * @param area   that the water wets, m2
     * @param volume of the pickup, m3
     * @param hot    temperature of the metal, K
     * @param inflow of water, kg/s
     * @param water  its temperature, K
     * @param air    pressure, Pa
     */
    static Flash of(double mass, double area, double volume, double hot, double inflow, double water, double air) {
        double saturation = Water.saturationTemperature(air);
        double latent = Water.latentHeat(saturation);
        double perKg = latent + 4190 * Math.max(0, saturation - water);
        double critical = Boiling.criticalFlux(saturation);
        double least = leastFlux(saturation, latent);
        double full = volume * Water.density(saturation);
        double metal = hot;
        double held = 0;
        double steam = 0;
        double peak = 0;
        double t = 0;
        while (t < LONGEST && metal > saturation + 1) {
            held = Math.min(full, held + inflow * STEP);
            double wet = held / full;
            double flux = flux(metal - saturation, critical, least, latent, saturation);
            double heat = Math.min(flux * area * wet, mass * STEEL * (metal - saturation) / STEP);
            double boiled = Math.min(heat / perKg * STEP, held);
            heat = boiled * perKg / STEP;
            held -= boiled;
            steam += boiled;
            metal -= heat * STEP / (mass * STEEL);
            peak = Math.max(peak, boiled / STEP);
            t += STEP;
        }
        return new Flash(steam, peak, peak * perKg, t);
    }

    /** Most steam that the heat in the metal can make, kg. */
    static double most(double mass, double hot, double water, double air) {
        double saturation = Water.saturationTemperature(air);
        double perKg = Water.latentHeat(saturation) + 4190 * Math.max(0, saturation - water);
        return Math.max(0, mass * STEEL * (hot - saturation) / perKg);
    }

    /** Heat flux over the whole boiling curve, W/m2. */
    static double flux(double over, double critical, double least, double latent, double saturation) {
        double peakAt = Math.cbrt(critical / NUCLEATE);
        if (over <= peakAt) return NUCLEATE * over * over * over;
        if (over >= LEIDENFROST) return Math.max(least, film(over, latent, saturation) * over);
        double share = Math.log(over / peakAt) / Math.log(LEIDENFROST / peakAt);
        return critical * Math.pow(least / critical, share);
    }

    /** Least flux of film boiling: Zuber's form with Berenson's 0.09. */
    static double leastFlux(double saturation, double latent) {
        double liquid = Water.density(saturation);
        double vapour = Water.steamDensity(saturation);
        double tension = Water.surfaceTension(saturation);
        double sum = liquid + vapour;
        return 0.09 * vapour * latent * Math.pow(tension * G * (liquid - vapour) / (sum * sum), 0.25);
    }

    /** Bromley, W/(m2 K): steam of the film near 1.2 times its saturation properties, from memory. */
    private static double film(double over, double latent, double saturation) {
        double conductivity = 0.025 + 8e-5 * 0.5 * over;
        double viscosity = 12.3e-6 + 4e-8 * 0.5 * over;
        double vapour = Water.steamDensity(saturation) * saturation / (saturation + 0.5 * over);
        double corrected = latent + 0.8 * 2000 * over;
        double liquid = Water.density(saturation);
        return 0.62
                * Math.pow(
                        Math.pow(conductivity, 3)
                                * vapour
                                * (liquid - vapour)
                                * G
                                * corrected
                                / (viscosity * FILM_DIAMETER * over),
                        0.25);
    }
}
