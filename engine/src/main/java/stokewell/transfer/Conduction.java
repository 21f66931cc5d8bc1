package stokewell.transfer;

/**
 * Conduction in steady state and in simple transients, the exact solutions that numerical walls are tested against.
 *
 * <p>Lengths in m, conductivities in W/(m K), diffusivities in m2/s, times in s. Transients give the share of the step:
 * 0 as it began, 1 as the surface.
 */
public final class Conduction {

    private Conduction() {}

    /** Resistance of layers in series, m2 K/W. @param thickness m @param conductivity W/(m K), one for each layer */
    public static double layers(double[] thickness, double[] conductivity) {
        if (thickness.length != conductivity.length) {
            throw new IllegalArgumentException(
                    thickness.length + " thicknesses for " + conductivity.length + " conductivities");
        }
        double sum = 0;
        for (int i = 0; i < thickness.length; i++) {
            sum += thickness[i] / conductivity[i];
        }
        return sum;
    }

    /** Resistance of a cylinder's wall over its length, m K/W. @param inner radius, m @param outer radius, m */
    public static double cylinder(double inner, double outer, double conductivity) {
        return Math.log(outer / inner) / (2 * Math.PI * conductivity);
    }

    /** Resistance of a sphere's wall, K/W. @param inner radius, m @param outer radius, m */
    public static double sphere(double inner, double outer, double conductivity) {
        return (1 / inner - 1 / outer) / (4 * Math.PI * conductivity);
    }

    /**
     * Heat loss of an insulated pipe over its length and temperature difference, W/(m K), the wall and the water film
     * left out.
     *
     * @param radius       of the bare pipe outside, m
     * @param thickness    of insulation, m, 0 for none
     * @param conductivity of insulation
     * @param film         coefficient outside, convection and radiation, W/(m2 K)
     */
    public static double pipeLoss(double radius, double thickness, double conductivity, double film) {
        double outer = radius + thickness;
        return 1 / (cylinder(radius, outer, conductivity) + 1 / (2 * Math.PI * outer * film));
    }

    /** Outer radius at which a pipe loses most, m; more insulation on a thinner pipe than this loses more, not less. */
    public static double criticalRadius(double conductivity, double film) {
        return conductivity / film;
    }

    /** Fin parameter m of a thin straight fin, 1/m. @param film W/(m2 K) @param thickness m */
    public static double finParameter(double film, double conductivity, double thickness) {
        return Math.sqrt(2 * film / (conductivity * thickness));
    }

    /**
     * Efficiency of a straight or pin fin whose tip is adiabatic: tanh(mL)/mL.
     *
     * @param ml parameter times (corrected) length
     */
    public static double finEfficiency(double ml) {
        return ml < 1e-4 ? 1 - ml * ml / 3 : Math.tanh(ml) / ml;
    }

    /** Efficiency of a pin, tip included by Harper and Brown's corrected length. @param diameter m @param length m */
    public static double pinEfficiency(double film, double conductivity, double diameter, double length) {
        return finEfficiency(Math.sqrt(4 * film / (conductivity * diameter)) * (length + diameter / 4));
    }

    /**
     * Conductance of an endless flat sheet from a round base in it to what lies over it, W/K: {@code 2π r k t m K1(m r)/K0(m r)}
     * with m² = h/(k t); Incropera ch. 3, annular fin. The ratio of Bessel functions by {@code 1 + 1/(2 m r + 0.3)}, within
     * 1 % from m r = 0.7 on.
     *
     * @param radius    of the base, m
     * @param thickness of the sheet, m
     * @param film      over it on one side, W/(m2 K)
     */
    public static double annularFin(double radius, double thickness, double conductivity, double film) {
        double m = Math.sqrt(film / (conductivity * thickness));
        return 2 * Math.PI * radius * conductivity * thickness * m * (1 + 1 / (2 * m * radius + 0.3));
    }

    /** Heat into an endless rod, W. @param difference base over surroundings, K */
    public static double longRod(double film, double conductivity, double diameter, double difference) {
        double perimeter = Math.PI * diameter;
        double area = perimeter * diameter / 4;
        return Math.sqrt(film * perimeter * conductivity * area) * difference;
    }

    /**
     * Depth at which a periodic swing has fallen to 1/e, m; ISO 13370.
     *
     * @param volumetricHeat J/(m3 K)
     * @param period s
     */
    public static double penetrationDepth(double conductivity, double volumetricHeat, double period) {
        return Math.sqrt(conductivity * period / (Math.PI * volumetricHeat));
    }

    /** Half space whose surface is stepped: share of the step at a depth. Carslaw and Jaeger (1959) 2.4. */
    public static double halfSpaceStep(double depth, double diffusivity, double time) {
        return erfc(depth / (2 * Math.sqrt(diffusivity * time)));
    }

    /** Half space whose surface is stepped: flux into it, W/m2. @param step K */
    public static double halfSpaceStepFlux(double step, double conductivity, double diffusivity, double time) {
        return conductivity * step / Math.sqrt(Math.PI * diffusivity * time);
    }

