package stokewell.loop;

import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.matter.Curve;

/**
 * Water going round: a chain of cells from a draw port of the store to its inlet port (or closed on itself where a coil
 * keeps it apart), moved by a pump, by its own buoyancy, or both, against friction.
 *
 * <p>Each cell passes its heat to the next by upwind flow, which is also the transport delay. The mass flow solves
 *
 * <pre>0 = Δp_pump(m) − g ∮ρ(T) dz + steam lift − R(m, T) − check valve(m)</pre>
 *
 * at every moment; it may be negative where nothing stops it. Both flow directions are blurred over a tiny flow so that
 * slopes stay continuous through standstill.
 *
 * <p>With a {@link Mixing} valve only a share of the flow goes through the store and the pipes; the rest goes round the device. The
 * pressure loss is reckoned as if all of it went through the pipes.
 */
public final class Circuit implements Part {

    private static final double G = 9.80665;
    /** Flow over which the two directions are blurred, kg/s. */
    private static final double BLUR = 2e-5;
    /** Temperatures are taken over this, K, to spare digits. */
    private static final double BASE = 330;
    /** Resistance of a shut check valve, Pa per kg/s: what weeps through it at 100 Pa carries 0.2 W/K. */
    private static final double SHUT = 2e6;

    /** Keeps the slope of the axis of the resistance finite at standstill, kg/s. */
    private static final double TRICKLE = 1e-5;

    /** No flow in these rigs is greater, kg/s. */
    private static final double GREATEST = 50;

    /** Density of the fluid as a parabola: rho0 − b1 (T−330) − b2 (T−330)², kg/m3. */
    public record Density(double rho0, double b1, double b2) {
        double at(double t) {
            double d = t - BASE;
            return rho0 - d * (b1 + b2 * d);
        }

        double slope(double t) {
            return -b1 - 2 * b2 * (t - BASE);
        }
    }

    /**
     * What resists and drives.
     *
     * @param laminar      Pa per kg/s of laminar flow at the reference viscosity
     * @param viscosity    viscosity over the reference viscosity against temperature
     * @param rest         the remaining pressure loss, Pa, against the {@link #place} of |m|; never below zero
     * @param pump         null where there is none
     * @param speed        of the pump, share of full speed
     * @param checkValve   opening pressure, Pa; NaN where there is none
     * @param specificHeat of the fluid, J/(kg K)
     */
    public record Hydraulics(
            Density density,
            double laminar,
            Curve viscosity,
            Curve rest,
            PumpCurve pump,
            double speed,
            double checkValve,
            double specificHeat) {}

    /**
     * A column of water that counts for buoyancy.
     *
     * @param node  its temperature
     * @param rise  height gained in flow direction through it, m
     */
    public record Rise(int node, double rise) {}

    /**
     * Bubbles in the riser above a pickup and the height that they lift. Their share of the pipe is that of slugs rising through
     * still water, {@code j / (1.2 j + 0.35 √(g D))} with j the steam's speed over the whole bore (Zuber and Findlay 1965, with
     * Nicklin's rise of slugs): five sixths at the most. Where the riser is colder than boiling they collapse on their way, half
     * of them at 4 K under (common practice, no source), and lift so much less.
     *
     * @param pickup            where steam is made
     * @param above             the first of the riser
     * @param saturation        K
     * @param steamConductance  W per kelvin over saturation
     * @param drift             heat of steam that fills the bore at the speed of a slug in still water, W
     * @param rise              m
     */
    public record Bubbles(
            int pickup, int above, double saturation, double steamConductance, double drift, double rise) {}

    /** Slugs rise faster than the mean by so much where the stream carries them: Zuber and Findlay. */
    private static final double PROFILE = 1.2;

    private final int flow;
    private final int[] cells;
    private final int draw;
    private final int inlet;
    private final boolean closed;
    private final Hydraulics hydraulics;
    private final int[] riseNode;
    private final double[] rise;
    private final int viscosityNode;
    private final Bubbles bubbles;
    private final Mixing mixing;
    private final double scale;

