package stokewell.solve;

import java.util.List;

/**
 * Coefficients of a stiffly accurate Rosenbrock method in the form that needs no product with J (Hairer and Wanner,
 * Solving Ordinary Differential Equations II, 2nd ed. 1996, IV.7 (7.25)). For M y' = f(t, y), M the identity with zeros
 * on algebraic rows, stage i solves
 *
 * <pre>(M/(h gamma) - J) U_i = f(t + alpha_i h, y + sum a_ij U_j) + M/h sum c_ij U_j + gamma_i h df/dt</pre>
 *
 * <p>and the new y is y + sum m_i U_i, its error estimate the last stage U_s. Between, with x from 0 to 1,
 * <pre>y(x) = (1 - x) y + x (y_new + (1 - x) (D_1 + x (D_2 + x D_3))),  D_k = sum dense[k][i] U_i</pre>
 *
 * <p>In all of them the last stage is taken at y_new - U_s, so that a = m in its row and m_s = 1.
 *
 * @param order    order of the method; the error estimate is of one order less
 * @param gamma    diagonal of Gamma
 * @param a        strictly lower: stage arguments
 * @param c        strictly lower: stage couplings
 * @param m        weights of the step
 * @param alpha    stage times
 * @param gammas   row sums of Gamma
 * @param dense    coefficients of the interpolant, one row for each power
 */
