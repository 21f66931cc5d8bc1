package stokewell.loop;

import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.matter.Curve;

/**
 * The water side of one pickup: metal wall to water by natural or forced convection and by boiling at the wall, and steam
 * once the water itself reaches saturation at its pressure.
 *
 * <p>Steam rises into the next water above. What is colder there collapses it (its heat stays in the loop); the rest leaves
 * by the vent and takes water with it, which the header makes up until it is empty; then the pickup runs dry and its metal
 * loses touch with the water. Water and vapour swap places between the pickup and the riser also with the loop at rest.
 *
 * <p>Wall boiling: Rohsenow (1952) with C_sf 0.013 at one atmosphere, q = 130 ΔT³ W/m², up to the critical flux. Collapse share against
 * subcooling and the counterflow exchange: common practice, no source.
 */
public final class PickupWater implements Part {

    private static final double ROHSENOW = 130;
    /** Greatest boiling flux, W/m2: Zuber at one atmosphere, 1.11e6. */
    private static final double CRITICAL = 1.1e6;
    /** Wet share at which half of the steam still finds water to come from. */
    private static final double LAST = 0.02;

    /**
     * Numbers of columns and rows.
     *
     * @param wall        metal node
     * @param water       water node
     * @param wet         share of the pickup that holds water
     * @param header      water left in the header, kg
     * @param flow        the loop's mass flow
     * @param above       the next water cell that steam reaches
     * @param room        temperature of make-up water
     */
    public record Places(
            int wall,
            int water,
            int wet,
            int header,
            int flow,
            int above,
            int room,
            int steamAccount,
            int waterMeter,
            int steamMeter) {}

    /**
     * @param area       wetted area, m2
     * @param still      heat transfer at rest, W/(m2 K)
     * @param forced     forced part against mass flow, W/(m2 K)
     * @param saturation at the local pressure, K
     * @param latent     latent heat there, J/kg
     * @param full       water that fills the pickup, kg
     * @param venting    W per kelvin over saturation
     * @param exchange   counterflow between pickup and riser when the pickup is hotter, W/K
     */
    public record Sizes(
            double area,
            double still,
            Curve forced,
            double saturation,
            double latent,
            double full,
            double venting,
            double exchange,
            double specificHeat) {}

    private final Places at;
    private final Sizes size;
    private final int[] wallSlots;
    private final int[] waterSlots;
    private final int[] aboveSlots;
    private final int[] steamSlots;
    private final int[] headerSlots;
    private final int[] wetSlots;
    private final int[] meterSlots;
    private final int[] steamMeterSlots;
    private final SealedLoop sealed;
    private int[] pressureRows = {};
    private int[] pressureSlots = {};
    private int[] standingSlots = {};
    private double raised;

    /** On an open loop, or one whose pressure never moves. */
    public PickupWater(Wiring wiring, Places at, Sizes size) {
        this(wiring, at, size, null);
    }

    /** On a closed loop: where it boils follows the pressure, and steam stands in the loop until its valve opens. */
    public PickupWater(Wiring wiring, Places at, Sizes size, SealedLoop sealed) {
        this.at = at;
        this.size = size;
        this.sealed = sealed;
        if (sealed != null) {
            pressureRows = new int[] {at.wall, at.water, at.above, at.steamAccount, sealed.steam(), at.waterMeter};
            pressureSlots = new int[pressureRows.length];
            for (int i = 0; i < pressureRows.length; i++) {
                pressureSlots[i] = wiring.slot(pressureRows[i], sealed.pressure());
            }
            standingSlots = wiring.slots(sealed.steam(), at.water, at.above, at.wet);
        }
        wallSlots = wiring.slots(at.wall, at.wall, at.water, at.wet, at.flow);
        waterSlots = wiring.slots(at.water, at.wall, at.water, at.wet, at.flow, at.above, at.header, at.room);
        aboveSlots = wiring.slots(at.above, at.water, at.above, at.wet);
        steamSlots = wiring.slots(at.steamAccount, at.water, at.above, at.header, at.room, at.wet);
        headerSlots = wiring.slots(at.header, at.water, at.above, at.header, at.wet);
        wetSlots = wiring.slots(at.wet, at.water, at.above, at.header, at.wet);
        meterSlots = wiring.slots(at.waterMeter, at.wall, at.water, at.wet, at.flow);
        steamMeterSlots = wiring.slots(at.steamMeter, at.water, at.above, at.wet);
    }

    /** Saturation temperature of the water here while nothing moves the pressure, K. */
    public double saturation() {
        return size.saturation;
    }