    private boolean pumping;
    private double resistanceFactor = 1;
    private double raised;
    private boolean lifts = true;

    private final int[] up;
    private final int[] down;
    private final int[] slots;
    private final int[] shareSlots;
    private final int flowFlow;
    private final int[] riseSlot;
    private final int viscositySlot;
    private final int bubbleSlot;
    private final int aboveSlot;

    /**
     * @param flow     algebraic state of the mass flow
     * @param cells    nodes in flow order
     * @param draw     store node drawn from, or -1 for a chain closed on itself
     * @param inlet    store node given to, or -1
     * @param mixing   null where there is none
     */
    public Circuit(
            Wiring wiring,
            int flow,
            int[] cells,
            int draw,
            int inlet,
            Hydraulics hydraulics,
            java.util.List<Rise> rises,
            int viscosityNode,
            Bubbles bubbles,
            Mixing mixing) {
        this.flow = flow;
        this.cells = cells.clone();
        this.draw = draw;
        this.inlet = inlet;
        this.closed = draw < 0;
        this.hydraulics = hydraulics;
        this.viscosityNode = viscosityNode;
        this.bubbles = bubbles;
        this.mixing = mixing;
        riseNode = rises.stream().mapToInt(Rise::node).toArray();
        rise = rises.stream().mapToDouble(Rise::rise).toArray();
        scale = 1 / Math.max(hydraulics.laminar, 1e-3);

        int links = closed ? cells.length : cells.length + 1;
        int all = mixing == null ? links : links + 1;
        up = new int[all];
        down = new int[all];
        for (int i = 0; i < links; i++) {
            up[i] = i == 0 ? (closed ? cells[cells.length - 1] : draw) : cells[i - 1];
            down[i] = i < cells.length ? cells[i] : inlet;
        }
        if (mixing != null) {
            up[links] = cells[mixing.last()];
            down[links] = cells[mixing.first()];
        }
        slots = new int[6 * all];
        shareSlots = new int[mixing == null ? 0 : 2 * all];
        for (int i = 0; i < all; i++) {
            slots[6 * i] = wiring.slot(up[i], up[i]);
            slots[6 * i + 1] = wiring.slot(up[i], down[i]);
            slots[6 * i + 2] = wiring.slot(up[i], flow);
            slots[6 * i + 3] = wiring.slot(down[i], up[i]);
            slots[6 * i + 4] = wiring.slot(down[i], down[i]);
            slots[6 * i + 5] = wiring.slot(down[i], flow);
            if (mixing == null) continue;
            shareSlots[2 * i] = wiring.slot(up[i], mixing.share());
            shareSlots[2 * i + 1] = wiring.slot(down[i], mixing.share());
        }
        flowFlow = wiring.slot(flow, flow);
        riseSlot = wiring.slots(flow, riseNode);
        viscositySlot = wiring.slot(flow, viscosityNode);
        bubbleSlot = bubbles == null ? -1 : wiring.slot(flow, bubbles.pickup);
        aboveSlot = bubbles == null ? -1 : wiring.slot(flow, bubbles.above);
    }

    /** Runs or stops the pump. */
    public void pump(boolean on) {
        pumping = on && hydraulics.pump != null;
    }

    /** Whether there is a pump. */
    public boolean hasPump() {
        return hydraulics.pump != null;
    }

    /** Whether the pump runs. */
    public boolean pumping() {
        return pumping;
    }

    /** Multiplies the loop's resistance: 1 as built; a closed valve or an air lock makes it enormous. */
    public void resist(double factor) {
        resistanceFactor = factor;
    }

    /** Whether bubbles lift its water; without, only its warmth and its pump move it. */
    public void lifts(boolean counted) {
        lifts = counted;
    }

    /** Raises where its bubbles are made, K: steam that the vent does not pass presses on the water. */
    public void raise(double kelvin) {
        raised = kelvin;
    }

