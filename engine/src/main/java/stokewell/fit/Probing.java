package stokewell.fit;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import stokewell.balance.Wiring;
import stokewell.network.Plant;
import stokewell.rig.Rig;
import stokewell.rig.Room;
import stokewell.run.Replay;

/** Where the sensors of a rig are in what the engine integrates. */
public final class Probing {

    private Probing() {}

    /** Makes probes for a plant. */
    public interface Probes {
        List<Replay.Probe> of(Plant plant);
    }

    /** One probe a place. */
    public static Probes of(List<Spot> spots) {
        return plant -> spots.stream().map(s -> probe(s, plant)).toList();
    }

    private static Replay.Probe probe(Spot spot, Plant plant) {
        int[] store = plant.store();
        return switch (spot) {
            case ROOM -> single(spot, plant.room());
            case STORE_TOP -> single(spot, store[Mornings.topLayer(store.length)]);
            case STORE_MIDDLE -> middle(spot, store);
            case STORE_BOTTOM -> single(spot, store[Mornings.bottomLayer(store.length)]);
            case FLOW -> single(spot, state(plant, "supply pipe"));
            case RETURN -> single(spot, state(plant, "return pipe"));
            case SLAB -> single(spot, state(plant, "floor slab"));
            case STOVE -> single(spot, plant.body());
            case OUTDOOR, FLUE, NOTHING -> throw new IllegalArgumentException(spot + " is not compared");
        };
    }

    private static Replay.Probe middle(Spot spot, int[] store) {
        int n = store.length;
        if (n % 2 == 1) return single(spot, store[n / 2]);
        return new Replay.Probe(spot.words, new int[] {store[n / 2 - 1], store[n / 2]}, new double[] {0.5, 0.5});
    }

    private static Replay.Probe single(Spot spot, int column) {
        return new Replay.Probe(spot.words, new int[] {column}, new double[] {1});
    }

    /** The last state of a name or of its numbered pieces. */
    private static int state(Plant plant, String name) {
        List<Wiring.State> states = plant.network().wiring().states();
        int found = -1;
        for (int i = 0; i < states.size(); i++) {
            String own = states.get(i).name();
            if (own.equals(name) || own.matches(java.util.regex.Pattern.quote(name) + " \\d+")) found = i;
        }
        if (found < 0) throw new IllegalArgumentException("the rig has no " + name);
        return Wiring.OUTSIDE + found;
    }

    /** Which places a rig has at all. */
    public static List<Spot> spotsOf(Rig rig) {
        Map<Spot, Boolean> has = new EnumMap<>(Spot.class);
        for (Spot s : Spot.values()) has.put(s, true);
        boolean store = rig.store() != null;
        for (Spot s : List.of(Spot.STORE_TOP, Spot.STORE_MIDDLE, Spot.STORE_BOTTOM)) has.put(s, store);
        for (Spot s : List.of(Spot.FLOW, Spot.RETURN)) has.put(s, rig.loop() != null);
        has.put(Spot.SLAB, rig.room().floor() instanceof Room.Floor.Slab);
        return Arrays.stream(Spot.values()).filter(has::get).toList();
    }
}
