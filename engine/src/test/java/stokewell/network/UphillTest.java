package stokewell.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import stokewell.balance.Part;
import stokewell.balance.Wiring;
import stokewell.loop.Circuit;
import stokewell.loop.Vent;
import stokewell.rig.RandomRigs;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.store.Layers;
import stokewell.store.OpenSurface;

/**
 * Second law at an instant: heat never flows uphill. Of all that one part joins, the hottest gains nothing from it and the
 * coldest loses nothing to it; where a part joins two things that is each of its flows, where it joins more it is said of
 * every pair and of all of them together, at states drawn by lot. Water that goes round carries heat from the circuit to the
 * store's layers and on through them, so circuits and layers count as one. What is driven (motors, people) is no flow of heat,
 * and plain conductances are held by their signs.
 */
class UphillTest {

    private static final int RIGS = 150;
    private static final int STATES = 12;
    private static final double HUGE = 1e12;
    /** A curve of kilowatts drawn through points may pass zero by this much, W. */
    private static final double CURVE = 0.5;

    private final Random random = new Random(23);
    private final List<String> uphill = new ArrayList<>();

    @Test
    void noPartOfAnyRigMovesHeatFromColderToHotter() {
        List<Rig> rigs = new ArrayList<>(Rigs.all());
        for (int seed = 0; seed < RIGS; seed++) rigs.add(RandomRigs.of(seed));
        for (Rig rig : rigs) {
            Plant plant = Compiler.compile(rig, NetworkTest.weather(rig));
            List<List<Part>> groups = groups(plant.network().parts());
            for (int k = 0; k < STATES; k++) {
                for (var d : plant.driven()) d.run(random.nextBoolean());
                plant.exchange().doors(random.nextBoolean() ? 4 : 0);
                plant.fire().inlet().open(random.nextDouble());
                for (List<Part> group : groups) check(plant, group, k % 3 == 0);
            }
        }
        assertThat(uphill).isEmpty();
    }

    /** Every part by itself, but all that moves water together. */
    private static List<List<Part>> groups(List<Part> parts) {
        List<List<Part>> groups = new ArrayList<>();
        List<Part> water = new ArrayList<>();
        for (Part p : parts) {
            if (p instanceof Circuit || p instanceof Layers) water.add(p);
            else if (!p.steadySlopes() && !leaves(p)) groups.add(List.of(p));
        }
        if (!water.isEmpty()) groups.add(water);
        return groups;
    }

    /** Water that leaves for good takes its heat along, from however cold a place: held by its sign in its own tests. */
    private static boolean leaves(Part part) {
        return part instanceof OpenSurface || part instanceof Vent;
    }

    /** Plain conductances: what one gains a kelvin of another, that one loses, and never less than nothing. */
    @Test
    void plainConductancesAreSymmetricAndNeverNegative() {
        for (Rig rig : Rigs.all()) {
            Plant plant = Compiler.compile(rig, NetworkTest.weather(rig));
            Wiring wiring = plant.network().wiring();
            double[] x = new double[Wiring.OUTSIDE + plant.network().size()];
            double[] v = new double[wiring.slotPlaces().size() + 1];
            for (Part part : plant.network().parts()) if (part.steadySlopes()) part.slopes(x, v);
            int pairs = 0;
            for (int s = 0; s < wiring.slotPlaces().size(); s++) {
                int row = (int) wiring.slotPlaces().get(s)[0];
                int column = (int) wiring.slotPlaces().get(s)[1];
                if (!heat(wiring, row) || !heat(wiring, column) || row == column || v[s] == 0) continue;
                String what = rig.name() + ": " + name(wiring, row) + " by " + name(wiring, column);
                assertThat(v[s]).as(what).isGreaterThanOrEqualTo(0);
                int back = wiring.slot(column, row);
                assertThat(back).as(what).isLessThan(v.length);
                assertThat(v[back]).as(what).isCloseTo(v[s], within(1e-12 * v[s]));
                pairs++;
            }
            assertThat(pairs).isGreaterThan(20);
        }
    }