    /** Half space whose surroundings are stepped, through a film. Carslaw and Jaeger 2.7. @param film W/(m2 K) */
    public static double halfSpaceFilm(
            double depth, double conductivity, double diffusivity, double time, double film) {
        double x = depth / (2 * Math.sqrt(diffusivity * time));
        double b = film * Math.sqrt(diffusivity * time) / conductivity;
        return erfc(x) - Math.exp(-x * x) * scaledErfc(x + b);
    }

    /** Half space heated by a steady flux from time 0: rise at a depth, K. Carslaw and Jaeger 2.9. @param flux W/m2 */
    public static double halfSpaceFlux(
            double depth, double conductivity, double diffusivity, double time, double flux) {
        double spread = 2 * Math.sqrt(diffusivity * time);
        double x = depth / spread;
        return flux / conductivity * (spread / Math.sqrt(Math.PI) * Math.exp(-x * x) - depth * erfc(x));
    }

    /**
     * Slab with both faces stepped: share of the first difference that is left. Carslaw and Jaeger 3.3.
     *
     * @param place   from the middle over the half thickness, 0 to 1
     * @param fourier diffusivity times time over half thickness squared, above 0.001
     */
    public static double slabStep(double place, double fourier) {
        double sum = 0;
        for (int n = 0; n < 100; n++) {
            double k = (n + 0.5) * Math.PI;
            double term = 2 / k * Math.exp(-k * k * fourier);
            sum += (n % 2 == 0 ? term : -term) * Math.cos(k * place);
            if (term < 1e-17) {
                break;
            }
        }
        return sum;
    }

    /** The mean over the slab of {@link #slabStep}. */
    public static double slabStepMean(double fourier) {
        double sum = 0;
        for (int n = 0; n < 100; n++) {
            double k = (n + 0.5) * Math.PI;
            double term = 2 / (k * k) * Math.exp(-k * k * fourier);
            sum += term;
            if (term < 1e-17) {
                break;
            }
        }
        return sum;
    }

    /**
     * Slab with both faces in a film: share of the first difference that is left. Carslaw and Jaeger 3.11.
     *
     * @param place   from the middle over the half thickness, 0 to 1
     * @param fourier as in {@link #slabStep}
     * @param biot    film times half thickness over conductivity, above 0
     */
    public static double slabFilm(double place, double fourier, double biot) {
        double sum = 0;
        for (int n = 0; n < 100; n++) {
            double z = root(n, biot);
            double amplitude = 4 * Math.sin(z) / (2 * z + Math.sin(2 * z)) * Math.exp(-z * z * fourier);
            sum += amplitude * Math.cos(z * place);
            if (Math.abs(amplitude) < 1e-17) {
                break;
            }
        }
        return sum;
    }

    /** The mean over the slab of {@link #slabFilm}: one less the share of heat that has passed. */
    public static double slabFilmMean(double fourier, double biot) {
        double sum = 0;
        for (int n = 0; n < 100; n++) {
            double z = root(n, biot);
            double s = Math.sin(z);
            double term = 4 * s * s / (z * (2 * z + Math.sin(2 * z))) * Math.exp(-z * z * fourier);
            sum += term;
            if (term < 1e-17) {
                break;
            }
        }
        return sum;
    }

    /** What is left of a difference in a body of one temperature, Biot number below 0.1. @param timeConstant s */
    public static double lumped(double time, double timeConstant) {
        return Math.exp(-time / timeConstant);
    }

    /** The n-th root of z tan z = biot, by halving between n pi and (n + 1/2) pi. */
    private static double root(int n, double biot) {
        double low = n * Math.PI;
        double high = (n + 0.5) * Math.PI;
        for (int i = 0; i < 60; i++) {
            double z = (low + high) / 2;
            if (z * Math.sin(z) * (n % 2 == 0 ? 1 : -1) < biot * Math.cos(z) * (n % 2 == 0 ? 1 : -1)) {
                low = z;
            } else {
                high = z;
            }
        }
        return (low + high) / 2;
    }

    /** Error function, to 1e-14. */
    public static double erf(double x) {
        if (Math.abs(x) > 2) {
            return x > 0 ? 1 - erfc(x) : erfc(-x) - 1;
        }
        double term = x;
        double sum = x;
        for (int n = 1; Math.abs(term) > 1e-17 * Math.abs(sum); n++) {
            term *= 2 * x * x / (2 * n + 1);
            sum += term;
        }
        return 2 / Math.sqrt(Math.PI) * Math.exp(-x * x) * sum;
    }

    /** Complementary error function, to 1e-13 of itself above 0. */
    public static double erfc(double x) {
        return x < 2 ? 1 - erf(x) : Math.exp(-x * x) * scaledErfc(x);
    }

    /** exp(x^2) erfc(x), x of 0 or more: finite where the factors are not. Continued fraction, DLMF 7.9.3. */
    private static double scaledErfc(double x) {
        if (x < 2) {
            return Math.exp(x * x) * (1 - erf(x));
        }
        double fraction = x;
        for (int n = 60; n > 0; n--) {
            fraction = x + n / 2.0 / fraction;
        }
        return 1 / (Math.sqrt(Math.PI) * fraction);
    }
}