    /** Mass flow, kg/s, at x. */
    public double flow(double[] x) {
        return x[flow];
    }

    /**
     * The mass flow at which the pressures balance at x, kg/s: bracketed Newton on the pressure, which falls with the flow
     * everywhere, so there is one root and it is always found.
     */
    public double standingFlow(double[] x) {
        double low = -GREATEST;
        double high = GREATEST;
        double m = Math.max(low, Math.min(high, x[flow]));
        for (int i = 0; i < 200; i++) {
            double p = pressure(x, m);
            if (p > 0) low = m;
            else high = m;
            double next = m - p / pressureSlope(x, m);
            if (!(next > low && next < high)) next = 0.5 * (low + high);
            if (Math.abs(next - m) <= 1e-13 + 1e-12 * Math.abs(m)) return next;
            m = next;
        }
        return m;
    }

    /** The valve that mixes, or null. */
    public Mixing mixing() {
        return mixing;
    }

    /** The algebraic state of the mass flow. */
    public int flowState() {
        return flow;
    }

    /**
     * Where a flow, kg/s, stands on the axis of {@link Hydraulics#rest}: its root, so that it is drawn finest at a trickle. A
     * thin pipe turns turbulent within grams, a wide one within kilograms; even spacing in kg/s would miss the thin one's
     * bend and make its resistance fall where it rises.
     */
    public static double place(double flow) {
        return Math.sqrt(flow + TRICKLE);
    }

    /** The flow at a {@link #place}. */
    public static double flowAt(double place) {
        return place * place - TRICKLE;
    }

    /** Forward part of a flow that is blurred through zero. */
    public static double forward(double m) {
        return 0.5 * (m + Math.sqrt(m * m + BLUR * BLUR));
    }

    /** Derivative of {@link #forward}. */
    public static double forwardSlope(double m) {
        return 0.5 * (1 + m / Math.sqrt(m * m + BLUR * BLUR));
    }

    @Override
    public void flows(double[] x, double[] p) {
        double m = x[flow];
        if (mixing == null) {
            carry(x, p, m, 0, up.length);
        } else {
            double drawn = x[mixing.share()] * m;
            carry(x, p, drawn, 0, mixing.first() + 1);
            carry(x, p, m, mixing.first() + 1, mixing.last() + 1);
            carry(x, p, drawn, mixing.last() + 1, up.length - 1);
            carry(x, p, m - drawn, up.length - 1, up.length);
        }
        p[flow] += scale * pressure(x, m);
    }

    /** Heat that a flow carries over some of the links. */
    private void carry(double[] x, double[] p, double m, int from, int until) {
        double cp = hydraulics.specificHeat;
        double plus = cp * forward(m);
        double minus = plus - cp * m;
        for (int i = from; i < until; i++) {
            double q = plus * (x[up[i]] - BASE) - minus * (x[down[i]] - BASE);
            p[up[i]] -= q;
            p[down[i]] += q;
        }
    }

    private double pressure(double[] x, double m) {
        double sum = 0;
        for (int i = 0; i < riseNode.length; i++) sum -= rise[i] * (hydraulics.density.at(x[riseNode[i]]) - 1000);
        sum *= G;
        if (bubbles != null && lifts) sum += lift(x[bubbles.pickup], x[bubbles.above]);
        if (pumping) sum += hydraulics.pump.head(m, hydraulics.speed);
        double rest = hydraulics.rest.at(place(Math.abs(m)));
        sum -= resistanceFactor
                * (hydraulics.laminar * hydraulics.viscosity.at(x[viscosityNode]) * m + (m < 0 ? -rest : rest));
        return sum - check(m);
    }

    private double pressureSlope(double[] x, double m) {
        double thick = hydraulics.viscosity.at(x[viscosityNode]);
        double size = Math.abs(m);
        double at = place(size);
        double rest = hydraulics.rest.slope(at) / (2 * at);
        double dp = -resistanceFactor * (hydraulics.laminar * thick + rest) - checkSlope(m);
        return pumping ? dp + hydraulics.pump.headSlope(m, hydraulics.speed) : dp;
    }