    /**
     * @param pair true: all at one temperature but two, of which one is hotter and one colder; false: all at random
     */
    private void check(Plant plant, List<Part> group, boolean pair) {
        Network network = plant.network();
        Wiring wiring = network.wiring();
        Set<Integer> nodes = touched(plant, group);
        if (nodes.isEmpty()) return;
        double[] x = state(plant);
        Integer[] all = nodes.toArray(Integer[]::new);
        if (pair) {
            for (int node : all) x[node] = 320;
            x[all[random.nextInt(all.length)]] = 300;
            x[all[random.nextInt(all.length)]] = 350;
        }
        int hottest = all[0];
        int coldest = all[0];
        for (int node : all) {
            if (x[node] > x[hottest]) hottest = node;
            if (x[node] < x[coldest]) coldest = node;
        }
        double[] p = new double[x.length];
        for (Part part : group) part.flows(x, p);
        double size = 0;
        for (int node : all) size += Math.abs(p[node]);
        double slack = 1e-9 * size + CURVE;
        String what = plant.rig().name() + ", " + group.get(0).getClass().getSimpleName() + ": ";
        if (heat(wiring, hottest) && p[hottest] > slack) {
            uphill.add(what + name(wiring, hottest) + " is hottest and gains " + p[hottest] + " W");
        }
        if (heat(wiring, coldest) && p[coldest] < -slack) {
            uphill.add(what + name(wiring, coldest) + " is coldest and loses " + -p[coldest] + " W");
        }
    }

    private static boolean heat(Wiring wiring, int column) {
        return column >= Wiring.OUTSIDE
                && wiring.states().get(column - Wiring.OUTSIDE).kind() == Wiring.Kind.HEAT;
    }

    private static String name(Wiring wiring, int column) {
        return wiring.states().get(column - Wiring.OUTSIDE).name();
    }

    /** Columns whose temperature moves heat in the group: of nodes, of the fire's gas, of outdoors and sky. */
    private Set<Integer> touched(Plant plant, List<Part> group) {
        Wiring wiring = plant.network().wiring();
        Set<Integer> found = new TreeSet<>();
        // a part adds to its slots: what is still as it was in both is not its own
        double[] zero = new double[wiring.slotPlaces().size() + 1];
        double[] huge = new double[zero.length];
        java.util.Arrays.fill(huge, HUGE);
        for (int k = 0; k < 8; k++) {
            double[] x = state(plant);
            for (Part part : group) {
                part.slopes(x, zero);
                part.slopes(x, huge);
            }
        }
        for (int s = 0; s < wiring.slotPlaces().size(); s++) {
            if (zero[s] == 0 && huge[s] == HUGE) continue;
            int row = (int) wiring.slotPlaces().get(s)[0];
            int column = (int) wiring.slotPlaces().get(s)[1];
            if (!heat(wiring, row)) continue;
            found.add(row);
            if (heat(wiring, column)) found.add(column);
            else if (column < Wiring.OUTSIDE) {
                String signal = wiring.signals().get(column);
                if (signal.equals("outdoors") || signal.equals("sky")) found.add(column);
            } else if (wiring.states().get(column - Wiring.OUTSIDE).name().equals("firebox gas")) {
                found.add(column);
            }
        }
        return found;
    }

    private double[] state(Plant plant) {
        Wiring wiring = plant.network().wiring();
        double[] x = new double[Wiring.OUTSIDE + wiring.states().size()];
        for (int i = 0; i < wiring.signals().size(); i++) {
            String name = wiring.signals().get(i);
            x[i] = name.equals("outdoors") || name.equals("sky") ? 255 + 40 * random.nextDouble() : 0;
        }
        for (int i = 0; i < wiring.states().size(); i++) {
            Wiring.State s = wiring.states().get(i);
            double value;
            if (s.kind() == Wiring.Kind.HEAT) value = 275 + 100 * random.nextDouble();
            else if (s.name().equals("firebox gas")) value = 280 + 900 * random.nextDouble();
            else if (s.name().equals("air to the fire")) value = 0.01 * random.nextDouble();
            else if (s.name().endsWith("flow")) value = 0.3 * (random.nextDouble() - 0.4);
            else if (s.name().endsWith("wet")) value = random.nextDouble();
            else value = 3 * random.nextDouble();
            x[Wiring.OUTSIDE + i] = value;
        }
        // what is hotter than it boils has made its steam: the runs hold it within a kelvin or two
        for (Plant.Boilable w : plant.waters()) x[w.node()] = Math.min(x[w.node()], w.saturation());
        return x;
    }
}
