package stokewell.emitter;

import stokewell.loop.Friction;

/**
 * A bundle of tubes through the store with room air blown through them. The air film is the bottleneck: 10 to 25 W/(m² K)
 * against 200 and more on the water side (common practice).
 *
 * @param count number of tubes side by side
 * @param length in the water, m
 * @param outer outside diameter, m
 * @param inner inside diameter, m
 * @param conductivity of the wall, W/(m K)
 * @param roughness inside, m
 * @param rise air outlet above air inlet, m; negative if it falls
 */
public record AirTubes(
        int count, double length, double outer, double inner, double conductivity, double roughness, double rise) {

    /** Loss of the open ends: a sharp entrance 0.5 and an exit 1. */
    public static final double OPEN_ENDS = 1.5;

    private static final double GRAVITY = 9.80665;

    public AirTubes {
        if (!(count >= 1 && length > 0 && inner > 0 && outer > inner && conductivity > 0 && roughness >= 0)) {
            throw new IllegalArgumentException(
                    count + " tubes of " + length + " m, " + outer + " m outside, " + inner + " m inside cannot be");
        }
    }

    /** Surface that the air sees, m². */
    public double airSurface() {
        return count * Math.PI * inner * length;
    }

    /** Cross-section of all tubes, m². */
    public double passage() {
        return count * Math.PI / 4 * inner * inner;
    }

    /** Water that the tubes push aside, m³. */
    public double displaced() {
        return count * Math.PI / 4 * outer * outer * length;
    }

    /**
     * Conductance from water to air, W/K.
     *
     * @param airFilm h inside, on the inner surface, W/(m² K)
     * @param waterFilm h outside, on the outer surface, W/(m² K)
     */
    public double ua(double airFilm, double waterFilm) {
        double perTube = 1 / (airFilm * inner) + Math.log(outer / inner) / (2 * conductivity) + 1 / (waterFilm * outer);
        return count * Math.PI * length / perTube;
    }

    /**
     * Conductance from store to incoming air when the air warms on its way, W/K: {@code m c (1 − e^(−UA/mc))}. Times (store −
     * room) it is the heat; negative from a store colder than the room, as in nature, where the fan still runs.
     *
     * @param ua W/K
     * @param capacityRate of all the air, W/K; 0 gives 0
     */
    public static double conductance(double ua, double capacityRate) {
        double c = Math.abs(capacityRate);
        return c > 0 ? c * -Math.expm1(-ua / c) : 0;
    }

    /**
     * Loss of pressure through the tubes with their open ends, Pa: odd in the flow.
     *
     * @param massFlow of all the air, kg/s
     * @param density of the air at its mean temperature, kg/m³
     * @param viscosity Pa s
     */
    public double pressureLoss(double massFlow, double density, double viscosity) {
        double speed = massFlow / (density * passage());
        return length * Friction.pressureGradient(massFlow / count, inner, roughness, density, viscosity)
                + OPEN_ENDS * density * speed * Math.abs(speed) / 2;
    }

    /**
     * Air that the tubes draw by themselves with the fan off, kg/s, in the direction of the rise: the pull of the warm
     * column against Hagen and Poiseuille's loss and the open ends. Odd and smooth through zero. Level tubes draw none; a
     * real level bundle still leaks 10 to 25 % of what the fan gives (common practice, {@link #stillAirLeak}).
     *
     * @param roomDensity kg/m³
     * @param tubeDensity of the air in the tubes, kg/m³
     * @param viscosity of the air in the tubes, Pa s
     */
    public double naturalFlow(double roomDensity, double tubeDensity, double viscosity) {
        double pull = GRAVITY * rise * (roomDensity - tubeDensity);
        double linear = 128 * viscosity * length / (Math.PI * tubeDensity * Math.pow(inner, 4) * count);
        double square = OPEN_ENDS / (2 * tubeDensity * passage() * passage());
        return 2 * pull / (linear + Math.sqrt(linear * linear + 4 * square * Math.abs(pull)));
    }

    /**
     * Conductance of the tubes with the fan off, W/K, as a share of that with it on.
     *
     * @param share 0.10 to 0.25 open, about 0 capped (common practice)
     */
    public static double stillAirLeak(double fanConductance, double share) {
        return share * fanConductance;
    }
}
