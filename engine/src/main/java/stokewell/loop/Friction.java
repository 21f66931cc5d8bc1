package stokewell.loop;

/** Loss of pressure by friction in straight round pipe. Darcy factors throughout: laminar is 64/Re, not 16/Re. */
public final class Friction {

    private static final double EIGHT_TO_THE_TWELFTH = 68719476736.0;

    private Friction() {}

    /**
     * Reynolds number of the flow in a round pipe, never negative.
     *
     * @param massFlow kg/s, either sign
     * @param bore inside diameter, m
     * @param viscosity dynamic, Pa s
     */
    public static double reynolds(double massFlow, double bore, double viscosity) {
        return 4 * Math.abs(massFlow) / (Math.PI * bore * viscosity);
    }

    /**
     * Darcy friction factor, smooth from laminar through transition to rough turbulent flow.
     *
     * <p>Churchill, S. W. (1977), Chem. Eng. 84(24), 91. Within 4 % of Colebrook above Re 4000; between 2100 and 4000 it
     * only bridges, no formula is trustworthy there.
     *
     * @param re Reynolds number, greater than 0
     * @param rr roughness / bore, 0 to 0.05
     */
    public static double darcy(double re, double rr) {
        return reynoldsTimesFactor(re, rr) / re;
    }

    /**
     * Darcy friction factor of turbulent flow, solved to rounding; the check for {@link #darcy}, not for hot loops.
     *
     * <p>Colebrook, C. F. (1939), J. Inst. Civ. Eng. 11, 133.
     *
     * @param re Reynolds number, above 4000
     * @param rr roughness / bore, 0 to 0.05
     */
    public static double colebrook(double re, double rr) {
        double x = 1 / Math.sqrt(darcy(re, rr));
        for (int i = 0; i < 50; i++) {
            double inside = rr / 3.7 + 2.51 * x / re;
            double f = x + 2 * Math.log10(inside);
            double step = f / (1 + 2 / Math.log(10) * 2.51 / re / inside);
            x -= step;
            if (Math.abs(step) < 1e-14 * x) {
                break;
            }
        }
        return 1 / (x * x);
    }

    /**
     * Fall of pressure along a straight pipe, Pa/m: odd in the flow, with one finite slope through zero (the laminar limit),
     * so that a loop can stop and turn round without a special case.
     *
     * @param massFlow kg/s, either sign
     * @param bore inside diameter, m
     * @param roughness m, up to 0.05 bore
     * @param density kg/m³
     * @param viscosity dynamic, Pa s
     */
    public static double pressureGradient(
            double massFlow, double bore, double roughness, double density, double viscosity) {
        double re = reynolds(massFlow, bore, viscosity);
        return reynoldsTimesFactor(re, roughness / bore) * perSpeed(bore, density, viscosity) * massFlow;
    }

    /** Derivative of {@link #pressureGradient} by the mass flow, Pa s/(m kg); positive for every flow. */
    public static double pressureGradientSlope(
            double massFlow, double bore, double roughness, double density, double viscosity) {
        double re = reynolds(massFlow, bore, viscosity);
        double rr = roughness / bore;
        return (reynoldsTimesFactor(re, rr) + riseOfReynoldsTimesFactor(re, rr)) * perSpeed(bore, density, viscosity);
    }

    /** f Re mu v / (2 D²) is the gradient; this is mu v / (2 D²) for 1 kg/s. */
    private static double perSpeed(double bore, double density, double viscosity) {
        return 2 * viscosity / (Math.PI * density * bore * bore * bore * bore);
    }

    /** Churchill's f times Re, which unlike f itself stays finite (64) where the flow stops. */
    private static double reynoldsTimesFactor(double re, double rr) {
        return 8 * Math.pow(EIGHT_TO_THE_TWELFTH + turbulentTerm(re, rr), 1.0 / 12);
    }

    /** Re d(f Re)/dRe. */
    private static double riseOfReynoldsTimesFactor(double re, double rr) {
        double s = turbulentTerm(re, rr);
        if (s == 0) {
            return 0;
        }
        double viscous = Math.pow(7 / re, 0.9);
        double x = viscous + 0.27 * rr;
        double log = -Math.log(x);
        double a = Math.pow(2.457 * log, 16);
        double b = Math.pow(37530 / re, 16);
        double aRise = 16 * Math.pow(2.457, 16) * Math.pow(log, 15) * 0.9 * viscous / x;
        double sRise = s * (12 - 1.5 * (aRise - 16 * b) / (a + b));
        return 8.0 / 12 * Math.pow(EIGHT_TO_THE_TWELFTH + s, -11.0 / 12) * sRise;
    }

    /** Re^12 (A + B)^-1.5 in Churchill's names; zero where it no longer counts. */
    private static double turbulentTerm(double re, double rr) {
        if (re < 10) {
            return 0;
        }
        double a = Math.pow(-2.457 * Math.log(Math.pow(7 / re, 0.9) + 0.27 * rr), 16);
        double b = Math.pow(37530 / re, 16);
        return Math.pow(re, 12) * Math.pow(a + b, -1.5);
    }
}
