package stokewell.fire;

/**
 * The fuel bed at a moment: how fast its water dries, its volatiles go and its char burns, and what of that goes up unburnt.
 * Masses in kg, rates in kg/s. Columns of its gradients: {@link #WATER}, {@link #VOLATILES}, {@link #CHAR}, {@link #GAS},
 * {@link #AIR}.
 *
 * <p>Smoke is a little from any wood fire, more from a starved one, more from a cool firebox (embers give carbon monoxide). Its
 * three shares are set so that a well-aired stove loses 6 to 11 % of the fuel's heat, which is what the gases of stoves in use
 * carry: US EPA, AP-42 section 1.10 (1996, from memory) gives 70 g carbon monoxide, 10 g particles and 14 g hydrocarbons
 * for a kilogram from modern stoves, 1.6 MJ or 9 %, and about twice that from old ones and smouldering.
 */
final class Bed {

    static final int WATER = 0;
    static final int VOLATILES = 1;
    static final int CHAR = 2;
    static final int GAS = 3;
    static final int AIR = 4;
    static final int COLUMNS = 5;

    private static final double SMOKE = 0.02;
    private static final double STARVED_SMOKE = 0.12;
    private static final double COLD_SMOKE = 0.20;
    /** Firebox gas at which half of the cold's smoke is there, K. */
    private static final double HALF_COLD = 520;
    /** What wood of no mass counts, kg: keeps shares finite. */
    private static final double LITTLE = 0.05;

    private final Burn burn;
    private final double nominalAir;

    double rv;
    double rc;
    double rw;
    /** Heat set free, smoke's included, W. */
    double release;

    double smokeShare;

    private double psi;
    private double gWind;
    private double dgWind;
    private double rv0;
    private double rc0;
    private double starve;
    private double phi;
    private double dphi;
    private double cold;

    final double[] dRv = new double[COLUMNS];
    final double[] dRc = new double[COLUMNS];
    final double[] dRw = new double[COLUMNS];
    final double[] dRelease = new double[COLUMNS];
    final double[] dSmoke = new double[COLUMNS];

    /** @param nominalAir air that counts as full, kg/s */
    Bed(Burn burn, double nominalAir) {
        this.burn = burn;
        this.nominalAir = nominalAir;
    }

    static double clamped(double value) {
        return value > 0 ? value : 0;
    }

    /** The rates. */
    void at(double water, double volatiles, double coals, double gas, double airIn) {
        double w = clamped(water);
        double v = clamped(volatiles);
        double c = clamped(coals);
        double air = clamped(airIn);
        double dry = v + c + LITTLE;
        psi = dry / (dry + 4 * w);
        double s = air / nominalAir;
        gWind = 1.4 * s / (s + 0.4);
        dgWind = 0.56 / ((s + 0.4) * (s + 0.4)) / nominalAir;
        rv0 = psi * v / burn.volatileTime() * (0.4 + 0.6 * gWind);
        rc0 = c / burn.charTime() * (0.1 + 0.9 * gWind);
        double demand =
                burn.airPerHeat() * Burn.LEAST_EXCESS * (rv0 * burn.heatOfVolatiles() + rc0 * burn.heatOfChar());
        starve = air / (demand + 1e-7);
        double x2 = starve * starve;
        double u = 1 + x2 * x2;
        double fourth = Math.sqrt(Math.sqrt(u));
        phi = starve / fourth;
        dphi = 1 / (u * fourth);
        rv = phi * rv0;
        rc = phi * rc0;
        release = rv * burn.heatOfVolatiles() + rc * burn.heatOfChar();
        double z = Math.max(gas, Furnace.COLDEST) / HALF_COLD;
        z *= z;
        cold = 1 / (1 + z * z * z);
        smokeShare = SMOKE + STARVED_SMOKE * (1 - phi) + COLD_SMOKE * cold;
        double hot = (gas - 373) / 500;
        rw = hot > 0 ? w / burn.dryingTime() * hot * hot / (hot + 0.2) : 0;
        rw += rv * w / dry;
    }

    /** The gradients, after {@link #at} for the same values. */
    void slopes(double water, double volatiles, double coals, double gas, double airIn) {
        double w = clamped(water);
        double vol = clamped(volatiles);
        double c = clamped(coals);
        double air = clamped(airIn);
        double onW = water > 0 ? 1 : 0;
        double onV = volatiles > 0 ? 1 : 0;
        double onC = coals > 0 ? 1 : 0;
        double onA = airIn > 0 ? 1 : 0;
        double qv = burn.heatOfVolatiles();
        double qc = burn.heatOfChar();

        double dry = vol + c + LITTLE;
        double wet = dry + 4 * w;
        double psiDry = 4 * w / (wet * wet);
        double psiW = -4 * dry / (wet * wet);
        double perV = (0.4 + 0.6 * gWind) / burn.volatileTime();
        double rv0W = psiW * vol * perV * onW;
        double rv0V = (psi + psiDry * vol) * perV * onV;
        double rv0C = psiDry * vol * perV * onC;
        double rv0A = psi * vol / burn.volatileTime() * 0.6 * dgWind * onA;
        double rc0C = (0.1 + 0.9 * gWind) / burn.charTime() * onC;
        double rc0A = c / burn.charTime() * 0.9 * dgWind * onA;

        double demandFactor = burn.airPerHeat() * Burn.LEAST_EXCESS;
        double perDemand = air > 0 ? -starve * starve / air : 0;
        double dW = dphi * perDemand * demandFactor * rv0W * qv;
        double dV = dphi * perDemand * demandFactor * rv0V * qv;
        double dC = dphi * perDemand * demandFactor * (rv0C * qv + rc0C * qc);
        double dA = dphi * ((air > 0 ? starve / air : 1e7) * onA + perDemand * demandFactor * (rv0A * qv + rc0A * qc));

        dRv[WATER] = dW * rv0 + phi * rv0W;
        dRv[VOLATILES] = dV * rv0 + phi * rv0V;
        dRv[CHAR] = dC * rv0 + phi * rv0C;
        dRv[AIR] = dA * rv0 + phi * rv0A;
        dRc[WATER] = dW * rc0;
        dRc[VOLATILES] = dV * rc0;
        dRc[CHAR] = dC * rc0 + phi * rc0C;
        dRc[AIR] = dA * rc0 + phi * rc0A;
        double hot = (gas - 373) / 500;
        double u = w / dry;
        for (int i = 0; i < COLUMNS; i++) dRw[i] = dRv[i] * u;
        dRw[WATER] += rv / dry * onW;
        dRw[VOLATILES] -= rv * u / dry * onV;
        dRw[CHAR] -= rv * u / dry * onC;
        if (hot > 0) {
            dRw[WATER] += hot * hot / (hot + 0.2) / burn.dryingTime() * onW;
            dRw[GAS] += w / burn.dryingTime() * (hot * hot + 0.4 * hot) / ((hot + 0.2) * (hot + 0.2)) / 500;
        }
        for (int i = 0; i < COLUMNS; i++) {
            dRelease[i] = dRv[i] * qv + dRc[i] * qc;
            dSmoke[i] = smokeShare * dRelease[i];
        }
        double starved = STARVED_SMOKE * release;
        dSmoke[WATER] -= starved * dW;
        dSmoke[VOLATILES] -= starved * dV;
        dSmoke[CHAR] -= starved * dC;
        dSmoke[AIR] -= starved * dA;
        double z = (1 - cold) / cold;
        double dCold = gas > Furnace.COLDEST ? -cold * cold * 6 * z / gas : 0;
        dSmoke[GAS] += COLD_SMOKE * dCold * release;
    }
}
