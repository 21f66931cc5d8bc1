package stokewell.fire;

import stokewell.balance.Part;
import stokewell.balance.Wiring;

/**
 * Fuel bed, firebox, flue pass, connector, chimney and draft, in one part because each moment of them hangs on all.
 *
 * <p>States: raw wood (just laid on, heating through), fuel water, volatiles, char, kg; the air flow, kg/s;
 * the firebox gas temperature solves an algebraic equation. In short:
 *
 * <ul>
 *   <li>raw wood passes on to water, volatiles and char with the time it takes to catch;
 *   <li>volatiles go as they dry, char as the air blows, both no faster than the air supply burns at the least excess air;
 *       what starved or cool fire leaves unburnt goes up as smoke;
 *   <li>water leaves as fast as the gas is hot enough to dry it: a cold firebox dries nothing;
 *   <li>well-stirred firebox: heat released and air in = radiation and convection to every surface + gas out;
 *   <li>gas cools along the body's flue pass, the connector and the chimney (ε-NTU, heat transfer rising with flow);
 *   <li>draft = hydrostatic difference of the gas column; the inlet's and the flue's resistance set the air flow.
 * </ul>
 *
 * Well-stirred furnace: Hottel and Sarofim, Radiative Transfer (1967), ch. 14. Draft: EN 13384-1's hydrostatic term. The
 * rates of drying, release and burn-out and the smoke shares are common practice, no source; their time constants by the
 * form of wood are in {@link Burn}.
 *
 * <p>The air flow follows the draft with the time in which the gas in the flue is renewed. Taken as following at once, fire
 * and draft feed each other: at the edge between smouldering and burning the equations then have no answer, or three.
 */
public final class Fire implements Part {

    private static final double SIGMA = 5.670374e-8;
    /** Bed mass at which half of its full radiating face is there, kg. */
    private static final double HALF_BED = 0.4;
    /** Radiation is that of no colder gas than this, K: the fourth power would have a second, negative answer. */
    private static final double COLDEST = 150;
    /** In which the gas in a flue is renewed, s: 0.1 m3 at 0.01 kg/s and 0.6 kg/m3 is 6 s. Common practice, no source. */
    private static final double RENEWAL = 6;
    /** Smooths the square root of draft through zero, Pa. */
    private static final double DRAFT_BLUR = 0.3;

    /** A surface that the fire heats: its row, area m2, grey-exchange emissivity, convection W/(m2 K), soot m2 K/W. */
    public record Surface(int node, double area, double emissivity, double convection, double soot, int meter) {}

    /** Numbers of columns and rows that the fire joins. */
    public record Places(
            int raw,
            int water,
            int volatiles,
            int carbon,
            int gas,
            int air,
            int body,
            int chimney,
            int room,
            int contents,
            int outdoors,
            int flueAccount,
            int smokeAccount,
            int steamFromFuelMeter,
            int releaseMeter) {}

    /**
     * Sizes and constants, SI.
     *
     * @param passArea        body surface that the gas washes after the firebox, m2
     * @param connectorArea   inside area of the connector, m2
     * @param chimneyArea     inside area of the chimney, m2
     * @param draftFactor     g p H / R of the chimney, Pa K
     * @param inletResistance of the inlet wide open: Pa per (kg/s)2
     * @param flueResistance  of the flue at 1 K gas, times gas temperature: Pa per (kg/s)2 K
     * @param inletLeak       share of the inlet that leaks when shut
     */
    public record Sizes(
            double passArea,
            double connectorArea,
            double chimneyArea,
            double draftFactor,
            double inletResistance,
            double flueResistance,
            double inletLeak) {}

    private final Places at;
    private final Surface[] surfaces;
    private final Sizes size;
    private final Burn burn;
    private final Gas gas;
    private final double nominalAir;

    // air setting: either a number or a thermostatic damper on the body
    private double open;
    private boolean damper;
    private double damperSetpoint;
    private double damperBand;
    private double damperLeast;

    // columns of the local gradient
    private static final int W = 0;
    private static final int V = 1;
    private static final int C = 2;
    private static final int G = 3;
    private static final int A = 4;
    private static final int B = 5;
    private static final int H = 6;
    private static final int R = 7;
    private static final int O = 8;
    private static final int FIRST = 9;

