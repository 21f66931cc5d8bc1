package stokewell.transfer;

import stokewell.matter.Air;
import stokewell.matter.Water;

/**
 * Evaporation from open, still hot water into room air.
 *
 * <p>Two published forms. Shah, ASHRAE Trans. 98 (1992) and HVAC&amp;R Research 8 (2002) 125: natural convection of dry
 * air and vapour, fitted to 11 data sources with water at 7 to 94 °C, mean deviation 18 %. The pool formula of Carrier
 * (1918) in the ASHRAE HVAC Applications handbook, meant for pools near 30 °C: the same paper finds it far off
 * elsewhere; on hot water it gives less. They agree to 20 % at 60 °C and differ by 40 % at 80 °C, which is what is
 * known about a tank without its own measurement. Constants from memory; the range and deviations were read in the 2002
 * abstract.
 *
 * <p>Rates in kg/(s m2), never below 0: condensation on cold water is left out. Temperatures in K.
 */
public final class Evaporation {

    private Evaporation() {}

    /**
     * Still air, by Shah: 35 of (kg/m3)^-1/3 m/h for convection, or 5e-5 kg/(h m2 Pa) of room draughts if that is more.
     *
     * @param water    surface temperature, K, below boiling
     * @param air      room temperature, K
     * @param humidity relative, 0 to 1
     * @param pressure Pa
     */
    public static double shah(double water, double air, double humidity, double pressure) {
        double waterVapour = Air.saturationVapourPressure(water);
        double airVapour = Air.vapourPressure(air, humidity);
        double dryAtWater = Air.density(water, pressure - waterVapour);
        double dryInRoom = Air.density(air, pressure - airVapour);
        double held = Air.humidityRatio(waterVapour, pressure) - Air.humidityRatio(airVapour, pressure);
        double buoyant = 35 * dryAtWater * Math.cbrt(Math.max(0, dryInRoom - dryAtWater)) * held;
        double draughts = 5e-5 * (waterVapour - airVapour);
        return Math.max(0, Math.max(buoyant, draughts)) / 3600;
    }

    /**
     * Moving air, by Carrier: (0.089 + 0.0782 v) of the vapour pressure difference, W/(m2 Pa), over the latent heat.
     *
     * @param speed of air over the water, m/s, 0 to 0.7
     */
    public static double carrier(double water, double air, double humidity, double speed) {
        double difference = Air.saturationVapourPressure(water) - Air.vapourPressure(air, humidity);
        return Math.max(0, (0.089 + 0.0782 * speed) * difference) / Water.latentHeat(water);
    }

    /** Heat that an evaporation rate takes from the water, W/m2. @param rate kg/(s m2) @param water K */
    public static double heat(double rate, double water) {
        return rate * Water.latentHeat(water);
    }
}
