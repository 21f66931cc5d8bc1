package stokewell.run;

import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.solve.State;

/** The person with the watering can: fills up header, pickups and a closed loop's pressure. */
final class Filling {

    /** Metal that nobody pours water on, K. */
    private static final double HOT_METAL = 333;

    private final Plant plant;
    private final Network network;

    Filling(Plant plant) {
        this.plant = plant;
        network = plant.network();
    }

    /**
     * Fills header and pickups, as somebody does before a day begins. A rig that boils would else boil dry while it settles,
     * and its night would show no boiling at all.
     */
    void full(State state) {
        if (plant.header() < 0) return;
        double[] full = network.start();
        int header = Plant.state(plant.header());
        state.y[header] = full[header];
        for (int wet : plant.wet()) state.y[Plant.state(wet)] = full[Plant.state(wet)];
        if (plant.sealed() == null) return;
        state.y[Plant.state(plant.sealed().steam())] = 0;
        // a closed loop is filled up to its pressure, and no further while it stands higher
        int letOut = Plant.state(plant.sealed().letOut());
        double fill = plant.rig().safety().vessel().fill();
        double wanted = plant.sealed().letOutFor(network.columns(state.t, state.y), fill);
        state.y[letOut] = Math.max(0, Math.min(state.y[letOut], wanted));
    }

    /**
     * Fills up the header as somebody does who looks once a week, and the pickups from it unless their metal is hot: nobody
     * pours water on hot metal. Returns the water that it took, kg.
     */
    double weekly(State state) {
        if (plant.header() < 0) return 0;
        double[] full = network.start();
        int header = Plant.state(plant.header());
        double water = Math.max(0, full[header] - state.y[header]);
        state.y[header] = Math.max(full[header], state.y[header]);
        for (int i = 0; i < plant.wet().length; i++) {
            int wet = Plant.state(plant.wet()[i]);
            boolean hot = state.y[Plant.state(plant.pickups().get(i).wall())] > HOT_METAL;
            if (hot || state.y[wet] >= full[wet]) continue;
            water += plant.pickups().get(i).full() * (full[wet] - state.y[wet]);
            state.y[wet] = full[wet];
        }
        return water;
    }
}