    private final int[] columns;
    private final int k;
    private final int[] slotWater;
    private final int[] slotVolatiles;
    private final int[] slotCarbon;
    private final int[] slotGas;
    private final int[] slotAir;
    private final int[] slotBody;
    private final int[] slotChimney;
    private final int[] slotRoom;
    private final int[] slotContents;
    private final int[] slotFlue;
    private final int[] slotSmoke;
    private final int[] slotRelease;
    private final int[] slotFuelSteam;
    private final int[][] slotSurface;
    private final int[][] slotMeter;
    private final int rawRaw;
    private final int waterRaw;
    private final int volatilesRaw;
    private final int carbonRaw;

    // values at x, filled by evaluate()
    private double psi;
    private double gWind;
    private double dgWind;
    private double rv0;
    private double rc0;
    private double starve;
    private double phi;
    private double dphi;
    private double rv;
    private double rc;
    private double rw;
    private double release;
    private double cold;
    private double smokeShare;
    private double gasFlow;
    private double bed;
    private double glow;
    private double enthalpyGas;
    private double enthalpyRoom;
    private double collar;
    private double afterConnector;
    private double top;
    private double e1;
    private double e2;
    private double e3;
    private double n1;
    private double n2;
    private double n3;
    private double meanGas;
    private double draft;
    private double draftPlus;
    private double resistance;
    private double pull;
    private double opening;

    // gradients
    private final double[] dRv;
    private final double[] dRc;
    private final double[] dRw;
    private final double[] dRelease;
    private final double[] dSmoke;
    private final double[] dFlow;
    private final double[] dCollar;
    private final double[] dAfter;
    private final double[] dTop;
    private final double[] dMean;
    private final double[] row;
    private final double[] gasRow;

    public Fire(Wiring wiring, Places at, java.util.List<Surface> surfaces, Sizes size, Burn burn, Gas gas) {
        this.at = at;
        this.surfaces = surfaces.toArray(Surface[]::new);
        this.size = size;
        this.burn = burn;
        this.gas = gas;
        // air that a 12 Pa draft pulls through the wide-open inlet: the scale of "full air"
        nominalAir = Math.sqrt(12 / size.inletResistance);
        k = FIRST + this.surfaces.length;
        columns = new int[k];
        columns[W] = at.water;
        columns[V] = at.volatiles;
        columns[C] = at.carbon;
        columns[G] = at.gas;
        columns[A] = at.air;
        columns[B] = at.body;
        columns[H] = at.chimney;
        columns[R] = at.room;
        columns[O] = at.outdoors;
        for (int i = 0; i < this.surfaces.length; i++) columns[FIRST + i] = this.surfaces[i].node;
        dRv = new double[k];
        dRc = new double[k];
        dRw = new double[k];
        dRelease = new double[k];
        dSmoke = new double[k];
        dFlow = new double[k];
        dCollar = new double[k];
        dAfter = new double[k];
        dTop = new double[k];
        dMean = new double[k];
        row = new double[k];
        gasRow = new double[k];

        int[] fuel = {W, V, C, G, A};
        slotWater = slotsOf(wiring, at.water, new int[] {W, G});
        slotVolatiles = slotsOf(wiring, at.volatiles, fuel);
        slotCarbon = slotsOf(wiring, at.carbon, fuel);
        int[] furnace = new int[6 + this.surfaces.length];
        System.arraycopy(fuel, 0, furnace, 0, 5);
        furnace[5] = R;
        for (int i = 0; i < this.surfaces.length; i++) furnace[6 + i] = FIRST + i;
        slotGas = slotsOf(wiring, at.gas, furnace);
        slotAir = slotsOf(wiring, at.air, new int[] {W, V, C, G, A, B, H, R, O});
        slotBody = slotsOf(wiring, at.body, new int[] {W, V, C, G, A, B});
        slotChimney = slotsOf(wiring, at.chimney, new int[] {W, V, C, G, A, B, H, R});
        slotRoom = slotsOf(wiring, at.room, new int[] {W, V, C, G, A, B, R});
        slotContents = slotsOf(wiring, at.contents, new int[] {W, V, C, G, A, B, R});
        slotFlue = slotsOf(wiring, at.flueAccount, new int[] {W, V, C, G, A, B, H, R});
        slotSmoke = slotsOf(wiring, at.smokeAccount, fuel);
        slotRelease = slotsOf(wiring, at.releaseMeter, fuel);
        slotFuelSteam = slotsOf(wiring, at.steamFromFuelMeter, new int[] {W, G});
        slotSurface = new int[this.surfaces.length][];
        slotMeter = new int[this.surfaces.length][];
        for (int i = 0; i < this.surfaces.length; i++) {
            int[] on = {V, C, G, FIRST + i};
            slotSurface[i] = slotsOf(wiring, this.surfaces[i].node, on);
            if (this.surfaces[i].meter >= 0) slotMeter[i] = slotsOf(wiring, this.surfaces[i].meter, on);
        }
        rawRaw = wiring.slot(at.raw, at.raw);
        waterRaw = wiring.slot(at.water, at.raw);
        volatilesRaw = wiring.slot(at.volatiles, at.raw);
        carbonRaw = wiring.slot(at.carbon, at.raw);
    }

