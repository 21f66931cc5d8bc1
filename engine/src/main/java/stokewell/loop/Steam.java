package stokewell.loop;

/**
 * The smooth ramp with which water above saturation turns its surplus heat to steam: nothing at or below saturation, a
 * straight line from {@link #BLEND} kelvin above it, one continuous slope between. Nothing ever flows the wrong way.
 */
public final class Steam {

    /** Width of the bend, K. */
    public static final double BLEND = 0.25;

    private Steam() {}

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