    /** A straight weep when shut, saturating at the opening pressure when open; one slope through zero. */
    private double check(double m) {
        double opening = hydraulics.checkValve;
        if (Double.isNaN(opening)) return 0;
        return m < 0 ? SHUT * m : opening * SHUT * m / (SHUT * m + opening + 1e-9);
    }

    private double checkSlope(double m) {
        double opening = hydraulics.checkValve;
        if (Double.isNaN(opening)) return 0;
        if (m < 0) return SHUT;
        double d = SHUT * m + opening + 1e-9;
        return opening * SHUT * (opening + 1e-9) / (d * d);
    }

    /** Lift of steam bubbles, Pa. */
    private double lift(double t, double above) {
        return shares(t) * Steam.escape(boils() - above);
    }

    /** Lift of as many as are made, Pa. */
    private double shares(double t) {
        double q = bubbles.steamConductance * Steam.ramp(t - boils());
        return G * 950 * bubbles.rise * q / (PROFILE * q + bubbles.drift);
    }

    private double boils() {
        return bubbles.saturation + raised;
    }

    private double liftSlope(double t, double above) {
        double q = bubbles.steamConductance * Steam.ramp(t - boils());
        double dq = bubbles.steamConductance * Steam.rampSlope(t - boils());
        double d = PROFILE * q + bubbles.drift;
        return G * 950 * bubbles.rise * bubbles.drift / (d * d) * dq * Steam.escape(boils() - above);
    }

    private double liftSlopeAbove(double t, double above) {
        return -shares(t) * Steam.escapeSlope(boils() - above);
    }

    /** Slopes of {@link #carry}. @param byFlow how the flow over these links goes with the circuit's @param byShare and with the share */
    private void carrySlopes(double[] x, double[] v, double m, int from, int until, double byFlow, double byShare) {
        double cp = hydraulics.specificHeat;
        double plus = cp * forward(m);
        double minus = plus - cp * m;
        double dPlus = cp * forwardSlope(m);
        double dMinus = dPlus - cp;
        for (int i = from, s = 6 * from; i < until; i++, s += 6) {
            double dm = dPlus * (x[up[i]] - BASE) - dMinus * (x[down[i]] - BASE);
            v[slots[s]] -= plus;
            v[slots[s + 1]] += minus;
            v[slots[s + 2]] -= byFlow * dm;
            v[slots[s + 3]] += plus;
            v[slots[s + 4]] -= minus;
            v[slots[s + 5]] += byFlow * dm;
            if (mixing == null) continue;
            v[shareSlots[2 * i]] -= byShare * dm;
            v[shareSlots[2 * i + 1]] += byShare * dm;
        }
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double m = x[flow];
        if (mixing == null) {
            carrySlopes(x, v, m, 0, up.length, 1, 0);
        } else {
            double share = x[mixing.share()];
            carrySlopes(x, v, share * m, 0, mixing.first() + 1, share, m);
            carrySlopes(x, v, m, mixing.first() + 1, mixing.last() + 1, 1, 0);
            carrySlopes(x, v, share * m, mixing.last() + 1, up.length - 1, share, m);
            carrySlopes(x, v, (1 - share) * m, up.length - 1, up.length, 1 - share, -m);
        }
        v[flowFlow] += scale * pressureSlope(x, m);
        for (int i = 0; i < riseNode.length; i++) {
            v[riseSlot[i]] -= scale * G * rise[i] * hydraulics.density.slope(x[riseNode[i]]);
        }
        v[viscositySlot] -=
                scale * resistanceFactor * hydraulics.laminar * hydraulics.viscosity.slope(x[viscosityNode]) * m;
        if (bubbles != null && lifts) {
            v[bubbleSlot] += scale * liftSlope(x[bubbles.pickup], x[bubbles.above]);
            v[aboveSlot] += scale * liftSlopeAbove(x[bubbles.pickup], x[bubbles.above]);
        }
    }
}
