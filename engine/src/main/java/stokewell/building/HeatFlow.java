package stokewell.building;

/** Which way the heat goes, and what that does to films and air gaps. ISO 6946 tables 7 and 8 (2017), from memory. */
public enum HeatFlow {
    HORIZONTAL(0.13, new double[] {0, 0.11, 0.13, 0.15, 0.17, 0.18, 0.18, 0.18, 0.18}),
    UP(0.10, new double[] {0, 0.11, 0.13, 0.15, 0.16, 0.16, 0.16, 0.16, 0.16}),
    DOWN(0.17, new double[] {0, 0.11, 0.13, 0.15, 0.17, 0.19, 0.21, 0.22, 0.23});

    /** Outdoor film, whatever the direction, m² K/W. */
    public static final double OUTSIDE = 0.04;

    private static final double[] GAP = {0, 0.005, 0.007, 0.010, 0.015, 0.025, 0.050, 0.100, 0.300};

    private final double inside;
    private final double[] gapResistance;

    HeatFlow(double inside, double[] gapResistance) {
        this.inside = inside;
        this.gapResistance = gapResistance;
    }

    /** Indoor film, m² K/W. */
    public double inside() {
        return inside;
    }

    /**
     * Resistance of an unventilated air gap between surfaces that shine like wood or paint, m² K/W; linear between the
     * table's rows, constant beyond 300 mm.
     *
     * @param thickness across the heat flow, m
     */
    public double gap(double thickness) {
        for (int i = 1; i < GAP.length; i++) {
            if (thickness <= GAP[i]) {
                double share = Math.max(0, thickness - GAP[i - 1]) / (GAP[i] - GAP[i - 1]);
                return gapResistance[i - 1] + share * (gapResistance[i] - gapResistance[i - 1]);
            }
        }
        return gapResistance[GAP.length - 1];
    }
}