    /** Pairs of local column and slot of one row, for the columns that play a part in it. */
    private int[] slotsOf(Wiring wiring, int rowNumber, int[] used) {
        int[] slots = new int[2 * used.length];
        for (int i = 0; i < used.length; i++) {
            slots[2 * i] = used[i];
            slots[2 * i + 1] = wiring.slot(rowNumber, columns[used[i]]);
        }
        return slots;
    }

    /** Sets the air inlet by hand or clock: share of wide open. */
    public void open(double share) {
        damper = false;
        open = share;
    }

    /** Leaves the air inlet to a damper that closes as the body warms. */
    public void damper(double setpoint, double band, double least) {
        damper = true;
        damperSetpoint = setpoint;
        damperBand = band;
        damperLeast = least;
    }

    /** Heat that one kilogram of raw wood brings, J/kg, net of drying its water. */
    public double netHeat() {
        return burn.netHeat();
    }

    /** The burn's constants. */
    public Burn burn() {
        return burn;
    }

    /** Energy held by the fuel bed at x, J. */
    public double energy(double[] x) {
        return x[at.raw] * burn.netHeat()
                + x[at.volatiles] * burn.heatOfVolatiles()
                + x[at.carbon] * burn.heatOfChar()
                - x[at.water] * Burn.LATENT;
    }

    /** Wood and coals still in the firebox, kg. */
    public double bed(double[] x) {
        return x[at.raw] + x[at.water] + x[at.volatiles] + x[at.carbon];
    }

    /** Heat that the fire gives a surface at this row, W, at x. */
    public double into(int node, double[] x) {
        bed = clamped(x[at.volatiles]) + clamped(x[at.carbon]);
        glow = bed / (bed + HALF_BED);
        double sum = 0;
        for (Surface s : surfaces) {
            if (s.node != node) continue;
            double h = surfaceCoefficient(s, x[at.gas], x[s.node]);
            sum += h / (1 + s.soot * h) * s.area * (x[at.gas] - x[s.node]);
        }
        return sum;
    }

    /** Flue gas temperature at the collar, K, at x. */
    public double collar(double[] x) {
        evaluate(x);
        return collar;
    }

    /** Flue gas temperature at the chimney's top, K, at x. */
    public double top(double[] x) {
        evaluate(x);
        return top;
    }

    /** Draft of the chimney, Pa, at x. */
    public double draft(double[] x) {
        evaluate(x);
        return draft;
    }

    /** Excess-air ratio at x: air in over what the burning needs; infinite with no fire. */
    public double excessAir(double[] x) {
        evaluate(x);
        return x[at.air] / (burn.airPerHeat() * (release + 1e-9));
    }

    private double clamped(double value) {
        return value > 0 ? value : 0;
    }

    private void evaluate(double[] x) {
        double w = clamped(x[at.water]);
        double v = clamped(x[at.volatiles]);
        double c = clamped(x[at.carbon]);
        double tg = x[at.gas];
        double air = clamped(x[at.air]);
        double body = x[at.body];
        double room = x[at.room];
        double chimney = x[at.chimney];

        double dry = v + c + 0.05;
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
        double z = Math.max(tg, COLDEST) / 700;
        z *= z;
        z *= z;
        cold = 1 / (1 + z);
        smokeShare = 0.25 * (1 - phi) + 0.2 * cold;
        double hot = (tg - 373) / 500;
        rw = hot > 0 ? w / burn.dryingTime() * hot * hot / (hot + 0.2) : 0;
        gasFlow = air + rv + rc + rw + 1e-5;
        bed = v + c;
        glow = bed / (bed + HALF_BED);
        enthalpyGas = gas.enthalpy(tg);
        enthalpyRoom = gas.enthalpy(room);

        double cp = gas.passHeat();
        n1 = size.passArea * (6 + 900 * gasFlow) / (gasFlow * cp);
        e1 = Math.exp(-n1);
        collar = body + (tg - body) * e1;
        n2 = size.connectorArea * (2.5 + 350 * gasFlow) / (gasFlow * cp);
        e2 = Math.exp(-n2);
        afterConnector = room + (collar - room) * e2;
        n3 = size.chimneyArea * (4 + 700 * gasFlow) / (gasFlow * cp);
        e3 = Math.exp(-n3);
        top = chimney + (afterConnector - chimney) * e3;
        meanGas = chimney + (afterConnector - chimney) * (1 - e3) / n3;
        draft = size.draftFactor * (1 / x[at.outdoors] - 1 / meanGas);
        double root = Math.sqrt(draft * draft + DRAFT_BLUR * DRAFT_BLUR);
        draftPlus = 0.5 * (draft + root);
        opening = openingAt(body);
        resistance = size.inletResistance / (opening * opening) + size.flueResistance * meanGas;
        pull = Math.sqrt(draftPlus / resistance);
    }