public record Rosenbrock(
        String name,
        int order,
        double gamma,
        double[][] a,
        double[][] c,
        double[] m,
        double[] alpha,
        double[] gammas,
        double[][] dense) {

    // spotless:off

    /**
     * Order 3 in four stages, of which one shares its rates with the first.
     * Source: Sandu, Verwer, Blom, Spee, Carmichael and Potra, Atmos. Environ. 31 (1997) 3459. Published without
     * interpolant; the one here is ours, of order 2, also for algebraic unknowns: with kappa = dense Gamma it solves
     * sum kappa_i = 0, sum kappa_i beta_i = -1/2, sum kappa_i omega_ij alpha_j^2 = -1 with the least norm of kappa.
     */
    public static final Rosenbrock RODAS3 = new Rosenbrock("RODAS3", 3, 0.5,
            new double[][] {{}, {0}, {2, 0}, {2, 0, 1}},
            new double[][] {{}, {4}, {1, -1}, {1, -1, -8.0 / 3}},
            new double[] {2, 0, 1, 1},
            new double[] {0, 0, 1, 1},
            new double[] {0.5, 1.5, 0, 0},
            new double[][] {{3, -1, -1, -9.0 / 17}});

    /**
     * Order 4 in six stages. Source: Hairer and Wanner (1996), IV.10, code RODAS of 28 October 1996, METH = 1.
     */
    public static final Rosenbrock RODAS4 = new Rosenbrock("RODAS4", 4, 0.25,
            new double[][] {{}, {1.544},
                {0.9466785280815826, 0.2557011698983284},
                {3.314825187068521, 2.896124015972201, 0.9986419139977817},
                {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950},
                {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1}},
            new double[][] {{}, {-5.6688},
                {-2.430093356833875, -0.2063599157091915},
                {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
                {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
                {8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054}},
            new double[] {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1, 1},
            new double[] {0, 0.386, 0.21, 0.63, 1, 1},
            new double[] {0.25, -0.1043, 0.1035, -0.03620000000000023, 0, 0},
            new double[][] {
                {10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662, 0},
                {-0.6762803392801253, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872, 0}});

    /**
     * Order 4 in six stages, without order reduction on linear parabolic problems.
     * Source: Steinebach, Order reduction of ROW methods for DAEs and method of lines applications, TH Darmstadt
     * preprint 1741 (1995); code RODAS, METH = 3.
     */
    public static final Rosenbrock RODASP = new Rosenbrock("RODASP", 4, 0.25,
            new double[][] {{}, {3},
                {1.831036793486759, 0.4955183967433795},
                {2.304376582692669, -0.05249275245743001, -1.176798761832782},
                {-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401},
                {-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401, 1}},
            new double[][] {{}, {-12},
                {-8.791795173947035, -2.207865586973518},
                {10.81793056857153, 6.780270611428266, 19.53485944642410},
                {34.19095006749676, 15.49671153725963, 54.74760875964130, 14.16005392148534},
                {34.62605830930532, 15.30084976114473, 56.99955578662667, 18.40807009793095, -5.714285714285717}},
            new double[] {-7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401, 1, 1},
            new double[] {0, 0.75, 0.21, 0.63, 1, 1},
            new double[] {0.25, -0.5, -0.023504, -0.0362, 0, 0},
            new double[][] {
                {25.09876703708589, 11.62013104361867, 28.49148307714626, -5.664021568594133, 0, 0},
                {1.638054557396973, -0.7373619806678748, 8.477918219238990, 15.99253148779520, -1.882352941176471, 0}});

    /**
     * Order 5 in eight stages, without order reduction on linear parabolic problems.
     * Source: Steinebach, BIT Numer. Math. 63 (2023) 27, Rodas5P.
     */
    public static final Rosenbrock RODAS5P = new Rosenbrock("RODAS5P", 5, 0.21193756319429014,
            new double[][] {{}, {3},
                {2.849394379747939, 0.45842242204463923},
                {-6.954028509809101, 2.489845061869568, -10.358996098473584},
                {2.8029986275628964, 0.5072464736228206, -0.3988312541770524, -0.04721187230404641},
                {-7.502846399306121, 2.561846144803919, -11.627539656261098, -0.18268767659942256, 0.030198172008377946},
                {-7.502846399306121, 2.561846144803919, -11.627539656261098, -0.18268767659942256, 0.030198172008377946, 1},
                {-7.502846399306121, 2.561846144803919, -11.627539656261098, -0.18268767659942256, 0.030198172008377946, 1, 1}},
            new double[][] {{}, {-14.155112264123755},
                {-17.97296035885952, -2.859693295451294},
                {147.12150275711716, -1.41221402718213, 71.68940251302358},
                {165.43517024871676, -0.4592823456491126, 42.90938336958603, -5.961986721573306},
                {24.854864614690072, -3.0009227002832186, 47.4931110020768, 5.5814197821558125, -0.6610691825249471},
                {30.91273214028599, -3.1208243349937974, 77.79954646070892, 34.28646028294783, -19.097331116725623,
                    -28.087943162872662},
                {37.80277123390563, -3.2571969029072276, 112.26918849496327, 66.9347231244047, -40.06618937091002,
                    -54.66780262877968, -9.48861652309627}},
            new double[] {-7.502846399306121, 2.561846144803919, -11.627539656261098, -0.18268767659942256,
                0.030198172008377946, 1, 1, 1},
            new double[] {0, 0.6358126895828704, 0.4095798393397535, 0.9769306725060716, 0.4288403609558664, 1, 1, 1},
            new double[] {0.21193756319429014, -0.42387512638858027, -0.3384627126235924, 1.8046452872882734,
                2.325825639765069, 0, 0, 0},
            new double[][] {
                {25.948786856663858, -2.5579724845846235, 10.433815404888879, -2.3679251022684204, 0.524948541321073,
                    1.1241088310450404, 0.4272876194431874, -0.17202221070155493},
                {-9.91568850695171, -0.9689944594115154, 3.0438037242978453, -24.495224566215796, 20.176138334709044,
                    15.98066361424651, -6.789040303419874, -6.710236069923372},
                {11.419903575922262, 2.8879645146136994, 72.92137995996029, 80.12511834622643, -52.072871366152654,
                    -59.78993625266729, -0.15582684282751913, 4.883087185713722}});

    // spotless:on

    /** All of them, shortest first. */
    public static final List<Rosenbrock> ALL = List.of(RODAS3, RODAS4, RODASP, RODAS5P);

    /** Number of stages. */
    public int stages() {
        return m.length;
    }

    /** Whether stage i has the arguments of the first, and so its rates. */
    boolean repeatsFirst(int i) {
        if (alpha[i] != 0) return false;
        for (double x : a[i]) if (x != 0) return false;
        return i > 0;
    }

    /** Whether stage i is taken where stage i - 1 was, moved by U_(i-1). */
    boolean extendsPrevious(int i) {
        if (i < 2 || a[i][i - 1] != 1) return false;
        for (int j = 0; j < i - 1; j++) if (a[i][j] != a[i - 1][j]) return false;
        return true;
    }

    /**
     * What weights in terms of U are in terms of the stage slopes k, U = Gamma k with Gamma = (1/gamma - c)^-1: the row
     * w Gamma.
     */
    double[] slopeWeights(double[] w) {
        int s = stages();
        double[] b = new double[s];
        // b (1/gamma - c) = w, solved from the last stage to the first
        for (int j = s - 1; j >= 0; j--) {
            double sum = w[j];
            for (int i = j + 1; i < s; i++) sum += b[i] * c[i][j];
            b[j] = gamma * sum;
        }
        return b;
    }
}
