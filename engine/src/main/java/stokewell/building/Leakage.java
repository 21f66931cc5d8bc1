package stokewell.building;

/**
 * Air through the cracks of a building, by the basic model of the ASHRAE Handbook of Fundamentals: {@code Q = AL √(Cs ΔT + Cw
 * U²)}, coefficients from memory. Single zone, cracks spread about evenly; ±50 % unless the leakage was measured.
 *
 * <p>Two small roundings make it smooth: |ΔT| is {@code ΔT²/√(ΔT² + 1 K²)}, 0.03 % off at 40 K, and the air outdoors is
 * never stiller than 0.1 m/s.
 *
 * @param stack Cs AL², m⁶/(s² K)
 * @param wind Cw AL², m⁴
 */
public record Leakage(double stack, double wind) {

    /** How open the place lies. ASHRAE shelter classes 1 to 5, from memory. */
    public enum Shelter {
        OPEN,
        FEW_OBSTACLES,
        SOME_OBSTACLES,
        SUBURB,
        DENSE_CITY
    }

    /** Pressure at which the effective leakage area is defined, Pa. */
    private static final double REFERENCE = 4;

    /** Flow exponent of cracks, usual value between a slit (0.5) and a hair (1). */
    private static final double EXPONENT = 0.65;

    private static final double STILLEST = 0.1;
    private static final double ROUNDING = 1;

    private static final double[] STACK = {0.000145, 0.000290, 0.000435};

    // spotless:off
    private static final double[][] WIND = {
        {0.000319, 0.000246, 0.000174, 0.000104, 0.000032},
        {0.000420, 0.000325, 0.000231, 0.000137, 0.000042},
        {0.000494, 0.000382, 0.000271, 0.000161, 0.000049}};
    // spotless:on

    /** L/s and cm² to m³/s and m²: AL in cm²/1000 is ten times AL in m². */
    private static final double AREA = 10;

    public Leakage {
        if (!(stack >= 0 && wind >= 0)) {
            throw new IllegalArgumentException("a leak cannot be less than none: stack " + stack + ", wind " + wind);
        }
    }

    /**
     * @param area effective leakage area at 4 Pa, m²
     * @param storeys 1 to 3
     */
    public static Leakage of(double area, int storeys, Shelter shelter) {
        if (storeys < 1 || storeys > 3) {
            throw new IllegalArgumentException("the model knows 1 to 3 storeys, not " + storeys);
        }
        double scale = AREA * AREA * area * area;
        return new Leakage(scale * STACK[storeys - 1], scale * WIND[storeys - 1][shelter.ordinal()]);
    }

    /**
     * Effective leakage area at 4 Pa, m², of a building that a blower door found to change its air n times an hour at 50
     * Pa: {@code Q4 √(ρ/2Δp)}, flow as pressure to the power of 0.65.
     *
     * @param changesAt50 1/h
     * @param volume m³
     * @param density of air, kg/m³
     */
    public static double areaFrom(double changesAt50, double volume, double density) {
        double flow = changesAt50 * volume / 3600 * Math.pow(REFERENCE / 50, EXPONENT);
        return flow * Math.sqrt(density / (2 * REFERENCE));
    }

    /** Changes at 50 Pa of a leakage area; {@link #areaFrom} turned round. */
    public static double changesAt50(double area, double volume, double density) {
        double flow = area * Math.sqrt(2 * REFERENCE / density) * Math.pow(50 / REFERENCE, EXPONENT);
        return flow * 3600 / volume;
    }

    /** The rule of twenty: usual changes an hour over a season. Persily (1982), Meier, Home Energy; ±50 %. */
    public static double seasonalChanges(double changesAt50) {
        return changesAt50 / 20;
    }

    /**
     * Air in and out, m³/s.
     *
     * @param inside °C
     * @param outside °C
     * @param wind at the weather station's height, m/s
     */
    public double flow(double inside, double outside, double wind) {
        return Math.sqrt(driven(inside - outside, wind));
    }

    /** Derivative of {@link #flow} by the inside temperature, m³/(s K); minus that is the one by the outside's. */
    public double flowByInside(double inside, double outside, double wind) {
        double dt = inside - outside;
        double square = dt * dt + ROUNDING * ROUNDING;
        double slope = dt * (square + ROUNDING * ROUNDING) / (square * Math.sqrt(square));
        double q = Math.sqrt(driven(dt, wind));
        return q > 0 ? stack * slope / (2 * q) : 0;
    }

    private double driven(double dt, double speed) {
        return stack * dt * dt / Math.sqrt(dt * dt + ROUNDING * ROUNDING)
                + wind * (speed * speed + STILLEST * STILLEST);
    }
}