    /** Saturation temperature of the water here at x, K. */
    public double saturation(double[] x) {
        return sealed == null ? size.saturation + raised : sealed.saturation(x);
    }

    /** Raises the boiling point of an open loop's water, K: steam that its vent does not pass presses on it. */
    public void raise(double kelvin) {
        raised = kelvin;
    }

    /** The row of its water. */
    public int water() {
        return at.water;
    }

    /** The row of its metal. */
    public int wall() {
        return at.wall;
    }

    /** Water it holds when full, kg. */
    public double full() {
        return size.full;
    }

    /** Heat from metal to water at x, W. */
    public double heat(double[] x) {
        return wet(x) * wallHeat(x[at.wall], x[at.water], x[at.flow], saturation(x));
    }

    @Override
    public void flows(double[] x, double[] p) {
        double wall = x[at.wall];
        double water = x[at.water];
        double above = x[at.above];
        double wet = wet(x);
        double boils = saturation(x);
        double q = wet * wallHeat(wall, water, x[at.flow], boils);
        p[at.wall] -= q;
        p[at.water] += q;
        p[at.waterMeter] += q;

        double swap = size.exchange * Steam.ramp(water - above);
        double steam = steaming(wet) * Steam.ramp(water - boils);
        double out = steam * Steam.escape(boils - above);
        double collapsed = steam - out;
        double rate = out / size.latent;
        if (sealed != null) {
            p[at.water] -= swap + steam;
            p[at.above] += swap + collapsed;
            p[at.steamAccount] += out;
            p[sealed.steam()] += rate;
            return;
        }
        double madeUp = rate * made(x[at.header]);
        double warming = madeUp * size.specificHeat * (water - x[at.room]);
        p[at.water] -= swap + steam + warming;
        p[at.above] += swap + collapsed;
        p[at.steamAccount] += out + warming;
        p[at.header] -= madeUp;
        p[at.wet] -= (rate - madeUp) / size.full;
        p[at.steamMeter] += rate;
    }

    /** A step may leave a dry pickup a hair below empty; a negative share would drive heat uphill without end. */
    private double wet(double[] x) {
        return Math.max(0, x[at.wet]);
    }

    private double forced(double flow) {
        return size.forced.at(Math.abs(flow));
    }

    /** Wall to water with the pickup full, W. */
    private double wallHeat(double wall, double water, double flow, double boils) {
        double f = forced(flow);
        double h = Math.sqrt(size.still * size.still + f * f);
        double over = wall - Math.max(boils, water);
        return size.area * (h * (wall - water) + boiling(over));
    }

    /** Flux of boiling, W/m2, bent over where vapour would blanket the metal. */
    private static double boiling(double over) {
        if (over <= 0) return 0;
        double q = ROHSENOW * over * over * over / CRITICAL;
        return CRITICAL * q / Math.sqrt(1 + q * q);
    }

    private static double boilingSlope(double over) {
        if (over <= 0) return 0;
        double q = ROHSENOW * over * over * over / CRITICAL;
        double r = 1 + q * q;
        return 3 * ROHSENOW * over * over / (r * Math.sqrt(r));
    }

    /** Steam made for each kelvin over saturation, W/K: none from a dry pickup. */
    private double steaming(double wet) {
        return size.venting * (1 + LAST) * wet / (wet + LAST);
    }

    /** Share of lost water that the header still makes up. */
    private static double made(double header) {
        return header > 0 ? header / (header + 0.1) : 0;
    }

