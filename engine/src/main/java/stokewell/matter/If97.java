package stokewell.matter;

/**
 * IAPWS Industrial Formulation 1997 for water and steam: regions 1 (liquid), 2 (steam) and 4 (saturation).
 *
 * <p>Source: IAPWS R7-97(2012), equations 7, 11, 15 to 17, 30, 31. The release's check tables 5, 7, 15, 35 and 36 are
 * met to every printed digit. Region 1 holds from 273.15 to 623.15 K and up to 100 MPa; region 2 up to 1073.15 K;
 * region 4 from 273.15 to 647.096 K. Nothing is checked and nothing is clamped: close outside its bounds region 1 goes
 * on smoothly into superheated and supercooled liquid.
 *
 * <p>Pressure in Pa, temperature in K, specific quantities in J, kg, m3.
 */
public final class If97 {

    /** Specific gas constant of the formulation, J/(kg K). */
    public static final double R = 461.526;

    private static final double P1 = 16.53e6;
    private static final double T1 = 1386;
    private static final double P2 = 1e6;
    private static final double T2 = 540;

    // spotless:off
    /** Table 2: exponents and coefficients of region 1. */
    private static final int[] I1 = {
        0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 8, 8, 21, 23, 29, 30, 31, 32
    };
    private static final int[] J1 = {
        -2, -1, 0, 1, 2, 3, 4, 5, -9, -7, -1, 0, 1, 3, -3, 0, 1, 3, 17, -4, 0, 6, -5, -2, 10, -8, -11, -6, -29, -31,
        -38, -39, -40, -41
    };
    private static final double[] N1 = {
        0.14632971213167, -0.84548187169114, -0.37563603672040e1, 0.33855169168385e1, -0.95791963387872,
        0.15772038513228, -0.16616417199501e-1, 0.81214629983568e-3, 0.28319080123804e-3, -0.60706301565874e-3,
        -0.18990068218419e-1, -0.32529748770505e-1, -0.21841717175414e-1, -0.52838357969930e-4, -0.47184321073267e-3,
        -0.30001780793026e-3, 0.47661393906987e-4, -0.44141845330846e-5, -0.72694996297594e-15, -0.31679644845054e-4,
        -0.28270797985312e-5, -0.85205128120103e-9, -0.22425281908000e-5, -0.65171222895601e-6, -0.14341729937924e-12,
        -0.40516996860117e-6, -0.12734301741641e-8, -0.17424871230634e-9, -0.68762131295531e-18, 0.14478307828521e-19,
        0.26335781662795e-22, -0.11947622640071e-22, 0.18228094581404e-23, -0.93537087292458e-25
    };

    /** Table 6: region 1 backward, temperature of pressure and enthalpy. */
    private static final int[] I1H = {0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 2, 2, 3, 3, 4, 5, 6};
    private static final int[] J1H = {0, 1, 2, 6, 22, 32, 0, 1, 2, 3, 4, 10, 32, 10, 32, 10, 32, 32, 32, 32};
    private static final double[] N1H = {
        -0.23872489924521e3, 0.40421188637945e3, 0.11349746881718e3, -0.58457616048039e1, -0.15285482413140e-3,
        -0.10866707695377e-5, -0.13391744872602e2, 0.43211039183559e2, -0.54010067170506e2, 0.30535892203916e2,
        -0.65964749423638e1, 0.93965400878363e-2, 0.11573647505340e-6, -0.25858641282073e-4, -0.40644363084799e-8,
        0.66456186191635e-7, 0.80670734103027e-10, -0.93477771213947e-12, 0.58265442020601e-14, -0.15020185953503e-16
    };

    /** Table 10: ideal-gas part of region 2. */
    private static final int[] J0 = {0, 1, -5, -4, -3, -2, -1, 2, 3};
    private static final double[] N0 = {
        -0.96927686500217e1, 0.10086655968018e2, -0.56087911283020e-2, 0.71452738081455e-1, -0.40710498223928,
        0.14240819171444e1, -0.43839511319450e1, -0.28408632460772, 0.21268463753307e-1
    };

