package stokewell.transfer;

/** Thermal radiation between grey surfaces. Temperatures in K, emissivities 0 to 1, fluxes in W/m2. */
public final class Radiation {

    /** Stefan-Boltzmann constant, W/(m2 K4), CODATA 2018. */
    public static final double SIGMA = 5.670374419e-8;

    private Radiation() {}

    /** Flux from a surface to wide surroundings of one temperature. */
    public static double flux(double emissivity, double surface, double surroundings) {
        return coefficient(emissivity, surface, surroundings) * (surface - surroundings);
    }

    /** The coefficient, W/(m2 K), that gives {@link #flux} exactly when the difference multiplies it. */
    public static double coefficient(double emissivity, double surface, double surroundings) {
        return emissivity * SIGMA * (surface * surface + surroundings * surroundings) * (surface + surroundings);
    }

    /** Flux between wide parallel plates. */
    public static double plates(double emissivity1, double t1, double emissivity2, double t2) {
        return flux(exchange(emissivity1, emissivity2, 1), t1, t2);
    }

    /**
     * Effective emissivity, on the inner area, of a convex body inside another: plates at ratio 1, a tube in a tube, a
     * stove in a room (ratio near 0).
     *
     * @param areaRatio inner over outer area, 0 to 1
     */
    public static double exchange(double inner, double outer, double areaRatio) {
        return 1 / (1 / inner + areaRatio * (1 / outer - 1));
    }
}
