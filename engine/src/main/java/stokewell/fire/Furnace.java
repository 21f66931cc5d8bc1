package stokewell.fire;

import static stokewell.transfer.Radiation.SIGMA;

import java.util.List;

/**
 * What the gas of the firebox gives the surfaces around it: radiation of gas and bed as one grey body, the more the larger the bed
 * that glows, and convection, through soot. Temperatures in K, heat in W.
 */
final class Furnace {

    /** Radiation is that of no colder gas than this, K: the fourth power would have a second, negative answer. */
    static final double COLDEST = 150;
    /** Bed mass at which half of its full radiating face is there, kg. */
    private static final double HALF_BED = 0.4;

    final Fire.Surface[] surfaces;

    private double lying;
    /** Share of the bed's full radiating face. */
    private double glow;

    private boolean anyVolatiles;
    private boolean anyChar;

    double dVolatiles;
    double dChar;
    double dGas;
    double dSurface;

    Furnace(List<Fire.Surface> surfaces) {
        this.surfaces = surfaces.toArray(Fire.Surface[]::new);
    }

    /** The bed that glows, kg. */
    void at(double volatiles, double coals) {
        lying = Bed.clamped(volatiles) + Bed.clamped(coals);
        glow = lying / (lying + HALF_BED);
        anyVolatiles = volatiles > 0;
        anyChar = coals > 0;
    }

    /** Into a surface. */
    double heat(Fire.Surface s, double gas, double t) {
        double h = coefficient(s, gas, t);
        return h / (1 + s.soot() * h) * s.area() * (gas - t);
    }

    private double coefficient(Fire.Surface s, double gas, double t) {
        double tg = Math.max(gas, COLDEST);
        return s.emissivity() * glow * SIGMA * (tg * tg + t * t) * (tg + t) + s.convection();
    }

    /** The gradient of {@link #heat}. */
    void slopes(Fire.Surface s, double gas, double t) {
        double h = coefficient(s, gas, t);
        double series = 1 / (1 + s.soot() * h);
        double span = s.area() * (gas - t);
        double dqdh = series * series * span;
        double u = h * series * s.area();
        double es = s.emissivity() * glow * SIGMA;
        double shining = Math.max(gas, COLDEST);
        double both = shining + t;
        double squares = shining * shining + t * t;
        dGas = u + (gas > COLDEST ? dqdh * es * (2 * gas * both + squares) : 0);
        dSurface = -u + dqdh * es * (2 * t * both + squares);
        double perGlow = dqdh * s.emissivity() * SIGMA * squares * both;
        double perMass = perGlow * (HALF_BED / ((lying + HALF_BED) * (lying + HALF_BED)));
        dVolatiles = anyVolatiles ? perMass : 0;
        dChar = anyChar ? perMass : 0;
    }

    /** Adds that gradient to a row whose slots come in the order volatiles, char, gas, surface. */
    void add(double[] v, int[] slots) {
        v[slots[1]] += dVolatiles;
        v[slots[3]] += dChar;
        v[slots[5]] += dGas;
        v[slots[7]] += dSurface;
    }
}
