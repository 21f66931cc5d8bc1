package stokewell.check;

/**
 * A flat rectangular tank wall under water: bending of a thin plate by small deflections (Kirchhoff), solved by Ritz's
 * method with polynomials that keep the held edges. Checked to 1 % against Timoshenko and Woinowsky-Krieger, Theory of Plates
 * and Shells, tables for uniform and hydrostatic load. Past a deflection of about half the thickness a real plate is stiffer
 * than this and pulls at its edges.
 *
 * @param deflection largest, m
 * @param stress     largest bending stress, Pa
 */
record Plate(double deflection, double stress) {

    /** Poisson's ratio of steel. */
    private static final double NU = 0.3;

    private static final int ACROSS = 5;
    private static final int UP = 9;
    private static final int GRID = 40;

    /** How an edge is held. */
    enum Edge {
        FREE,
        SIMPLE,
        CLAMPED
    }

    /**
     * Solves.
     *
     * @param width     m
     * @param height    m
     * @param thickness m
     * @param modulus   Young's, Pa
     * @param top       pressure at the top edge, Pa
     * @param bottom    pressure at the bottom edge, Pa
     * @param sides     how both sides and the bottom are held
     * @param rim       how the top edge is held
     */
    static Plate of(
            double width,
            double height,
            double thickness,
            double modulus,
            double top,
            double bottom,
            Edge sides,
            Edge rim) {
        double[][] x = functions(sides, sides, ACROSS, 2);
        double[][] y = functions(sides, rim, UP, 1);
        double d = modulus * Math.pow(thickness, 3) / (12 * (1 - NU * NU));
        int n = ACROSS * UP;
        double sx = 4 / (width * width);
        double sy = 4 / (height * height);
        double[][] a = new double[n][n + 1];
        double[][][] ix = products(x);
        double[][][] iy = products(y);
        for (int i = 0; i < n; i++) {
            int p = i / UP;
            int q = i % UP;
            for (int j = 0; j < n; j++) {
                int r = j / UP;
                int s = j % UP;
                a[i][j] = d
                        * (sx * sx * ix[2][p][r] * iy[0][q][s]
                                + sy * sy * ix[0][p][r] * iy[2][q][s]
                                + NU * sx * sy * (ix[3][p][r] * iy[3][s][q] + ix[3][r][p] * iy[3][q][s])
                                + 2 * (1 - NU) * sx * sy * ix[1][p][r] * iy[1][q][s]);
            }
            // pressure top + (bottom - top)(1 - eta)/2
            double[] load = {0.5 * (top + bottom), 0.5 * (top - bottom)};
            a[i][n] = integral(x[p], new double[] {1}) * integral(y[q], load);
        }
        return largest(solve(a), x, y, sx, sy, d, thickness);
    }

    private static Plate largest(
            double[] c, double[][] x, double[][] y, double sx, double sy, double d, double thickness) {
        double[][] across = values(x, 0);
        double[][] acrossBend = values(derived(derived(x)), 0);
        double[][] up = values(y, -1);
        double[][] upBend = values(derived(derived(y)), -1);
        double deflection = 0;
        double moment = 0;
        for (int g = 0; g <= GRID; g++) {
            for (int h = 0; h <= GRID; h++) {
                double w = 0;
                double wxx = 0;
                double wyy = 0;
                for (int p = 0; p < ACROSS; p++) {
                    double along = 0;
                    double bend = 0;
                    for (int q = 0; q < UP; q++) {
                        along += c[p * UP + q] * up[q][h];
                        bend += c[p * UP + q] * upBend[q][h];
                    }
                    w += across[p][g] * along;
                    wxx += acrossBend[p][g] * along;
                    wyy += across[p][g] * bend;
                }
                deflection = Math.max(deflection, Math.abs(w));
                moment = Math.max(moment, Math.abs(d * (sx * wxx + NU * sy * wyy)));
                moment = Math.max(moment, Math.abs(d * (sy * wyy + NU * sx * wxx)));
            }
        }
        return new Plate(deflection, 6 * moment / (thickness * thickness));
    }

