package stokewell.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import stokewell.balance.Wiring;
import stokewell.rig.Changed;
import stokewell.rig.Layer;
import stokewell.rig.Outdoors;
import stokewell.rig.Place;
import stokewell.rig.Rig;
import stokewell.rig.Rigs;
import stokewell.rig.Room;
import stokewell.rig.Store;
import stokewell.solve.Integrator;
import stokewell.solve.State;
import stokewell.solve.Tolerances;

/** What a store on a bare floor loses through its bottom, against the heat equation solved on a grid. */
class PlateOnFloorTest {

    private static final double K = 273.15;

    /** A disk on a half-space whose surface gives nothing: S = 2 D, exact (Carslaw and Jaeger 8.2; Incropera table 4.1). */
    @Test
    void theGridFindsTheDisk() {
        PlateOnFloor disk = PlateOnFloor.solve(0.9, 0, 1e-6, 0.1, 1.5);
        assertThat(disk.in()).isCloseTo(2 * 1.8 * 1.5, Percentage.withPercentage(3));
        assertThat(disk.away()).isCloseTo(disk.in(), Percentage.withPercentage(1e-3));
    }

    @Test
    void theFloorUnderAStoreTakesWhatTheHeatEquationSays() {
        for (Room.Soil soil : new Room.Soil[] {Room.Soil.CLAY, Room.Soil.SAND}) {
            for (double diameter : new double[] {0.8, 1.2, 1.8}) {
                PlateOnFloor grid = PlateOnFloor.solve(diameter / 2, 4.5, 0.01, 0.1, soil.conductivity);
                double[] lumped = lumped(diameter, soil);
                String what = soil + ", " + diameter + " m";
                assertThat(lumped[0]).as(what + ": given, W/K").isCloseTo(grid.in(), Percentage.withPercentage(14));
                assertThat(lumped[1]).as(what + ": lost, W/K").isCloseTo(grid.away(), Percentage.withPercentage(25));
            }
        }
    }

    /** What a kelvin of a bare store over room and ground sends into the floor and, of that, away for good; W/K. */
    private static double[] lumped(double diameter, Room.Soil soil) {
        double[] warm = floorAndAccount(diameter, soil, K + 60);
        double[] cold = floorAndAccount(diameter, soil, K + 20);
        return new double[] {(warm[0] - cold[0]) / 40, (warm[1] - cold[1]) / 40};
    }

    /** With room and store held until the floor is at rest: power into the floor and into the ground for good, W. */
    private static double[] floorAndAccount(double diameter, Room.Soil soil, double hot) {
        Rig p = Rigs.pumped();
        Store s = p.store();
        Store bare = new Store(
                new Store.Shape.Round(diameter, 1),
                4,
                s.wall(),
                s.jacket(),
                s.lid(),
                new Layer(0, "XPS", 0.034, 35, 1450),
                Store.Standing.FLOOR,
                1,
                Store.Cover.SEALED,
                0,
                0.95,
                0.05,
                null);
        double side = Math.sqrt(Math.PI) * 4.5;
        Room r = p.room();
        Room room = new Room(
                side,
                side,
                3,
                r.walls(),
                r.roof(),
                new Room.Floor.Slab(0.1, 0, 0, 0.6, soil),
                List.of(),
                List.of(),
                new Room.Leakage(0, Room.Shelter.WALLED),
                r.contents(),
                r.gains());
        Place place =
                new Place(p.place().latitude(), p.place().longitude(), p.place().utcOffset(), 0, K + 20);
        Rig rig = Changed.with(Changed.with(p, "store", bare), "room", room)
                .withWeather(new Outdoors("", K + 20, K + 20, 0, 0, 15));
        Rig there = Changed.with(rig, "place", place, "switches", List.of());
        Plant plant = Compiler.compile(there, NetworkTest.weather(there));
        Network network = plant.network();
        List<Integer> held = new ArrayList<>();
        double[] y = network.start();
        for (int i = 0; i < y.length; i++) {
            if (network.capacity(i) > 0) y[i] = K + 20;
            boolean floor = network.wiring().states().get(i).name().matches("under store|soil under store");
            if (!floor && !network.algebraic(i)) held.add(i);
        }
        for (int layer : plant.store()) y[Plant.state(layer)] = hot;
        Held equations =
                new Held(network, held.stream().mapToInt(Integer::intValue).toArray());
        State state = new State(0, y, new double[network.sums()]);
        Integrator integrator = new Integrator(equations, Tolerances.absolute(1e-3));
        integrator.restart(state);
        integrator.advance(state, 2000 * 86400.0, between -> {});
        double[] f = new double[y.length];
        double[] sums = new double[network.sums()];
        network.rates(state.t, state.y, f, sums);
        Wiring wiring = network.wiring();
        int meter = wiring.accounts().size() + wiring.meters().indexOf("store to floor");
        return new double[] {sums[meter], sums[wiring.accounts().indexOf("floor")]};
    }
}
