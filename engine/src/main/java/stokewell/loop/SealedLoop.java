package stokewell.loop;

import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.matter.Curve;
import stokewell.matter.Water;

/**
 * The pressure of a closed loop: its water grows with its own temperatures into the vessel, whose gas keeps its temperature;
 * steam that forms before the relief valve opens stands in the loop and pushes more water there; what the valve lets out is
 * gone. The boiling point follows the pressure at every moment.
 *
 * <pre>p = p0 V / (V − taken − Σ Vi (ρcold/ρ(Ti) − 1) + let out/ρ − steam/ρsteam(p))</pre>
 *
 * <p>The valve opens at its pressure, lifts in proportion up to a tenth over it, and shuts a fifth under it (EN 12828 and TRD
 * 721 practice, from memory). While steam stands in the loop it passes steam by Napier's rule, else water by the same
 * nozzle. A vessel that is nearly full of water keeps a twentieth of its gas: what it tells then is only that it bursts.
 */
public final class SealedLoop implements Part {

    /** Overpressure at full lift and under-pressure at which the valve shuts, shares of its opening pressure. */
    public static final double ACCUMULATION = 0.1;

    public static final double BLOWDOWN = 0.2;

    /** Discharge of a small relief valve with its derating: common practice. */
    public static final double DISCHARGE = 0.6;

    private static final double LEAST_GAS = 0.05;
    /** Steam that water a kelvin under boiling takes back in a second, share: common practice, no source. */
    private static final double COLLAPSE = 0.2;
    /** Steam in the loop above which the valve passes steam rather than water, kg. */
    private static final double STEAMY = 2e-3;

    private static final double LOWEST = Math.log(2e4);
    private static final double HIGHEST = Math.log(4e6);

    /**
     * Columns and rows.
     *
     * @param pressure algebraic, Pa absolute
     * @param steam    that stands in the loop, kg
     * @param letOut   by the valve since the loop was filled, kg
     * @param outlet   water by the valve: the last pickup's
     * @param header   water that is left to fill the pickups, kg
     * @param wet      share of each pickup that holds water
     * @param room     temperature of the water that comes back from the vessel
     */
    public record Places(
            int pressure,
            int steam,
            int letOut,
            int outlet,
            int header,
            int[] wet,
            int room,
            int[] waters,
            int steamAccount,
            int reliefAccount,
            int steamMeter) {}

    /**
     * The vessel and its water.
     *
     * @param vessel    whole volume, m3
     * @param precharge Pa absolute
     * @param taken     water in it, filled and cold, m3
     * @param volumes   of water at each of {@link Places#waters}, m3
     * @param density   of the fluid, kg/m3, against K
     * @param cold      density when it was filled, kg/m3
     * @param air       pressure outside, Pa
     * @param full      water that fills each pickup, kg
     */
    public record Sizes(
            double vessel,
            double precharge,
            double taken,
            double[] volumes,
            Curve density,
            double cold,
            double air,
            double specificHeat,
            double[] full) {}

    /**
     * The relief valve. @param opens Pa over the air's; infinite where there is none @param nozzle area times discharge, m2
     * @param latent heat at its pressure, J/kg
     */
    public record Valve(double opens, double nozzle, double latent) {}

    private final Places at;
    private final Sizes size;
    private final Valve valve;
    private final Curve saturation;
    private final Curve steamDensity;
    private final int[] waterSlots;
    private final int pSlot;
    private final int pSteam;
    private final int pOut;
    private final int[] steamSlots;
    private final int[] outSlots;
    private final int[] outletSlots;
    private final int[] steamAccountSlots;
    private final int[] reliefAccountSlots;
    private final int[] meterSlots;
    private final int[] headerSlots;
    private final int[][] wetSlots;
    private boolean open;

    public SealedLoop(Wiring wiring, Places at, Sizes size, Valve valve) {
        this.at = at;
        this.size = size;
        this.valve = valve;
        saturation = Curve.of(u -> Water.saturationTemperature(Math.exp(u)), LOWEST, HIGHEST, 160);
        steamDensity =
                Curve.of(u -> Water.steamDensity(Water.saturationTemperature(Math.exp(u))), LOWEST, HIGHEST, 160);
        waterSlots = wiring.slots(at.pressure, at.waters);
        pSlot = wiring.slot(at.pressure, at.pressure);
        pSteam = wiring.slot(at.pressure, at.steam);
        pOut = wiring.slot(at.pressure, at.letOut);
        steamSlots = wiring.slots(at.steam, at.pressure, at.steam, at.outlet);
        outSlots = wiring.slots(at.letOut, at.pressure, at.steam);
        outletSlots = wiring.slots(at.outlet, at.pressure, at.steam, at.outlet, at.room);
        steamAccountSlots = wiring.slots(at.steamAccount, at.pressure, at.steam, at.outlet);
        reliefAccountSlots = wiring.slots(at.reliefAccount, at.pressure, at.steam, at.outlet, at.room);
        meterSlots = wiring.slots(at.steamMeter, at.pressure, at.steam);
        headerSlots = wiring.slots(at.header, at.pressure, at.steam, at.header);
        wetSlots = new int[at.wet.length][];
        for (int i = 0; i < wetSlots.length; i++) {
            wetSlots[i] = wiring.slots(at.wet[i], at.pressure, at.steam, at.header);
        }
    }

