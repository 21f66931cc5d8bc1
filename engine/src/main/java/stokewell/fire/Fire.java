package stokewell.fire;

import static stokewell.transfer.Radiation.SIGMA;

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
 *       what starved or cool fire leaves unburnt goes up as smoke ({@link Bed});
 *   <li>water leaves with the wood that burns, which must dry first, and from all the bed as the gas is hot enough to dry it;
 *   <li>well-stirred firebox: heat released and air in = radiation and convection to every surface + gas out;
 *   <li>gas cools along the body's flue pass, the connector and the chimney piece by piece ({@link Stack});
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

    /** Bed mass at which half of its full radiating face is there, kg. */
    private static final double HALF_BED = 0.4;
    /** Radiation is that of no colder gas than this, K: the fourth power would have a second, negative answer. */
    static final double COLDEST = 150;
    /** In which the gas in a flue is renewed, s: 0.1 m3 at 0.01 kg/s and 0.6 kg/m3 is 6 s. Common practice, no source. */
    private static final double RENEWAL = 6;
    /** Smooths the square root of draft through zero, Pa. */
    private static final double DRAFT_BLUR = 0.3;
    /** Gas that moves when nothing burns and nothing draws, kg/s. */
    private static final double BREATH = 1e-5;

    private static final double WATER_MOLAR = 18.015e-3;
    /** Molar mass of wood's dry flue gas, kg/mol: 10 % carbon dioxide for oxygen lifts air's 28.96 g to 30.1 g. */
    private static final double DRY_MOLAR = 30.1e-3;
    /** Water in the air that a stove draws in winter, kg/kg: outdoor air near freezing. Common practice, no source. */
    private static final double HUMIDITY = 0.004;

    /** A surface that the fire heats: its row, area m2, grey-exchange emissivity, convection W/(m2 K), soot m2 K/W. */
    public record Surface(int node, double area, double emissivity, double convection, double soot, int meter) {}

    /**
     * Numbers of columns and rows that the fire joins.
     *
     * @param chimney its pieces from below
     */
    public record Places(
            int raw,
            int water,
            int volatiles,
            int carbon,
            int gas,
            int air,
            int body,
            int[] chimney,
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
    private final Bed bed;
    private final Stack stack;
    private final Inlet inlet;

    // columns of the local gradient: the bed's five, then these, the chimney's pieces and the surfaces
    private static final int W = Bed.WATER;
    private static final int V = Bed.VOLATILES;
    private static final int C = Bed.CHAR;
    private static final int G = Bed.GAS;
    private static final int A = Bed.AIR;
    private static final int B = 5;
    private static final int R = 6;
    private static final int K = 7;
    private static final int O = 8;
    private static final int H = 9;

    private final int first;
    private final int[] columns;
    private final int k;
    private final int[] slotWater;
    private final int[] slotVolatiles;
    private final int[] slotCarbon;
    private final int[] slotGas;
    private final int[] slotAir;
    private final int[] slotBody;
    private final int[][] slotChimney;
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
    private double gasFlow;
    private double lying;
    private double glow;
    private double enthalpyGas;
    private double enthalpyRoom;
    private double meanGas;
    private double draft;
    private double draftPlus;
    private double resistance;
    private double pull;
    private double opening;

    // gradients
    private final double[] dFlow;
    private final double[] dCollar;
    private final double[] dAfter;
    private final double[][] dLeaves;
    private final double[] dMean;
    private final double[] dDraft;
    private final double[] row;
    private final double[] gasRow;

    public Fire(Wiring wiring, Places at, java.util.List<Surface> surfaces, Sizes size, Burn burn, Gas gas) {
        this.at = at;
        this.surfaces = surfaces.toArray(Surface[]::new);
        this.size = size;
        this.burn = burn;
        this.gas = gas;
        // air that a 12 Pa draft pulls through the wide-open inlet: the scale of "full air"
        bed = new Bed(burn, Math.sqrt(12 / size.inletResistance));
        int pieces = at.chimney.length;
        inlet = new Inlet(size.inletLeak);
        stack = new Stack(gas, size.passArea, size.connectorArea, size.chimneyArea, pieces);
        first = H + pieces;
        k = first + this.surfaces.length;
        columns = new int[k];
        columns[W] = at.water;
        columns[V] = at.volatiles;
        columns[C] = at.carbon;
        columns[G] = at.gas;
        columns[A] = at.air;
        columns[B] = at.body;
        columns[R] = at.room;
        columns[K] = at.contents;
        columns[O] = at.outdoors;
        System.arraycopy(at.chimney, 0, columns, H, pieces);
        for (int i = 0; i < this.surfaces.length; i++) columns[first + i] = this.surfaces[i].node;
        dFlow = new double[k];
        dCollar = new double[k];
        dAfter = new double[k];
        dLeaves = new double[pieces][k];
        dMean = new double[k];
        dDraft = new double[k];
        row = new double[k];
        gasRow = new double[k];

        Slots slots = new Slots(wiring, columns);
        int[] fuel = {W, V, C, G, A};
        int[] smoke = {W, V, C, G, A, B, R, K};
        slotWater = slots.of(at.water, fuel);
        slotVolatiles = slots.of(at.volatiles, fuel);
        slotCarbon = slots.of(at.carbon, fuel);
        int[] furnace = java.util.Arrays.copyOf(fuel, 6 + this.surfaces.length);
        furnace[5] = R;
        for (int i = 0; i < this.surfaces.length; i++) furnace[6 + i] = first + i;
        slotGas = slots.of(at.gas, furnace);
        slotAir = slots.of(at.air, upTo(pieces, W, V, C, G, A, B, R, K, O));
        slotBody = slots.of(at.body, W, V, C, G, A, B);
        slotChimney = new int[pieces][];
        for (int i = 0; i < pieces; i++) slotChimney[i] = slots.of(at.chimney[i], upTo(i + 1, smoke));
        slotRoom = slots.of(at.room, smoke);
        slotContents = slots.of(at.contents, smoke);
        slotFlue = slots.of(at.flueAccount, upTo(pieces, smoke));
        slotSmoke = slots.of(at.smokeAccount, fuel);
        slotRelease = slots.of(at.releaseMeter, fuel);
        slotFuelSteam = slots.of(at.steamFromFuelMeter, fuel);
        slotSurface = new int[this.surfaces.length][];
        slotMeter = new int[this.surfaces.length][];
        for (int i = 0; i < this.surfaces.length; i++) {
            int[] on = {V, C, G, first + i};
            slotSurface[i] = slots.of(this.surfaces[i].node, on);
            if (this.surfaces[i].meter >= 0) slotMeter[i] = slots.of(this.surfaces[i].meter, on);
        }
        rawRaw = wiring.slot(at.raw, at.raw);
        waterRaw = wiring.slot(at.water, at.raw);
        volatilesRaw = wiring.slot(at.volatiles, at.raw);
        carbonRaw = wiring.slot(at.carbon, at.raw);
    }

    /** These columns and the chimney's pieces up to one. */
    private static int[] upTo(int pieces, int... used) {
        int[] all = java.util.Arrays.copyOf(used, used.length + pieces);
        for (int i = 0; i < pieces; i++) all[used.length + i] = H + i;
        return all;
    }

    /** The air inlet, to be set. */
    public Inlet inlet() {
        return inlet;
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
        lying = Bed.clamped(x[at.volatiles]) + Bed.clamped(x[at.carbon]);
        glow = lying / (lying + HALF_BED);
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
        return stack.collar;
    }

    /** Flue gas temperature at the chimney's top, K, at x. */
    public double top(double[] x) {
        evaluate(x);
        return stack.top();
    }

    /** Draft of the chimney, Pa, at x. */
    public double draft(double[] x) {
        evaluate(x);
        return draft;
    }

    /** Excess-air ratio at x: air in over what the burning needs; infinite with no fire. */
    public double excessAir(double[] x) {
        evaluate(x);
        return x[at.air] / (burn.airPerHeat() * (bed.release + 1e-9));
    }

    /** Volume share of water vapour in the flue gas at x: of the wood, of its hydrogen, of the air. */
    public double vapour(double[] x) {
        evaluate(x);
        double air = Bed.clamped(x[at.air]);
        double made = bed.rv * burn.waterOfVolatiles();
        double water = (bed.rw + made + HUMIDITY * air) / WATER_MOLAR;
        double dry = (air + bed.rv + bed.rc - made + BREATH) / DRY_MOLAR;
        return water / (water + dry);
    }

    private void evaluate(double[] x) {
        double tg = x[at.gas];
        double air = Bed.clamped(x[at.air]);
        bed.at(x[at.water], x[at.volatiles], x[at.carbon], tg, x[at.air]);
        gasFlow = air + bed.rv + bed.rc + bed.rw + BREATH;
        lying = Bed.clamped(x[at.volatiles]) + Bed.clamped(x[at.carbon]);
        glow = lying / (lying + HALF_BED);
        enthalpyGas = gas.enthalpy(tg);
        enthalpyRoom = gas.enthalpy(x[at.room]);
        stack.at(tg, gasFlow, x[at.body], x[at.room], x[at.contents], x, at.chimney);
        meanGas = 0;
        double lightness = 0;
        for (double mean : stack.mean) {
            meanGas += mean;
            lightness += 1 / mean;
        }
        meanGas /= stack.pieces;
        draft = size.draftFactor * (1 / x[at.outdoors] - lightness / stack.pieces);
        draftPlus = 0.5 * (draft + Math.sqrt(draft * draft + DRAFT_BLUR * DRAFT_BLUR));
        opening = inlet.opening(x[at.body]);
        resistance = size.inletResistance / (opening * opening) + size.flueResistance * meanGas;
        pull = Math.sqrt(draftPlus / resistance);
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
        p[at.water] += burn.moisture() * caught - bed.rw;
        p[at.volatiles] += burn.volatileShare() * caught - bed.rv;
        p[at.carbon] += burn.charShare() * caught - bed.rc;

        double smoke = bed.smokeShare * bed.release;
        double balance = bed.release - smoke - bed.rw * Burn.LATENT - gasFlow * (enthalpyGas - enthalpyRoom);
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
        double before = gas.enthalpy(stack.collar);
        p[at.body] += gasFlow * (enthalpyGas - before);
        double after = gas.enthalpy(stack.afterConnector);
        double connector = gasFlow * (before - after);
        double across = stack.across * (x[at.contents] - x[at.room]);
        p[at.room] += Stack.TO_AIR * connector + across;
        p[at.contents] += (1 - Stack.TO_AIR) * connector - across;
        before = after;
        for (int i = 0; i < stack.pieces; i++) {
            after = gas.enthalpy(stack.leaves[i]);
            p[at.chimney[i]] += gasFlow * (before - after);
            before = after;
        }
        p[at.flueAccount] += gasFlow * (before - enthalpyRoom);
        p[at.smokeAccount] += smoke;
        p[at.releaseMeter] += bed.release;
        p[at.steamFromFuelMeter] += bed.rw;
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
        Slots.scatter(v, slotWater, bed.dRw, -1);
        Slots.scatter(v, slotVolatiles, bed.dRv, -1);
        Slots.scatter(v, slotCarbon, bed.dRc, -1);
        Slots.scatter(v, slotSmoke, bed.dSmoke, 1);
        Slots.scatter(v, slotRelease, bed.dRelease, 1);
        Slots.scatter(v, slotFuelSteam, bed.dRw, 1);
        furnaceSlopes(x, v);
        smokeSlopes(x, v);
        draftSlopes(x, v);
    }

    private void furnaceSlopes(double[] x, double[] v) {
        double tg = x[at.gas];
        double lift = enthalpyGas - enthalpyRoom;
        for (int i = 0; i < first; i++) gasRow[i] = -dFlow[i] * lift;
        java.util.Arrays.fill(gasRow, first, k, 0);
        for (int i = 0; i < Bed.COLUMNS; i++) gasRow[i] += bed.dRelease[i] - bed.dSmoke[i] - bed.dRw[i] * Burn.LATENT;
        gasRow[G] -= gasFlow * gas.heat(tg);
        gasRow[R] += gasFlow * gas.heat(x[at.room]);
        double dGlow = HALF_BED / ((lying + HALF_BED) * (lying + HALF_BED));
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
            gasRow[first + i] -= dT;
            gasRow[V] -= dV;
            gasRow[C] -= dC;
            Slots.add(v, slotSurface[i], dV, dC, dG, dT);
            if (s.meter >= 0) Slots.add(v, slotMeter[i], dV, dC, dG, dT);
        }
        Slots.scatter(v, slotGas, gasRow, 1);
    }

    /** What body, room, chimney and the open air take of the gas. */
    private void smokeSlopes(double[] x, double[] v) {
        double before = gas.enthalpy(stack.collar);
        double cBefore = gas.heat(stack.collar);
        for (int i = 0; i < first; i++) row[i] = dFlow[i] * (enthalpyGas - before) - gasFlow * cBefore * dCollar[i];
        row[G] += gasFlow * gas.heat(x[at.gas]);
        Slots.scatter(v, slotBody, row, 1);

        double after = gas.enthalpy(stack.afterConnector);
        double cAfter = gas.heat(stack.afterConnector);
        for (int i = 0; i < first; i++) {
            row[i] = dFlow[i] * (before - after) + gasFlow * (cBefore * dCollar[i] - cAfter * dAfter[i]);
        }
        double warmer = stack.acrossFlow * (x[at.contents] - x[at.room]);
        for (int i = 0; i < first; i++) gasRow[i] = Stack.TO_AIR * row[i] + warmer * dFlow[i];
        gasRow[K] += stack.across;
        gasRow[R] -= stack.across;
        Slots.scatter(v, slotRoom, gasRow, 1);
        for (int i = 0; i < first; i++) gasRow[i] = row[i] - gasRow[i];
        Slots.scatter(v, slotContents, gasRow, 1);

        double[] dBefore = dAfter;
        for (int j = 0; j < stack.pieces; j++) {
            before = after;
            cBefore = cAfter;
            after = gas.enthalpy(stack.leaves[j]);
            cAfter = gas.heat(stack.leaves[j]);
            for (int i = 0; i < first; i++) {
                row[i] = dFlow[i] * (before - after) + gasFlow * (cBefore * dBefore[i] - cAfter * dLeaves[j][i]);
            }
            Slots.scatter(v, slotChimney[j], row, 1);
            dBefore = dLeaves[j];
        }
        for (int i = 0; i < first; i++) row[i] = dFlow[i] * (after - enthalpyRoom) + gasFlow * cAfter * dBefore[i];
        row[R] -= gasFlow * gas.heat(x[at.room]);
        Slots.scatter(v, slotFlue, row, 1);
    }

    private void draftSlopes(double[] x, double[] v) {
        double dPlus = 0.5 * (1 + draft / Math.sqrt(draft * draft + DRAFT_BLUR * DRAFT_BLUR));
        double logDraft = 0.5 * pull / draftPlus * dPlus * size.draftFactor;
        double logResistance = 0.5 * pull / resistance;
        for (int i = 0; i < first; i++) {
            row[i] = logDraft * dDraft[i] - logResistance * size.flueResistance * dMean[i];
        }
        double out = x[at.outdoors];
        row[O] -= logDraft / (out * out);
        row[B] += logResistance * 2 * size.inletResistance / (opening * opening * opening) * inlet.slope(x[at.body]);
        row[A] -= 1;
        Slots.scatter(v, slotAir, row, 1 / RENEWAL);
    }

    private void gradients(double[] x) {
        bed.slopes(x[at.water], x[at.volatiles], x[at.carbon], x[at.gas], x[at.air]);
        for (int i = 0; i < Bed.COLUMNS; i++) dFlow[i] = bed.dRv[i] + bed.dRc[i] + bed.dRw[i];
        dFlow[A] += x[at.air] > 0 ? 1 : 0;
        stack.slopes(x[at.gas], gasFlow, x[at.body], x[at.room], x[at.contents], x, at.chimney);
        spread(stack.dCollar, dCollar);
        spread(stack.dAfter, dAfter);
        java.util.Arrays.fill(dMean, 0);
        java.util.Arrays.fill(dDraft, 0);
        for (int j = 0; j < stack.pieces; j++) {
            spread(stack.dLeaves[j], dLeaves[j]);
            spread(stack.dMean[j], row);
            double perMean = 1 / (stack.mean[j] * stack.mean[j]);
            for (int i = 0; i < first; i++) {
                dMean[i] += row[i] / stack.pieces;
                dDraft[i] += row[i] * perMean / stack.pieces;
            }
        }
    }

    /** Lays a gradient of the stack out on the fire's own columns. */
    private void spread(double[] from, double[] to) {
        double perFlow = from[Stack.FLOW];
        for (int i = 0; i < first; i++) to[i] = perFlow * dFlow[i];
        to[G] += from[Stack.GAS];
        to[B] += from[Stack.BODY];
        to[R] += from[Stack.AIR];
        to[K] += from[Stack.CONTENTS];
        for (int i = 0; i < stack.pieces; i++) to[H + i] += from[Stack.CHIMNEY + i];
    }
}
