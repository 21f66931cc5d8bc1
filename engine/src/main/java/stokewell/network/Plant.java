package stokewell.network;

import java.util.List;
import stokewell.balance.Supply;
import stokewell.balance.Wiring;
import stokewell.building.AirExchange;
import stokewell.control.Latch;
import stokewell.fire.Fire;
import stokewell.loop.Circuit;
import stokewell.loop.PickupWater;
import stokewell.loop.SealedLoop;
import stokewell.loop.Vent;
import stokewell.rig.Rig;

/**
 * A compiled rig: its equations and the handles by which a run reads and switches it. Columns are those of
 * {@link Network#columns}. One plant serves one run at a time.
 *
 * @param chimney  its pieces from below
 * @param store    layers from the top; empty without a store
 * @param storeCapacity heat capacity of each layer, J/K
 * @param loop     the loop's circuit, or null
 * @param circuits every circuit, the loop's among them
 * @param contact  of each pickup with the stove's plate, W/K; 0 in the fire
 * @param header   column of the water left in the header, or -1
 * @param wet      columns of the wet share of each pickup
 * @param waters   every water node that may boil, with its saturation temperature
 * @param sealed   the pressure of a closed loop; null on an open one
 */
public record Plant(
        Rig rig,
        Network network,
        Fire fire,
        int room,
        int contents,
        int body,
        int[] chimney,
        int outdoors,
        int raw,
        int fuelWater,
        int volatiles,
        int carbon,
        int gas,
        int airFlow,
        int[] store,
        double[] storeCapacity,
        Circuit loop,
        List<Circuit> circuits,
        List<PickupWater> pickups,
        double[] contact,
        List<Vent> vents,
        int header,
        int[] wet,
        List<Boilable> waters,
        List<Driven> driven,
        List<Latch> latches,
        List<int[]> sensors,
        AirExchange exchange,
        Supply people,
        double pressure,
        SealedLoop sealed) {

    /** What the relief valve of a closed loop is called among what is {@link #driven}. */
    public static final String RELIEF = "relief valve";

    /** A water node and where it boils. */
    public record Boilable(String name, int node, double saturation) {}

    /** Where a water boils at x, K: on a closed loop it moves with the pressure. */
    public double saturation(Boilable water, double[] x) {
        return sealed == null ? water.saturation() : Math.min(water.saturation(), sealed.saturation(x));
    }

    /** Mean temperature of the store at these columns, K; NaN without one. */
    public double storeMean(double[] x) {
        if (store.length == 0) return Double.NaN;
        double heat = 0;
        double capacity = 0;
        for (int i = 0; i < store.length; i++) {
            heat += storeCapacity[i] * x[store[i]];
            capacity += storeCapacity[i];
        }
        return heat / capacity;
    }

    /** Heat that fire or plate gives pickup i, W, at x. */
    public double heatInto(int i, double[] x) {
        int wall = pickups.get(i).wall();
        return fire.into(wall, x) + contact[i] * (x[body] - x[wall]);
    }

    /** Heat the store still takes before its mean reaches a temperature, J; negative when it is past. */
    public double roomLeft(double[] x, double full) {
        double sum = 0;
        for (int i = 0; i < store.length; i++) sum += storeCapacity[i] * (full - x[store[i]]);
        return sum;
    }

    /** Index of a state in y from its column. */
    public static int state(int column) {
        return column - Wiring.OUTSIDE;
    }
}
