package stokewell.emitter;

/**
 * Pipe in a slab: resistance from the water to the level of the pipes, per m² of floor, W, K, m. Koschenz and Lehmann,
 * Thermoaktive Bauteilsysteme (2000), taken over by ISO 11855-4; from memory. Holds for pipes embedded deeper than 0.3 of
 * their spacing and thinner than 0.2 of it.
 */
public final class FloorLoop {

    private FloorLoop() {}

    /**
     * From the water's own temperature to the mean of the level of the pipes, m² K/W: film, wall and constriction.
     *
     * @param spacing between pipes, m
     * @param outer outside diameter, m
     * @param inner inside diameter, m
     * @param pipe conductivity of the pipe wall, W/(m K)
     * @param slab conductivity of what it lies in, W/(m K)
     * @param film h between water and pipe, W/(m² K)
     */
    public static double resistance(double spacing, double outer, double inner, double pipe, double slab, double film) {
        return spacing / (Math.PI * inner * film)
                + spacing * Math.log(outer / inner) / (2 * Math.PI * pipe)
                + constriction(spacing, outer, slab);
    }

    /** What the heat pays for spreading from the pipes to the whole level, m² K/W: {@code s ln(s/πd)/(2πλ)}. */
    public static double constriction(double spacing, double outer, double slab) {
        return spacing * Math.log(spacing / (Math.PI * outer)) / (2 * Math.PI * slab);
    }

    /**
     * Film resistance of turbulent water in the same method's own form, m² K/W: {@code s^0.13/(8π) (di/(m l))^0.87}.
     *
     * @param specificFlow m, kg/(s m²) of floor
     * @param loopLength l, m of pipe in one loop
     */
    public static double turbulentFilm(double spacing, double inner, double specificFlow, double loopLength) {
        return Math.pow(spacing, 0.13) / (8 * Math.PI) * Math.pow(inner / (specificFlow * loopLength), 0.87);
    }

    /**
     * Conductance from the water as it comes in to the level of the pipes, W/K: {@code m c (1 − e^(−A/(R m c)))}.
     *
     * @param area of floor, m²
     * @param resistance m² K/W
     * @param capacityRate of the water, W/K; 0 gives 0
     */
    public static double conductance(double area, double resistance, double capacityRate) {
        double c = Math.abs(capacityRate);
        return c > 0 ? c * -Math.expm1(-area / (resistance * c)) : 0;
    }

    /**
     * Heat from the floor to the room, W/m²: {@code 8.92 (θF − θi)^1.1}, EN 1264-2, odd. At 9 K it is the standard's 100 W/m².
     *
     * @param excess of the floor's surface over the room, K
     */
    public static double surfaceHeat(double excess) {
        return 8.92 * excess * Math.pow(Math.abs(excess), 0.1);
    }
}
