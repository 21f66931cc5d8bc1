package stokewell.fire;

import java.util.Arrays;
import java.util.List;
import stokewell.balance.Wiring;

/**
 * The rows of the matrix of slopes that the fire writes to, each with the slots of the columns it hangs on. Local columns: the
 * bed's five, then body, room, contents, outdoors, the chimney's pieces and the surfaces.
 */
final class FireRows {

    static final int W = Bed.WATER;
    static final int V = Bed.VOLATILES;
    static final int C = Bed.CHAR;
    static final int G = Bed.GAS;
    static final int A = Bed.AIR;
    static final int B = 5;
    static final int R = 6;
    static final int K = 7;
    static final int O = 8;
    /** The chimney's lowest piece. */
    static final int H = 9;

    /** Column of the first surface. */
    final int first;
    /** How many there are. */
    final int columns;

    final int[] water;
    final int[] volatiles;
    final int[] carbon;
    final int[] gas;
    final int[] air;
    final int[] body;
    final int[][] chimney;
    final int[] room;
    final int[] contents;
    final int[] flue;
    final int[] smoke;
    final int[] release;
    final int[] fuelSteam;
    final int[][] surface;
    final int[][] meter;
    final int rawRaw;
    final int waterRaw;
    final int volatilesRaw;
    final int carbonRaw;

    FireRows(Wiring wiring, Fire.Places at, List<Fire.Surface> surfaces) {
        int pieces = at.chimney().length;
        first = H + pieces;
        columns = first + surfaces.size();
        Slots slots = new Slots(wiring, network(at, surfaces));
        int[] fuel = {W, V, C, G, A};
        int[] smoked = {W, V, C, G, A, B, R, K};
        water = slots.of(at.water(), fuel);
        volatiles = slots.of(at.volatiles(), fuel);
        carbon = slots.of(at.carbon(), fuel);
        int[] furnace = Arrays.copyOf(fuel, 6 + surfaces.size());
        furnace[5] = R;
        for (int i = 0; i < surfaces.size(); i++) furnace[6 + i] = first + i;
        gas = slots.of(at.gas(), furnace);
        air = slots.of(at.air(), upTo(pieces, W, V, C, G, A, B, R, K, O));
        body = slots.of(at.body(), W, V, C, G, A, B);
        chimney = new int[pieces][];
        for (int i = 0; i < pieces; i++) chimney[i] = slots.of(at.chimney()[i], upTo(i + 1, smoked));
        room = slots.of(at.room(), smoked);
        contents = slots.of(at.contents(), smoked);
        flue = slots.of(at.flueAccount(), upTo(pieces, smoked));
        smoke = slots.of(at.smokeAccount(), fuel);
        release = slots.of(at.releaseMeter(), fuel);
        fuelSteam = slots.of(at.steamFromFuelMeter(), fuel);
        surface = new int[surfaces.size()][];
        meter = new int[surfaces.size()][];
        for (int i = 0; i < surface.length; i++) {
            int[] on = {V, C, G, first + i};
            surface[i] = slots.of(surfaces.get(i).node(), on);
            if (surfaces.get(i).meter() >= 0)
                meter[i] = slots.of(surfaces.get(i).meter(), on);
        }
        rawRaw = wiring.slot(at.raw(), at.raw());
        waterRaw = wiring.slot(at.water(), at.raw());
        volatilesRaw = wiring.slot(at.volatiles(), at.raw());
        carbonRaw = wiring.slot(at.carbon(), at.raw());
    }

    /** The network's columns by local ones. */
    private int[] network(Fire.Places at, List<Fire.Surface> surfaces) {
        int[] all = new int[columns];
        all[W] = at.water();
        all[V] = at.volatiles();
        all[C] = at.carbon();
        all[G] = at.gas();
        all[A] = at.air();
        all[B] = at.body();
        all[R] = at.room();
        all[K] = at.contents();
        all[O] = at.outdoors();
        System.arraycopy(at.chimney(), 0, all, H, at.chimney().length);
        for (int i = 0; i < surfaces.size(); i++)
            all[first + i] = surfaces.get(i).node();
        return all;
    }

    /** These columns and the chimney's pieces up to one. */
    private static int[] upTo(int pieces, int... used) {
        int[] all = Arrays.copyOf(used, used.length + pieces);
        for (int i = 0; i < pieces; i++) all[used.length + i] = H + i;
        return all;
    }
}
