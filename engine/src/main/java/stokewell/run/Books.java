package stokewell.run;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stokewell.network.Network;
import stokewell.network.Plant;
import stokewell.solve.State;

/** The books of a run: what the wood brought, and what stood in rig and fuel bed when they were opened. */
final class Books {

    private final Plant plant;
    private final Network network;
    private double begun;
    private double storedAtBegin;
    private double bedAtBegin;
    private double fuelIn;
    private double wood;
    private int loads;

    Books(Plant plant) {
        this.plant = plant;
        network = plant.network();
    }

    void open(State state) {
        fuelIn = 0;
        wood = 0;
        loads = 0;
        begun = state.t;
        storedAtBegin = stored(state);
        bedAtBegin = bed(state);
    }

    /** Wood laid on, kg, and what it brings, J. */
    void wood(double mass, double brought) {
        wood += mass;
        fuelIn += brought;
        loads++;
    }

    /** A bed raked out, J. */
    void raked(double taken) {
        fuelIn -= taken;
    }

    double wood() {
        return wood;
    }

    int loads() {
        return loads;
    }

    private double stored(State state) {
        double sum = 0;
        for (int i = 0; i < state.y.length; i++) sum += network.capacity(i) * (state.y[i] - 273.15);
        return sum;
    }

    private double bed(State state) {
        return plant.fire().energy(network.columns(state.t, state.y));
    }

    /** Closes them, checked. */
    Ledger ledger(State state) {
        Map<String, Double> accounts = new LinkedHashMap<>();
        List<String> names = network.wiring().accounts();
        for (int i = 0; i < names.size(); i++) accounts.put(names.get(i), state.sums[i]);
        Map<String, Double> meters = new LinkedHashMap<>();
        List<String> meterNames = network.wiring().meters();
        for (int i = 0; i < meterNames.size(); i++) meters.put(meterNames.get(i), state.sums[names.size() + i]);
        return new Ledger(fuelIn, accounts, meters, stored(state) - storedAtBegin, bed(state) - bedAtBegin)
                .closed(begun, state.t);
    }
}