    private static double madeSlope(double header) {
        return header > 0 ? 0.1 / ((header + 0.1) * (header + 0.1)) : 0;
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double wall = x[at.wall];
        double water = x[at.water];
        double above = x[at.above];
        double wet = wet(x);
        double on = x[at.wet] > 0 ? 1 : 0;
        double flow = x[at.flow];
        double f = forced(flow);
        double h = Math.sqrt(size.still * size.still + f * f);
        double boils = saturation(x);
        double over = wall - Math.max(boils, water);
        double dBoiling = boilingSlope(over);
        double dWall = wet * size.area * (h + dBoiling);
        double dWater = -wet * size.area * (h + (water > boils ? dBoiling : 0));
        double dWet = on * wallHeat(wall, water, flow, boils);
        double dFlow = wet * size.area * (wall - water) * f / h * size.forced.slope(Math.abs(flow)) * Math.signum(flow);
        add(v, wallSlots, -1, dWall, dWater, dWet, dFlow);
        add(v, meterSlots, 1, dWall, dWater, dWet, dFlow);
        v[waterSlots[0]] += dWall;
        v[waterSlots[1]] += dWater;
        v[waterSlots[2]] += dWet;
        v[waterSlots[3]] += dFlow;

        double swapSlope = size.exchange * Steam.rampSlope(water - above);
        double rise = Steam.ramp(water - boils);
        double steam = steaming(wet) * rise;
        double steamWater = steaming(wet) * Steam.rampSlope(water - boils);
        double steamWet = on * size.venting * (1 + LAST) * LAST / ((wet + LAST) * (wet + LAST)) * rise;
        double gone = Steam.escape(boils - above);
        double outWater = steamWater * gone;
        double outAbove = -steam * Steam.escapeSlope(boils - above);
        double outWet = steamWet * gone;
        if (sealed != null) {
            double wallBoils = water > boils ? 0 : dBoiling * wet * size.area;
            sealedSlopes(v, swapSlope, steamWater, steamWet, outWater, outAbove, outWet, wallBoils, x);
            return;
        }
        double share = made(x[at.header]);
        double out = steam * gone;
        double lift = size.specificHeat * (water - x[at.room]) / size.latent;
        double warmWater = outWater * share * lift + out * share * size.specificHeat / size.latent;
        double warmAbove = outAbove * share * lift;
        double warmWet = outWet * share * lift;
        double warmHeader = out * madeSlope(x[at.header]) * lift;
        double warmRoom = -out * share * size.specificHeat / size.latent;

        v[waterSlots[1]] -= swapSlope + steamWater + warmWater;
        v[waterSlots[2]] -= steamWet + warmWet;
        v[waterSlots[4]] += swapSlope - warmAbove;
        v[waterSlots[5]] -= warmHeader;
        v[waterSlots[6]] -= warmRoom;
        v[aboveSlots[0]] += swapSlope + steamWater - outWater;
        v[aboveSlots[1]] += -swapSlope - outAbove;
        v[aboveSlots[2]] += steamWet - outWet;
        v[steamSlots[0]] += outWater + warmWater;
        v[steamSlots[1]] += outAbove + warmAbove;
        v[steamSlots[2]] += warmHeader;
        v[steamSlots[3]] += warmRoom;
        v[steamSlots[4]] += outWet + warmWet;
        double per = 1 / size.latent;
        double madeHeader = out * per * madeSlope(x[at.header]);
        v[headerSlots[0]] -= outWater * per * share;
        v[headerSlots[1]] -= outAbove * per * share;
        v[headerSlots[2]] -= madeHeader;
        v[headerSlots[3]] -= outWet * per * share;
        double left = (1 - share) * per / size.full;
        v[wetSlots[0]] -= outWater * left;
        v[wetSlots[1]] -= outAbove * left;
        v[wetSlots[2]] += madeHeader / size.full;
        v[wetSlots[3]] -= outWet * left;
        v[steamMeterSlots[0]] += outWater * per;
        v[steamMeterSlots[1]] += outAbove * per;
        v[steamMeterSlots[2]] += outWet * per;
    }

    /** Steam of a closed loop: it stands there, and the pressure moves where it forms. */
    private void sealedSlopes(
            double[] v,
            double swapSlope,
            double steamWater,
            double steamWet,
            double outWater,
            double outAbove,
            double outWet,
            double wallBoils,
            double[] x) {
        v[waterSlots[1]] -= swapSlope + steamWater;
        v[waterSlots[2]] -= steamWet;
        v[waterSlots[4]] += swapSlope;
        v[aboveSlots[0]] += swapSlope + steamWater - outWater;
        v[aboveSlots[1]] += -swapSlope - outAbove;
        v[aboveSlots[2]] += steamWet - outWet;
        v[steamSlots[0]] += outWater;
        v[steamSlots[1]] += outAbove;
        v[steamSlots[4]] += outWet;
        v[standingSlots[0]] += outWater / size.latent;
        v[standingSlots[1]] += outAbove / size.latent;
        v[standingSlots[2]] += outWet / size.latent;
        // by the boiling point, then by the pressure: a higher one acts as colder water, metal and water above
        double by = sealed.saturationSlope(x);
        double out = -(outWater + outAbove);
        v[pressureSlots[0]] += by * wallBoils;
        v[pressureSlots[1]] += by * (steamWater - wallBoils);
        v[pressureSlots[2]] += by * (-steamWater - out);
        v[pressureSlots[3]] += by * out;
        v[pressureSlots[4]] += by * out / size.latent;
        v[pressureSlots[5]] -= by * wallBoils;
    }

    private static void add(double[] v, int[] slots, double sign, double a, double b, double c, double d) {
        v[slots[0]] += sign * a;
        v[slots[1]] += sign * b;
        v[slots[2]] += sign * c;
        v[slots[3]] += sign * d;
    }
}
