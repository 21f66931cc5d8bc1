package stokewell.fire;

/**
 * Enthalpy of wood flue gas as a parabola in temperature, fitted where stoves work.
 *
 * @param c0       specific heat at 300 K, J/(kg K)
 * @param c1       its rise, J/(kg K2)
 * @param passHeat specific heat in the flue passes, J/(kg K)
 */
public record Gas(double c0, double c1, double passHeat) {

    private static final double BASE = 300;

    /** A parabola through the specific heats at 300 and 1100 K. */
    public static Gas through(double at300, double at1100, double at600) {
        return new Gas(at300, (at1100 - at300) / 800, at600);
    }

    /** Enthalpy over 300 K, J/kg. */
    public double enthalpy(double t) {
        double d = t - BASE;
        return d * (c0 + 0.5 * c1 * d);
    }

    /** Specific heat, J/(kg K). */
    public double heat(double t) {
        return c0 + c1 * (t - BASE);
    }
}
