package stokewell.fire;

import stokewell.balance.Wiring;

/** Where the fire's own columns stand in the matrix of slopes: pairs of local column and slot for each row. */
final class Slots {

    private final Wiring wiring;
    private final int[] columns;

    /** @param columns of the network, by local column */
    Slots(Wiring wiring, int[] columns) {
        this.wiring = wiring;
        this.columns = columns;
    }

    /** Of one row, for the columns that play a part in it. */
    int[] of(int row, int... used) {
        int[] slots = new int[2 * used.length];
        for (int i = 0; i < used.length; i++) {
            slots[2 * i] = used[i];
            slots[2 * i + 1] = wiring.slot(row, columns[used[i]]);
        }
        return slots;
    }

    /** Adds a gradient over the local columns, times a factor, to a row. */
    static void scatter(double[] v, int[] slots, double[] gradient, double factor) {
        for (int i = 0; i < slots.length; i += 2) v[slots[i + 1]] += factor * gradient[slots[i]];
    }
}
