package stokewell.fire;

import static stokewell.fire.FireRows.A;
import static stokewell.fire.FireRows.B;
import static stokewell.fire.FireRows.C;
import static stokewell.fire.FireRows.G;
import static stokewell.fire.FireRows.H;
import static stokewell.fire.FireRows.K;
import static stokewell.fire.FireRows.O;
import static stokewell.fire.FireRows.R;
import static stokewell.fire.FireRows.V;

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
 *   <li>water leaves with the wood that burns, which must dry rows.first, and from all the bed as the gas is hot enough to dry it;
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

    /** In which the gas in a flue is renewed, s: 0.1 m3 at 0.01 kg/s and 0.6 kg/m3 is 6 s. Common practice, no source. */
    private static final double RENEWAL = 6;
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
    private final Burn burn;
    private final Gas gas;
    private final Bed bed;
    private final Stack stack;
    private final Furnace furnace;
    private final Inlet inlet;
    private final Pull pull;

    private final FireRows rows;

    // values at x, filled by evaluate()
    private double gasFlow;
    private double enthalpyGas;
    private double enthalpyRoom;

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
        this.burn = burn;
        this.gas = gas;
        // air that a 12 Pa draft pulls through the wide-open inlet: the scale of "full air"
        bed = new Bed(burn, Math.sqrt(12 / size.inletResistance));
        int pieces = at.chimney.length;
        inlet = new Inlet(size.inletLeak);
        pull = new Pull(size, inlet);
        stack = new Stack(gas, size.passArea, size.connectorArea, size.chimneyArea, pieces);
        furnace = new Furnace(surfaces);
        rows = new FireRows(wiring, at, surfaces);
        int k = rows.columns;
        dFlow = new double[k];
        dCollar = new double[k];
        dAfter = new double[k];
        dLeaves = new double[pieces][k];
        dMean = new double[k];
        dDraft = new double[k];
        row = new double[k];
        gasRow = new double[k];
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
        furnace.at(x[at.volatiles], x[at.carbon]);
        double sum = 0;
        for (Surface s : furnace.surfaces) if (s.node == node) sum += furnace.heat(s, x[at.gas], x[node]);
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
        return pull.draft;
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
        furnace.at(x[at.volatiles], x[at.carbon]);
        enthalpyGas = gas.enthalpy(tg);
        enthalpyRoom = gas.enthalpy(x[at.room]);
        stack.at(tg, gasFlow, x[at.body], x[at.room], x[at.contents], x, at.chimney);
        pull.at(stack, x[at.outdoors], x[at.body]);
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
        for (Surface s : furnace.surfaces) {
            double q = furnace.heat(s, tg, x[s.node]);
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
        p[at.air] += (pull.flow - x[at.air]) / RENEWAL;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        evaluate(x);
        gradients(x);

        double caught = 1 / burn.catchTime();
        v[rows.rawRaw] -= caught;
        v[rows.waterRaw] += burn.moisture() * caught;
        v[rows.volatilesRaw] += burn.volatileShare() * caught;
        v[rows.carbonRaw] += burn.charShare() * caught;
        Slots.scatter(v, rows.water, bed.dRw, -1);
        Slots.scatter(v, rows.volatiles, bed.dRv, -1);
        Slots.scatter(v, rows.carbon, bed.dRc, -1);
        Slots.scatter(v, rows.smoke, bed.dSmoke, 1);
        Slots.scatter(v, rows.release, bed.dRelease, 1);
        Slots.scatter(v, rows.fuelSteam, bed.dRw, 1);
        furnaceSlopes(x, v);
        smokeSlopes(x, v);
        draftSlopes(x, v);
    }

    private void furnaceSlopes(double[] x, double[] v) {
        double tg = x[at.gas];
        double lift = enthalpyGas - enthalpyRoom;
        for (int i = 0; i < rows.first; i++) gasRow[i] = -dFlow[i] * lift;
        java.util.Arrays.fill(gasRow, rows.first, rows.columns, 0);
        for (int i = 0; i < Bed.COLUMNS; i++) gasRow[i] += bed.dRelease[i] - bed.dSmoke[i] - bed.dRw[i] * Burn.LATENT;
        gasRow[G] -= gasFlow * gas.heat(tg);
        gasRow[R] += gasFlow * gas.heat(x[at.room]);
        for (int i = 0; i < furnace.surfaces.length; i++) {
            Surface s = furnace.surfaces[i];
            furnace.slopes(s, tg, x[s.node]);
            gasRow[G] -= furnace.dGas;
            gasRow[rows.first + i] -= furnace.dSurface;
            gasRow[V] -= furnace.dVolatiles;
            gasRow[C] -= furnace.dChar;
            furnace.add(v, rows.surface[i]);
            if (s.meter >= 0) furnace.add(v, rows.meter[i]);
        }
        Slots.scatter(v, rows.gas, gasRow, 1);
    }

    /** What body, room, chimney and the open air take of the gas. */
    private void smokeSlopes(double[] x, double[] v) {
        double before = gas.enthalpy(stack.collar);
        double cBefore = gas.heat(stack.collar);
        for (int i = 0; i < rows.first; i++)
            row[i] = dFlow[i] * (enthalpyGas - before) - gasFlow * cBefore * dCollar[i];
        row[G] += gasFlow * gas.heat(x[at.gas]);
        Slots.scatter(v, rows.body, row, 1);

        double after = gas.enthalpy(stack.afterConnector);
        double cAfter = gas.heat(stack.afterConnector);
        for (int i = 0; i < rows.first; i++) {
            row[i] = dFlow[i] * (before - after) + gasFlow * (cBefore * dCollar[i] - cAfter * dAfter[i]);
        }
        double warmer = stack.acrossFlow * (x[at.contents] - x[at.room]);
        for (int i = 0; i < rows.first; i++) gasRow[i] = Stack.TO_AIR * row[i] + warmer * dFlow[i];
        gasRow[K] += stack.across;
        gasRow[R] -= stack.across;
        Slots.scatter(v, rows.room, gasRow, 1);
        for (int i = 0; i < rows.first; i++) gasRow[i] = row[i] - gasRow[i];
        Slots.scatter(v, rows.contents, gasRow, 1);

        double[] dBefore = dAfter;
        for (int j = 0; j < stack.pieces; j++) {
            before = after;
            cBefore = cAfter;
            after = gas.enthalpy(stack.leaves[j]);
            cAfter = gas.heat(stack.leaves[j]);
            for (int i = 0; i < rows.first; i++) {
                row[i] = dFlow[i] * (before - after) + gasFlow * (cBefore * dBefore[i] - cAfter * dLeaves[j][i]);
            }
            Slots.scatter(v, rows.chimney[j], row, 1);
            dBefore = dLeaves[j];
        }
        for (int i = 0; i < rows.first; i++) row[i] = dFlow[i] * (after - enthalpyRoom) + gasFlow * cAfter * dBefore[i];
        row[R] -= gasFlow * gas.heat(x[at.room]);
        Slots.scatter(v, rows.flue, row, 1);
    }

    private void draftSlopes(double[] x, double[] v) {
        pull.slopes(x[at.outdoors], x[at.body]);
        for (int i = 0; i < rows.first; i++) row[i] = pull.byLightness * dDraft[i] + pull.byMean * dMean[i];
        row[O] += pull.byOutdoors;
        row[B] += pull.byBody;
        row[A] -= 1;
        Slots.scatter(v, rows.air, row, 1 / RENEWAL);
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
            for (int i = 0; i < rows.first; i++) {
                dMean[i] += row[i] / stack.pieces;
                dDraft[i] += row[i] * perMean / stack.pieces;
            }
        }
    }

    /** Lays a gradient of the stack out on the fire's own columns. */
    private void spread(double[] from, double[] to) {
        double perFlow = from[Stack.FLOW];
        for (int i = 0; i < rows.first; i++) to[i] = perFlow * dFlow[i];
        to[G] += from[Stack.GAS];
        to[B] += from[Stack.BODY];
        to[R] += from[Stack.AIR];
        to[K] += from[Stack.CONTENTS];
        for (int i = 0; i < stack.pieces; i++) to[H + i] += from[Stack.CHIMNEY + i];
    }
}
