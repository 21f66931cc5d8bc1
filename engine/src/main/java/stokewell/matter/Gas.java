package stokewell.matter;

/**
 * The gases that make air and flue gas.
 *
 * <p>Specific heat and enthalpy: NASA seven-coefficient polynomials as in GRI-Mech 3.0 (1999) for O2, CO2 and H2O, 200
 * to 3500 K; N2 from the later NASA fit (TPIS 1978), since the older one is 0.3 % low at room temperature. Viscosity
 * and conductivity of N2, O2 and CO2: Sutherland forms with the constants of White, Viscous Fluid Flow, tables 1-2 and
 * 1-3 (from memory; stated there as 2 to 4 % to 1500 K). Water vapour: dilute limits of IAPWS R12-08 and R15-11.
 */
enum Gas {
    // spotless:off
    N2(28.0134e-3, 1.663e-5, 107, 0.0242, 150,
        new double[] {3.53100528, -1.23660987e-4, -5.02999437e-7, 2.43530612e-9, -1.40881235e-12, -1046.97628},
        new double[] {2.95257637, 1.39690057e-3, -4.92631691e-7, 7.86010367e-11, -4.60755321e-15, -923.948688}),
    O2(31.9988e-3, 1.919e-5, 139, 0.0244, 240,
        new double[] {3.78245636, -2.99673416e-3, 9.84730201e-6, -9.68129509e-9, 3.24372837e-12, -1063.94356},
        new double[] {3.28253784, 1.48308754e-3, -7.57966669e-7, 2.09470555e-10, -2.16717794e-14, -1088.45772}),
    CO2(44.0095e-3, 1.370e-5, 222, 0.0146, 1800,
        new double[] {2.35677352, 8.98459677e-3, -7.12356269e-6, 2.45919022e-9, -1.43699548e-13, -48371.9697},
        new double[] {3.85746029, 4.41437026e-3, -2.21481404e-6, 5.23490188e-10, -4.72084164e-14, -48759.166}),
    H2O(18.01528e-3, 0, 0, 0, 0,
        new double[] {4.19864056, -2.0364341e-3, 6.52040211e-6, -5.48797062e-9, 1.77197817e-12, -30293.7267},
        new double[] {3.03399249, 2.17691804e-3, -1.64072518e-7, -9.7041987e-11, 1.68200992e-14, -30004.2971});
    // spotless:on

    /** Universal gas constant, J/(mol K), CODATA 2018. */
    static final double UNIVERSAL = 8.314462618;

    /** kg/mol. */
    final double molarMass;

    private final double viscosity0;
    private final double viscosityS;
    private final double conductivity0;
    private final double conductivityS;
    private final double[] cold;
    private final double[] hot;

    Gas(double molarMass, double mu0, double muS, double k0, double kS, double[] cold, double[] hot) {
        this.molarMass = molarMass;
        this.viscosity0 = mu0;
        this.viscosityS = muS;
        this.conductivity0 = k0;
        this.conductivityS = kS;
        this.cold = cold;
        this.hot = hot;
    }

    /** J/(mol K). @param t K, 200 to 3500 */
    double molarHeat(double t) {
        double[] a = t < 1000 ? cold : hot;
        return UNIVERSAL * (a[0] + t * (a[1] + t * (a[2] + t * (a[3] + t * a[4]))));
    }

    /** J/mol over 0 K elements-of-298 reference; only differences of one gas are used. @param t K, 200 to 3500 */
    double molarEnthalpy(double t) {
        double[] a = t < 1000 ? cold : hot;
        return UNIVERSAL * (a[5] + t * (a[0] + t * (a[1] / 2 + t * (a[2] / 3 + t * (a[3] / 4 + t * a[4] / 5)))));
    }

    /** Pa s. @param t K */
    double viscosity(double t) {
        return this == H2O ? Water.viscosity(t, 0) : sutherland(viscosity0, viscosityS, t);
    }

    /** W/(m K). @param t K */
    double conductivity(double t) {
        return this == H2O ? Water.conductivity(t, 0) : sutherland(conductivity0, conductivityS, t);
    }

    private static double sutherland(double at273, double s, double t) {
        double r = t / 273;
        return at273 * r * Math.sqrt(r) * (273 + s) / (t + s);
    }
}