    /** Table 11: residual part of region 2. */
    private static final int[] I2 = {
        1, 1, 1, 1, 1, 2, 2, 2, 2, 2, 3, 3, 3, 3, 3, 4, 4, 4, 5, 6, 6, 6, 7, 7, 7, 8, 8, 9, 10, 10, 10, 16, 16, 18, 20,
        20, 20, 21, 22, 23, 24, 24, 24
    };
    private static final int[] J2 = {
        0, 1, 2, 3, 6, 1, 2, 4, 7, 36, 0, 1, 3, 6, 35, 1, 2, 3, 7, 3, 16, 35, 0, 11, 25, 8, 36, 13, 4, 10, 14, 29, 50,
        57, 20, 35, 48, 21, 53, 39, 26, 40, 58
    };
    private static final double[] N2 = {
        -0.17731742473213e-2, -0.17834862292358e-1, -0.45996013696365e-1, -0.57581259083432e-1, -0.50325278727930e-1,
        -0.33032641670203e-4, -0.18948987516315e-3, -0.39392777243355e-2, -0.43797295650573e-1, -0.26674547914087e-4,
        0.20481737692309e-7, 0.43870667284435e-6, -0.32277677238570e-4, -0.15033924542148e-2, -0.40668253562649e-1,
        -0.78847309559367e-9, 0.12790717852285e-7, 0.48225372718507e-6, 0.22922076337661e-5, -0.16714766451061e-10,
        -0.21171472321355e-2, -0.23895741934104e2, -0.59059564324270e-17, -0.12621808899101e-5, -0.38946842435739e-1,
        0.11256211360459e-10, -0.82311340897998e1, 0.19809712802088e-7, 0.10406965210174e-18, -0.10234747095929e-12,
        -0.10018179379511e-8, -0.80882908646985e-10, 0.10693031879409, -0.33662250574171, 0.89185845355421e-24,
        0.30629316876232e-12, -0.42002467698208e-5, -0.59056029685639e-25, 0.37826947613457e-5, -0.12768608934681e-14,
        0.73087610595061e-28, 0.55414715350778e-16, -0.94369707241210e-6
    };

    /** Table 34: region 4, n1 to n10. */
    private static final double[] N4 = {
        0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
        0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557575849, 0.65017534844798e3
    };
    // spotless:on

    private If97() {}

    /** Specific volume of liquid, m3/kg. @param p Pa @param t K */
    public static double liquidVolume(double p, double t) {
        double tau = T1 / t - 1.222;
        double pi = 7.1 - p / P1;
        return R * t / P1 * gamma1(pi, tau, 1, 0);
    }

    /** Specific enthalpy of liquid, J/kg; nearly zero for the liquid at the triple point. @param p Pa @param t K */
    public static double liquidEnthalpy(double p, double t) {
        return R * T1 * gamma1(7.1 - p / P1, T1 / t - 1.222, 0, 1);
    }

    /** Specific internal energy of liquid, J/kg. @param p Pa @param t K */
    public static double liquidEnergy(double p, double t) {
        return liquidEnthalpy(p, t) - p * liquidVolume(p, t);
    }

    /** Specific entropy of liquid, J/(kg K). @param p Pa @param t K */
    public static double liquidEntropy(double p, double t) {
        double pi = 7.1 - p / P1;
        double tau = T1 / t - 1.222;
        return R * (T1 / t * gamma1(pi, tau, 0, 1) - gamma1(pi, tau, 0, 0));
    }

    /** Isobaric specific heat of liquid, J/(kg K). @param p Pa @param t K */
    public static double liquidSpecificHeat(double p, double t) {
        double x = T1 / t;
        return -R * x * x * gamma1(7.1 - p / P1, x - 1.222, 0, 2);
    }

    /** Isobaric cubic expansion coefficient of liquid, 1/K. @param p Pa @param t K */
    public static double liquidExpansion(double p, double t) {
        double pi = 7.1 - p / P1;
        double x = T1 / t;
        return (1 - x * gamma1(pi, x - 1.222, 1, 1) / gamma1(pi, x - 1.222, 1, 0)) / t;
    }

    /** Speed of sound in liquid, m/s. @param p Pa @param t K */
    public static double liquidSoundSpeed(double p, double t) {
        double pi = 7.1 - p / P1;
        double x = T1 / t;
        double tau = x - 1.222;
        double gp = gamma1(pi, tau, 1, 0);
        double mixed = gp - x * gamma1(pi, tau, 1, 1);
        return Math.sqrt(R * t * gp * gp / (mixed * mixed / (x * x * gamma1(pi, tau, 0, 2)) - gamma1(pi, tau, 2, 0)));
    }

    /**
     * Temperature of liquid, K, from the backward equation; within 25 mK of the forward one.
     *
     * @param p Pa
     * @param h J/kg
     */
    public static double liquidTemperature(double p, double h) {
        double pi = p / 1e6;
        double eta = h / 2500e3 + 1;
        double sum = 0;
        for (int i = 0; i < N1H.length; i++) {
            sum += N1H[i] * power(pi, I1H[i]) * power(eta, J1H[i]);
        }
        return sum;
    }

    /** Specific volume of steam, m3/kg. @param p Pa @param t K */
    public static double steamVolume(double p, double t) {
        double pi = p / P2;
        return R * t / P2 * (1 / pi + residual2(pi, T2 / t - 0.5, 1, 0));
    }

