package stokewell.building;

import stokewell.balance.Part;
import stokewell.balance.Wiring;

/**
 * Air that comes in cold: through leaks by stack and wind, to replace what the fire draws, and through a door that stands
 * open.
 *
 * <p>Leaks: ASHRAE's basic model, Q = A_L √(C_s |ΔT| + C_w U²) (Handbook of Fundamentals, residential infiltration).
 * The fire's draw adds in quadrature, as that chapter adds unbalanced fans. Door: Brown and Solvason (1962), Int. J. Heat
 * Mass Transfer 5, 859: Q = C_d/3 A √(g H ΔT/T), C_d 0.6.
 */
public final class AirExchange implements Part {

    private static final double G = 9.80665;
    private static final double BLUR = 0.05;

    private final int room;
    private final int outdoors;
    private final int wind;
    private final int fireAir;
    private final int account;
    private final int doorAccount;
    private final double stack2;
    private final double wind2;
    private final double perDensity;
    private final double heat;
    private final int[] roomSlots;
    private final int[] accountSlots;
    private final int[] doorSlots;
    private double doorFactor;

    /**
     * @param fireAir column of the fire's air flow, kg/s
     * @param stack   A_L √C_s, m3/s per √K
     * @param windy   A_L √C_w, m3/s per m/s
     * @param density of air, kg/m3
     */
    public AirExchange(
            Wiring wiring,
            int room,
            int outdoors,
            int wind,
            int fireAir,
            int account,
            int doorAccount,
            double stack,
            double windy,
            double density) {
        this.room = room;
        this.outdoors = outdoors;
        this.wind = wind;
        this.fireAir = fireAir;
        this.account = account;
        this.doorAccount = doorAccount;
        stack2 = stack * stack;
        wind2 = windy * windy;
        perDensity = 1 / density;
        heat = 1006 * density;
        roomSlots = wiring.slots(room, room, outdoors, wind, fireAir);
        accountSlots = wiring.slots(account, room, outdoors, wind, fireAir);
        doorSlots = new int[] {
            wiring.slot(room, room),
            wiring.slot(room, outdoors),
            wiring.slot(doorAccount, room),
            wiring.slot(doorAccount, outdoors)
        };
    }

    /** Opens doors: the sum of area × √height of those open, m2.5; 0 shuts them. */
    public void doors(double areaRootHeight) {
        doorFactor = areaRootHeight * 0.2 * Math.sqrt(G / 290);
    }

    /** Air through the leaks and to the fire, m3/s, at x. */
    public double flow(double[] x) {
        double dt = x[room] - x[outdoors];
        double fire = x[fireAir] * perDensity;
        return Math.sqrt(leak2(dt, x[wind]) + fire * fire);
    }

    private double leak2(double dt, double speed) {
        return stack2 * Math.sqrt(dt * dt + BLUR * BLUR) + wind2 * speed * speed + 1e-12;
    }

    @Override
    public void flows(double[] x, double[] p) {
        double dt = x[room] - x[outdoors];
        double q = heat * flow(x) * dt;
        p[room] -= q;
        p[account] += q;
        if (doorFactor > 0) {
            double d = heat * doorFactor * Math.sqrt(Math.sqrt(dt * dt + BLUR * BLUR)) * dt;
            p[room] -= d;
            p[doorAccount] += d;
        }
    }

    @Override
    public void slopes(double[] x, double[] v) {
        double dt = x[room] - x[outdoors];
        double speed = x[wind];
        double fire = x[fireAir] * perDensity;
        double size = Math.sqrt(dt * dt + BLUR * BLUR);
        double flow = Math.sqrt(leak2(dt, speed) + fire * fire);
        double half = 0.5 / flow * heat * dt;
        double dDt = heat * flow + half * stack2 * dt / size;
        double dWind = half * wind2 * 2 * speed;
        double dFire = half * 2 * fire * perDensity;
        put(v, roomSlots, -1, dDt, dWind, dFire);
        put(v, accountSlots, 1, dDt, dWind, dFire);
        if (doorFactor > 0) {
            double root = Math.sqrt(size);
            double d = heat * doorFactor * (root + 0.5 * dt * dt / (root * size));
            v[doorSlots[0]] -= d;
            v[doorSlots[1]] += d;
            v[doorSlots[2]] += d;
            v[doorSlots[3]] -= d;
        }
    }

    private static void put(double[] v, int[] slots, double sign, double dDt, double dWind, double dFire) {
        v[slots[0]] += sign * dDt;
        v[slots[1]] -= sign * dDt;
        v[slots[2]] += sign * dWind;
        v[slots[3]] += sign * dFire;
    }
}