    private double openingAt(double body) {
        double share = open;
        if (damper) {
            double u = 4 * (body - damperSetpoint) / damperBand;
            share = damperLeast + (1 - damperLeast) * 0.5 * (1 - u / Math.sqrt(1 + u * u));
        }
        return size.inletLeak + (1 - size.inletLeak) * share;
    }

    private double openingSlope(double body) {
        if (!damper) return 0;
        double u = 4 * (body - damperSetpoint) / damperBand;
        double r = 1 + u * u;
        return -(1 - size.inletLeak) * (1 - damperLeast) * 0.5 / (r * Math.sqrt(r)) * 4 / damperBand;
    }

    private double surfaceCoefficient(Surface s, double gasNow, double t) {
        double tg = Math.max(gasNow, COLDEST);
        return s.emissivity * glow * SIGMA * (tg * tg + t * t) * (tg + t) + s.convection;
    }

    @Override
    public void flows(double[] x, double[] p) {
        evaluate(x);
        double caught = x[at.raw] / burn.catchTime();
        p[at.raw] -= caught;
        p[at.water] += burn.moisture() * caught - rw;
        p[at.volatiles] += burn.volatileShare() * caught - rv;
        p[at.carbon] += burn.charShare() * caught - rc;

        double smoke = smokeShare * release;
        double balance = release - smoke - rw * Burn.LATENT - gasFlow * (enthalpyGas - enthalpyRoom);
        double tg = x[at.gas];
        for (Surface s : surfaces) {
            double t = x[s.node];
            double h = surfaceCoefficient(s, tg, t);
            double q = h / (1 + s.soot * h) * s.area * (tg - t);
            balance -= q;
            p[s.node] += q;
            if (s.meter >= 0) p[s.meter] += q;
        }
        p[at.gas] += balance;
        double hCollar = gas.enthalpy(collar);
        double hAfter = gas.enthalpy(afterConnector);
        double hTop = gas.enthalpy(top);
        p[at.body] += gasFlow * (enthalpyGas - hCollar);
        double connector = gasFlow * (hCollar - hAfter);
        p[at.room] += 0.4 * connector;
        p[at.contents] += 0.6 * connector;
        p[at.chimney] += gasFlow * (hAfter - hTop);
        p[at.flueAccount] += gasFlow * (hTop - enthalpyRoom);
        p[at.smokeAccount] += smoke;
        p[at.releaseMeter] += release;
        p[at.steamFromFuelMeter] += rw;
        p[at.air] += (pull - x[at.air]) / RENEWAL;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        evaluate(x);
        gradients(x);

        double caught = 1 / burn.catchTime();
        v[rawRaw] -= caught;
        v[waterRaw] += burn.moisture() * caught;
        v[volatilesRaw] += burn.volatileShare() * caught;
        v[carbonRaw] += burn.charShare() * caught;
        scatter(v, slotWater, dRw, -1);
        scatter(v, slotVolatiles, dRv, -1);
        scatter(v, slotCarbon, dRc, -1);
        scatter(v, slotSmoke, dSmoke, 1);
        scatter(v, slotRelease, dRelease, 1);
        scatter(v, slotFuelSteam, dRw, 1);

        double tg = x[at.gas];
        double lift = enthalpyGas - enthalpyRoom;
        for (int i = 0; i < k; i++) {
            gasRow[i] = dRelease[i] - dSmoke[i] - dRw[i] * Burn.LATENT - dFlow[i] * lift;
        }
        gasRow[G] -= gasFlow * gas.heat(tg);
        gasRow[R] += gasFlow * gas.heat(x[at.room]);
        double dGlow = HALF_BED / ((bed + HALF_BED) * (bed + HALF_BED));
        double dGlowV = x[at.volatiles] > 0 ? dGlow : 0;
        double dGlowC = x[at.carbon] > 0 ? dGlow : 0;
        for (int i = 0; i < surfaces.length; i++) {
            Surface s = surfaces[i];
            double t = x[s.node];
            double h = surfaceCoefficient(s, tg, t);
            double series = 1 / (1 + s.soot * h);
            double span = s.area * (tg - t);
            double dqdh = series * series * span;
            double u = h * series * s.area;
            double es = s.emissivity * glow * SIGMA;
            double shining = Math.max(tg, COLDEST);
            double both = shining + t;
            double squares = shining * shining + t * t;
            double dG = u + (tg > COLDEST ? dqdh * es * (2 * tg * both + squares) : 0);
            double dT = -u + dqdh * es * (2 * t * both + squares);
            double perGlow = dqdh * s.emissivity * SIGMA * squares * both;
            double dV = perGlow * dGlowV;
            double dC = perGlow * dGlowC;
            gasRow[G] -= dG;
            gasRow[FIRST + i] -= dT;
            gasRow[V] -= dV;
            gasRow[C] -= dC;
            addSurface(v, slotSurface[i], dV, dC, dG, dT);
            if (s.meter >= 0) addSurface(v, slotMeter[i], dV, dC, dG, dT);
        }
        scatter(v, slotGas, gasRow, 1);

        // body pass
        double hCollar = gas.enthalpy(collar);
        double hAfter = gas.enthalpy(afterConnector);
        double hTop = gas.enthalpy(top);
        double cCollar = gas.heat(collar);
        double cAfter = gas.heat(afterConnector);
        double cTop = gas.heat(top);
        for (int i = 0; i < k; i++) row[i] = dFlow[i] * (enthalpyGas - hCollar) - gasFlow * cCollar * dCollar[i];
        row[G] += gasFlow * gas.heat(tg);
        scatter(v, slotBody, row, 1);
        for (int i = 0; i < k; i++) {
            row[i] = dFlow[i] * (hCollar - hAfter) + gasFlow * (cCollar * dCollar[i] - cAfter * dAfter[i]);
        }
        scatter(v, slotRoom, row, 0.4);
        scatter(v, slotContents, row, 0.6);
        for (int i = 0; i < k; i++) {
            row[i] = dFlow[i] * (hAfter - hTop) + gasFlow * (cAfter * dAfter[i] - cTop * dTop[i]);
        }
        scatter(v, slotChimney, row, 1);
        for (int i = 0; i < k; i++) row[i] = dFlow[i] * (hTop - enthalpyRoom) + gasFlow * cTop * dTop[i];
        row[R] -= gasFlow * gas.heat(x[at.room]);
        scatter(v, slotFlue, row, 1);

        // draft
        double root = Math.sqrt(draft * draft + DRAFT_BLUR * DRAFT_BLUR);
        double dPlus = 0.5 * (1 + draft / root);
        double perMean = size.draftFactor / (meanGas * meanGas);
        double logDraft = 0.5 * pull / draftPlus * dPlus;
        double logResistance = 0.5 * pull / resistance;
        for (int i = 0; i < k; i++) {
            row[i] = logDraft * perMean * dMean[i] - logResistance * size.flueResistance * dMean[i];
        }
        double out = x[at.outdoors];
        row[O] -= logDraft * size.draftFactor / (out * out);
        row[B] += logResistance * 2 * size.inletResistance / (opening * opening * opening) * openingSlope(x[at.body]);
        row[A] -= 1;
        scatter(v, slotAir, row, 1 / RENEWAL);
    }