    /** Specific enthalpy of steam, J/kg, on the zero of {@link #liquidEnthalpy}. @param p Pa @param t K */
    public static double steamEnthalpy(double p, double t) {
        double tau = T2 / t;
        return R * T2 * (ideal2(tau, 1) + residual2(p / P2, tau - 0.5, 0, 1));
    }

    /** Specific internal energy of steam, J/kg. @param p Pa @param t K */
    public static double steamEnergy(double p, double t) {
        return steamEnthalpy(p, t) - p * steamVolume(p, t);
    }

    /** Specific entropy of steam, J/(kg K). @param p Pa @param t K */
    public static double steamEntropy(double p, double t) {
        double pi = p / P2;
        double tau = T2 / t;
        double first = ideal2(tau, 1) + residual2(pi, tau - 0.5, 0, 1);
        return R * (tau * first - Math.log(pi) - ideal2(tau, 0) - residual2(pi, tau - 0.5, 0, 0));
    }

    /** Isobaric specific heat of steam, J/(kg K). @param p Pa @param t K */
    public static double steamSpecificHeat(double p, double t) {
        double tau = T2 / t;
        return -R * tau * tau * (ideal2(tau, 2) + residual2(p / P2, tau - 0.5, 0, 2));
    }

    /** Speed of sound in steam, m/s. @param p Pa @param t K */
    public static double steamSoundSpeed(double p, double t) {
        double pi = p / P2;
        double tau = T2 / t;
        double rp = residual2(pi, tau - 0.5, 1, 0);
        double mixed = 1 + pi * rp - tau * pi * residual2(pi, tau - 0.5, 1, 1);
        double curvature = tau * tau * (ideal2(tau, 2) + residual2(pi, tau - 0.5, 0, 2));
        double stiffness = 1 - pi * pi * residual2(pi, tau - 0.5, 2, 0) + mixed * mixed / curvature;
        return Math.sqrt(R * t * (1 + pi * rp) * (1 + pi * rp) / stiffness);
    }

    /** Saturation pressure, Pa. @param t K, 273.15 to 647.096 */
    public static double saturationPressure(double t) {
        double theta = t + N4[8] / (t - N4[9]);
        double a = (theta + N4[0]) * theta + N4[1];
        double b = (N4[2] * theta + N4[3]) * theta + N4[4];
        double c = (N4[5] * theta + N4[6]) * theta + N4[7];
        return 1e6 * power(2 * c / (-b + Math.sqrt(b * b - 4 * a * c)), 4);
    }

    /** Saturation temperature, K. @param p Pa, 611.213 to 22.064e6 */
    public static double saturationTemperature(double p) {
        double beta = Math.sqrt(Math.sqrt(p / 1e6));
        double e = (beta + N4[2]) * beta + N4[5];
        double f = (N4[0] * beta + N4[3]) * beta + N4[6];
        double g = (N4[1] * beta + N4[4]) * beta + N4[7];
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N4[9] + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N4[8] + N4[9] * d))) / 2;
    }

    /**
     * Derivative of the Gibbs function of region 1, dp times by reduced pressure and dt times by reciprocal
     * temperature.
     */
    private static double gamma1(double pi, double tau, int dp, int dt) {
        double sum = 0;
        for (int i = 0; i < N1.length; i++) {
            double term = N1[i] * falling(I1[i], dp) * falling(J1[i], dt);
            if (term != 0) {
                sum += term * power(pi, I1[i] - dp) * power(tau, J1[i] - dt);
            }
        }
        return dp % 2 == 0 ? sum : -sum;
    }

    private static double ideal2(double tau, int dt) {
        double sum = 0;
        for (int i = 0; i < N0.length; i++) {
            sum += N0[i] * falling(J0[i], dt) * power(tau, J0[i] - dt);
        }
        return sum;
    }

    private static double residual2(double pi, double tau, int dp, int dt) {
        double sum = 0;
        for (int i = 0; i < N2.length; i++) {
            double term = N2[i] * falling(I2[i], dp) * falling(J2[i], dt);
            if (term != 0) {
                sum += term * power(pi, I2[i] - dp) * power(tau, J2[i] - dt);
            }
        }
        return sum;
    }

    /** The factor that k differentiations of x^n leave. */
    private static double falling(int n, int k) {
        return k == 0 ? 1 : k == 1 ? n : (double) n * (n - 1);
    }

    private static double power(double x, int n) {
        double base = n < 0 ? 1 / x : x;
        double result = 1;
        for (int k = Math.abs(n); k > 0; k >>= 1) {
            if ((k & 1) == 1) {
                result *= base;
            }
            base *= base;
        }
        return result;
    }
}
