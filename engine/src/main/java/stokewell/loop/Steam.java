package stokewell.loop;

/**
 * The smooth ramp with which water above saturation turns its surplus heat to steam: nothing at or below saturation, a
 * straight line from {@link #BLEND} kelvin above it, one continuous slope between. Nothing ever flows the wrong way.
 */
public final class Steam {

    /** Width of the bend, K. */
    public static final double BLEND = 0.25;

    /** Subcooling that takes half the bubbles that rise through it, K: common practice, no source. */
    public static final double HALF_COLLAPSE = 4;

    private Steam() {}

    /** Share of the bubbles that water so far below its boiling point lets pass, K to 1. */
    public static double escape(double subcooling) {
        double u = subcooling / HALF_COLLAPSE;
        return u > 0 ? 1 / (1 + u * u) : 1;
    }

    /** Derivative of {@link #escape}, 1/K. */
    public static double escapeSlope(double subcooling) {
        double u = subcooling / HALF_COLLAPSE;
        if (u <= 0) return 0;
        double r = 1 + u * u;
        return -2 * u / (r * r) / HALF_COLLAPSE;
    }

    /** 0 for x ≤ 0, x for x ≥ BLEND, smooth between; K to K. */
    public static double ramp(double x) {
        if (x <= 0) return 0;
        if (x >= BLEND) return x;
        double u = x / BLEND;
        return x * u * u * (3 - 2 * u);
    }

    /** Derivative of {@link #ramp}. */
    public static double rampSlope(double x) {
        if (x <= 0) return 0;
        if (x >= BLEND) return 1;
        double u = x / BLEND;
        return u * u * (9 - 8 * u);
    }
}
