package stokewell.store;

/**
 * Classes of standing loss of a store at 65 °C in a room at 20 °C: {@code S ≤ a + b V^0.4}, W and litres. Commission Delegated
 * Regulation (EU) 812/2013 annex II.
 */
public enum StandbyClass {
    A_PLUS(5.5, 3.16),
    A(8.5, 4.25),
    B(12, 5.93),
    C(16.66, 8.33),
    D(21, 10.33),
    E(26, 13.66),
    F(31, 16.66),
    G(Double.POSITIVE_INFINITY, 0);

    /** Store over room in the test, K; from memory. */
    public static final double EXCESS = 45;

    private final double a;
    private final double b;

    StandbyClass(double a, double b) {
        this.a = a;
        this.b = b;
    }

    /**
     * Greatest loss that still belongs to the class, W.
     *
     * @param volume m³
     */
    public double limit(double volume) {
        return a + b * Math.pow(1000 * volume, 0.4);
    }

    /** Greatest conductance that still belongs to the class, W/K. */
    public double limitUa(double volume) {
        return limit(volume) / EXCESS;
    }

    /**
     * The class of a store.
     *
     * @param volume m³
     * @param ua standing loss coefficient, W/K
     */
    public static StandbyClass of(double volume, double ua) {
        for (StandbyClass c : values()) {
            if (ua * EXCESS <= c.limit(volume)) {
                return c;
            }
        }
        return G;
    }
}