    private void gradients(double[] x) {
        double w = clamped(x[at.water]);
        double vol = clamped(x[at.volatiles]);
        double c = clamped(x[at.carbon]);
        double onW = x[at.water] > 0 ? 1 : 0;
        double onV = x[at.volatiles] > 0 ? 1 : 0;
        double onC = x[at.carbon] > 0 ? 1 : 0;
        double onA = x[at.air] > 0 ? 1 : 0;
        double tg = x[at.gas];
        double qv = burn.heatOfVolatiles();
        double qc = burn.heatOfChar();

        double dry = vol + c + 0.05;
        double wet = dry + 4 * w;
        double psiDry = 4 * w / (wet * wet);
        double psiW = -4 * dry / (wet * wet);
        double blowV = 0.4 + 0.6 * gWind;
        double perV = blowV / burn.volatileTime();
        double rv0W = psiW * vol * perV * onW;
        double rv0V = (psi + psiDry * vol) * perV * onV;
        double rv0C = psiDry * vol * perV * onC;
        double rv0A = psi * vol / burn.volatileTime() * 0.6 * dgWind * onA;
        double rc0C = (0.1 + 0.9 * gWind) / burn.charTime() * onC;
        double rc0A = c / burn.charTime() * 0.9 * dgWind * onA;

        double demandFactor = burn.airPerHeat() * Burn.LEAST_EXCESS;
        double air = clamped(x[at.air]);
        double perDemand = air > 0 ? -starve * starve / air : 0;
        double dW = dphi * perDemand * demandFactor * rv0W * qv;
        double dV = dphi * perDemand * demandFactor * rv0V * qv;
        double dC = dphi * perDemand * demandFactor * (rv0C * qv + rc0C * qc);
        double dA = dphi * ((air > 0 ? starve / air : 1e7) * onA + perDemand * demandFactor * (rv0A * qv + rc0A * qc));

        dRv[W] = dW * rv0 + phi * rv0W;
        dRv[V] = dV * rv0 + phi * rv0V;
        dRv[C] = dC * rv0 + phi * rv0C;
        dRv[A] = dA * rv0 + phi * rv0A;
        dRc[W] = dW * rc0;
        dRc[V] = dV * rc0;
        dRc[C] = dC * rc0 + phi * rc0C;
        dRc[A] = dA * rc0 + phi * rc0A;
        double hot = (tg - 373) / 500;
        if (hot > 0) {
            double f = hot * hot / (hot + 0.2);
            double df = (hot * hot + 0.4 * hot) / ((hot + 0.2) * (hot + 0.2)) / 500;
            dRw[W] = f / burn.dryingTime() * onW;
            dRw[G] = w / burn.dryingTime() * df;
        } else {
            dRw[W] = 0;
            dRw[G] = 0;
        }
        double z = (1 - cold) / cold;
        double dCold = tg > COLDEST ? -cold * cold * 4 * z / tg : 0;
        for (int i = 0; i <= A; i++) {
            dRelease[i] = dRv[i] * qv + dRc[i] * qc;
            dFlow[i] = dRv[i] + dRc[i] + dRw[i];
            dSmoke[i] = smokeShare * dRelease[i];
        }
        dFlow[A] += onA;
        dSmoke[W] -= 0.25 * dW * release;
        dSmoke[V] -= 0.25 * dV * release;
        dSmoke[C] -= 0.25 * dC * release;
        dSmoke[A] -= 0.25 * dA * release;
        dSmoke[G] += 0.2 * dCold * release;

        double cp = gas.passHeat();
        double square = gasFlow * gasFlow * cp;
        double n1F = -size.passArea * 6 / square;
        double n2F = -size.connectorArea * 2.5 / square;
        double n3F = -size.chimneyArea * 4 / square;
        double collarF = -(tg - x[at.body]) * e1 * n1F;
        double afterF = -(collar - x[at.room]) * e2 * n2F;
        double fall = afterConnector - x[at.chimney];
        double topF = -fall * e3 * n3F;
        double share = (1 - e3) / n3;
        double meanF = fall * (e3 - share) / n3 * n3F;
        for (int i = 0; i < k; i++) dCollar[i] = collarF * dFlow[i];
        dCollar[G] += e1;
        dCollar[B] += 1 - e1;
        for (int i = 0; i < k; i++) dAfter[i] = e2 * dCollar[i] + afterF * dFlow[i];
        dAfter[R] += 1 - e2;
        for (int i = 0; i < k; i++) {
            dTop[i] = e3 * dAfter[i] + topF * dFlow[i];
            dMean[i] = share * dAfter[i] + meanF * dFlow[i];
        }
        dTop[H] += 1 - e3;
        dMean[H] += 1 - share;
    }

    private static void scatter(double[] v, int[] slots, double[] gradient, double factor) {
        for (int i = 0; i < slots.length; i += 2) v[slots[i + 1]] += factor * gradient[slots[i]];
    }

    /** Slots of a surface come in the order volatiles, char, gas, itself. */
    private static void addSurface(double[] v, int[] slots, double dV, double dC, double dG, double dT) {
        v[slots[1]] += dV;
        v[slots[3]] += dC;
        v[slots[5]] += dG;
        v[slots[7]] += dT;
    }
}
