package stokewell.check;

import stokewell.matter.Water;

/** Head at a pump's suction over what would boil there. */
final class Suction {

    private static final double G = 9.80665;

    private Suction() {}

    /**
     * Net positive suction head available, m: {@code (p_air + p_gauge − p_sat)/(ρ g) + z − h_loss}.
     *
     * @param air       pressure of the air on the water, Pa
     * @param gauge     system pressure over that, Pa; 0 on an open one
     * @param level     water level above the pump, m; negative for a lift
     * @param loss      friction head of the suction pipe, m
     * @param water     temperature at the pump, K
     */
    static double available(double air, double gauge, double level, double loss, double water) {
        double density = Water.density(water);
        return (air + gauge - Water.saturationPressure(water)) / (density * G) + level - loss;
    }
}