    /** Each function at the grid's points from here to 1: by symmetry half of the width is enough. */
    private static double[][] values(double[][] f, double from) {
        double[][] v = new double[f.length][GRID + 1];
        for (int k = 0; k < f.length; k++) {
            for (int g = 0; g <= GRID; g++) v[k][g] = value(f[k], from + (1 - from) * g / GRID);
        }
        return v;
    }

    /** Polynomials on -1 to 1 that keep the edges: a weight times Legendre's, every {@code step}-th of them. */
    private static double[][] functions(Edge low, Edge high, int count, int step) {
        double[] weight = {1};
        for (int i = 0; i < low.ordinal(); i++) weight = times(weight, new double[] {1, 1});
        for (int i = 0; i < high.ordinal(); i++) weight = times(weight, new double[] {1, -1});
        double[][] legendre = new double[count * step + 1][];
        legendre[0] = new double[] {1};
        legendre[1] = new double[] {0, 1};
        for (int k = 2; k < legendre.length; k++) {
            double[] up = times(new double[] {0, (2.0 * k - 1) / k}, legendre[k - 1]);
            for (int i = 0; i < legendre[k - 2].length; i++) up[i] -= (k - 1.0) / k * legendre[k - 2][i];
            legendre[k] = up;
        }
        double[][] f = new double[count][];
        for (int i = 0; i < count; i++) f[i] = times(weight, legendre[i * step]);
        return f;
    }

    /** Integrals of f_i f_j, f_i' f_j', f_i'' f_j'' and f_i'' f_j. */
    private static double[][][] products(double[][] f) {
        double[][] d1 = derived(f);
        double[][] d2 = derived(d1);
        int n = f.length;
        double[][][] m = new double[4][n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                m[0][i][j] = integral(f[i], f[j]);
                m[1][i][j] = integral(d1[i], d1[j]);
                m[2][i][j] = integral(d2[i], d2[j]);
                m[3][i][j] = integral(d2[i], f[j]);
            }
        }
        return m;
    }

    private static double[] times(double[] a, double[] b) {
        double[] c = new double[a.length + b.length - 1];
        for (int i = 0; i < a.length; i++) for (int j = 0; j < b.length; j++) c[i + j] += a[i] * b[j];
        return c;
    }

    private static double[][] derived(double[][] f) {
        double[][] d = new double[f.length][];
        for (int k = 0; k < f.length; k++) {
            d[k] = new double[Math.max(1, f[k].length - 1)];
            for (int i = 1; i < f[k].length; i++) d[k][i - 1] = i * f[k][i];
        }
        return d;
    }

    /** Integral of a product from -1 to 1. */
    private static double integral(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = i % 2; j < b.length; j += 2) sum += 2 * a[i] * b[j] / (i + j + 1);
        }
        return sum;
    }

    private static double value(double[] f, double t) {
        double v = 0;
        for (int i = f.length - 1; i >= 0; i--) v = v * t + f[i];
        return v;
    }

    private static double[] solve(double[][] a) {
        int n = a.length;
        for (int i = 0; i < n; i++) {
            int pivot = i;
            for (int r = i + 1; r < n; r++) if (Math.abs(a[r][i]) > Math.abs(a[pivot][i])) pivot = r;
            double[] swap = a[i];
            a[i] = a[pivot];
            a[pivot] = swap;
            for (int r = i + 1; r < n; r++) {
                double factor = a[r][i] / a[i][i];
                for (int c = i; c <= n; c++) a[r][c] -= factor * a[i][c];
            }
        }
        double[] x = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = a[i][n];
            for (int c = i + 1; c < n; c++) sum -= a[i][c] * x[c];
            x[i] = sum / a[i][i];
        }
        return x;
    }
}