    /** The column of the pressure, Pa absolute. */
    public int pressure() {
        return at.pressure;
    }

    /** The column of the steam that stands in the loop, kg. */
    public int steam() {
        return at.steam;
    }

    /** The column of what the valve has let out, kg. */
    public int letOut() {
        return at.letOut;
    }

    /** Pressure over the air's at x, Pa. */
    public double gauge(double[] x) {
        return x[at.pressure] - size.air;
    }

    /**
     * What would have to be let out, or filled in where it is below zero, for the loop to stand at a pressure at x with no
     * steam in it, kg.
     *
     * @param gauge Pa over the air's
     */
    public double letOutFor(double[] x, double gauge) {
        double gas = size.precharge * size.vessel / (size.air + gauge) - (size.vessel - size.taken);
        for (int i = 0; i < at.waters.length; i++) {
            gas += size.volumes[i] * (size.cold / size.density.at(x[at.waters[i]]) - 1);
        }
        return gas * size.cold;
    }

    /** Boiling point at x, K. */
    public double saturation(double[] x) {
        return saturation.at(place(x[at.pressure]));
    }

    /** Its derivative by the pressure, K/Pa. */
    double saturationSlope(double[] x) {
        double p = x[at.pressure];
        double u = Math.log(p);
        return u <= LOWEST || u >= HIGHEST ? 0 : saturation.slope(u) / p;
    }

    private static double place(double p) {
        return Math.max(LOWEST, Math.min(HIGHEST, Math.log(Math.max(1, p))));
    }

    /** Opens or shuts the relief valve. */
    public void open(boolean on) {
        open = on;
    }

    /** Pressure that the gas comes to with this water and steam, Pa absolute. */
    private double standing(double[] x, double p) {
        return size.precharge * size.vessel / floored(gas(x, p));
    }

    private double gas(double[] x, double p) {
        double gas = size.vessel - size.taken + x[at.letOut] / size.cold;
        for (int i = 0; i < at.waters.length; i++) {
            gas -= size.volumes[i] * (size.cold / size.density.at(x[at.waters[i]]) - 1);
        }
        return gas - Math.max(0, x[at.steam]) / steamDensity.at(place(p));
    }

    private double floored(double gas) {
        double least = LEAST_GAS * size.vessel;
        return gas >= 2 * least ? gas : least + least * Math.exp((gas - 2 * least) / least);
    }

    private double flooredSlope(double gas) {
        double least = LEAST_GAS * size.vessel;
        return gas >= 2 * least ? 1 : Math.exp((gas - 2 * least) / least);
    }

    private double lift(double p) {
        if (!open) return 0;
        double shut = size.air + valve.opens * (1 - BLOWDOWN);
        double full = size.air + valve.opens * (1 + ACCUMULATION);
        double u = (p - shut) / (full - shut);
        return u <= 0 ? 0 : u >= 1 ? 1 : u;
    }

    /** Steam that leaves by the valve, kg/s. */
    double steamOut(double p, double steam) {
        if (steam <= 0) return 0;
        return lift(p) * steam / (steam + STEAMY) * Relief.napier(1, valve.nozzle, p);
    }

    /** Water that leaves by the valve, kg/s. */
    double waterOut(double p, double steam) {
        double over = p - size.air;
        if (over <= 0) return 0;
        double share = steam <= 0 ? 1 : STEAMY / (steam + STEAMY);
        return lift(p) * share * valve.nozzle * Math.sqrt(2 * size.cold * over);
    }

    /** Steam that colder water takes back, kg/s. */
    private double collapse(double[] x) {
        return COLLAPSE * Math.max(0, x[at.steam]) * Steam.ramp(saturation(x) - x[at.outlet]);
    }

