package stokewell.fire;

/** The stove's air inlet: set by hand or clock, or left to a thermostatic damper on the body. */
public final class Inlet {

    /** No inlet shuts tighter than this share of it: the draft would else have nothing to stand on. */
    private static final double TIGHTEST = 2e-3;

    private final double leak;
    private double open;
    private boolean damper;
    private double setpoint;
    private double band;
    private double least;

    /** @param leak share of the inlet that leaks when shut */
    Inlet(double leak) {
        this.leak = Math.max(TIGHTEST, leak);
    }

    /** Sets it by hand or clock: share of wide open. */
    public void open(double share) {
        damper = false;
        open = share;
    }

    /** Leaves it to a damper that closes as the body warms. */
    public void damper(double to, double within, double atLeast) {
        damper = true;
        setpoint = to;
        band = within;
        least = atLeast;
    }

    /** Share of wide open that air passes at this temperature of the body. */
    double opening(double body) {
        double share = open;
        if (damper) {
            double u = 4 * (body - setpoint) / band;
            share = least + (1 - least) * 0.5 * (1 - u / Math.sqrt(1 + u * u));
        }
        return leak + (1 - leak) * share;
    }

    /** Its slope by the body's temperature. */
    double slope(double body) {
        if (!damper) return 0;
        double u = 4 * (body - setpoint) / band;
        double r = 1 + u * u;
        return -(1 - leak) * (1 - least) * 0.5 / (r * Math.sqrt(r)) * 4 / band;
    }
}