    @Override
    public void flows(double[] x, double[] f) {
        double p = x[at.pressure];
        double steam = x[at.steam];
        f[at.pressure] += standing(x, p) - p;
        double collapsed = collapse(x);
        double gone = steamOut(p, steam);
        double water = waterOut(p, steam);
        f[at.steam] -= collapsed + gone;
        f[at.outlet] += valve.latent * collapsed;
        f[at.steamAccount] -= valve.latent * collapsed;
        f[at.letOut] += gone + water;
        f[at.steamMeter] += gone;
        double heat = water * size.specificHeat * (x[at.outlet] - x[at.room]);
        f[at.outlet] -= heat;
        f[at.reliefAccount] += heat;
        double made = made(x[at.header]);
        f[at.header] -= made * gone;
        for (int i = 0; i < at.wet.length; i++) {
            f[at.wet[i]] -= (1 - made) * gone / size.full[i] / at.wet.length;
        }
    }

    private static double made(double header) {
        return header > 0 ? header / (header + 0.1) : 0;
    }

    private static double madeSlope(double header) {
        return header > 0 ? 0.1 / ((header + 0.1) * (header + 0.1)) : 0;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double p = x[at.pressure];
        double steam = x[at.steam];
        double gas = gas(x, p);
        double kept = floored(gas);
        double perGas = -size.precharge * size.vessel / (kept * kept) * flooredSlope(gas);
        for (int i = 0; i < at.waters.length; i++) {
            double density = size.density.at(x[at.waters[i]]);
            double slope = size.density.slope(x[at.waters[i]]);
            v[waterSlots[i]] += perGas * size.volumes[i] * size.cold * slope / (density * density);
        }
        double u = Math.log(p);
        double vapour = steamDensity.at(place(p));
        double vapourSlope = u <= LOWEST || u >= HIGHEST ? 0 : steamDensity.slope(u) / p;
        v[pSlot] += perGas * Math.max(0, steam) * vapourSlope / (vapour * vapour) - 1;
        v[pSteam] += steam > 0 ? -perGas / vapour : 0;
        v[pOut] += perGas / size.cold;

        double under = saturation(x) - x[at.outlet];
        double held = Math.max(0, steam);
        double byUnder = COLLAPSE * held * Steam.rampSlope(under);
        double bySteam = steam > 0 ? COLLAPSE * Steam.ramp(under) : 0;
        double byPressure = byUnder * saturationSlope(x);
        double dp = 1e-5 * p;
        double ds = 1e-7;
        double goneP = (steamOut(p + dp, steam) - steamOut(p - dp, steam)) / (2 * dp);
        double goneS = (steamOut(p, steam + ds) - steamOut(p, steam)) / ds;
        double waterP = (waterOut(p + dp, steam) - waterOut(p - dp, steam)) / (2 * dp);
        double waterS = (waterOut(p, steam + ds) - waterOut(p, steam)) / ds;
        double water = waterOut(p, steam);
        double warm = size.specificHeat * (x[at.outlet] - x[at.room]);
        v[steamSlots[0]] -= byPressure + goneP;
        v[steamSlots[1]] -= bySteam + goneS;
        v[steamSlots[2]] += byUnder;
        v[outSlots[0]] += goneP + waterP;
        v[outSlots[1]] += goneS + waterS;
        double l = valve.latent;
        v[outletSlots[0]] += l * byPressure - warm * waterP;
        v[outletSlots[1]] += l * bySteam - warm * waterS;
        v[outletSlots[2]] += -l * byUnder - water * size.specificHeat;
        v[outletSlots[3]] += water * size.specificHeat;
        v[steamAccountSlots[0]] -= l * byPressure;
        v[steamAccountSlots[1]] -= l * bySteam;
        v[steamAccountSlots[2]] += l * byUnder;
        v[reliefAccountSlots[0]] += warm * waterP;
        v[reliefAccountSlots[1]] += warm * waterS;
        v[reliefAccountSlots[2]] += water * size.specificHeat;
        v[reliefAccountSlots[3]] -= water * size.specificHeat;
        v[meterSlots[0]] += goneP;
        v[meterSlots[1]] += goneS;
        double made = made(x[at.header]);
        double gone = steamOut(p, steam);
        double byHeader = madeSlope(x[at.header]) * gone;
        v[headerSlots[0]] -= made * goneP;
        v[headerSlots[1]] -= made * goneS;
        v[headerSlots[2]] -= byHeader;
        for (int i = 0; i < at.wet.length; i++) {
            double each = 1 / size.full[i] / at.wet.length;
            v[wetSlots[i][0]] -= (1 - made) * goneP * each;
            v[wetSlots[i][1]] -= (1 - made) * goneS * each;
            v[wetSlots[i][2]] += byHeader * each;
        }
    }
}
