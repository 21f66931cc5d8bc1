package stokewell.run;

import stokewell.network.Plant;

/**
 * What a person says stands at the start of a night, K; NaN where nothing is said and the settled rig stands as it is.
 *
 * @param room        air and contents
 * @param storeTop    top layer
 * @param storeBottom bottom layer; the layers between lie on a straight line
 * @param building    everything else that holds heat: walls, floor, stove, pipes
 */
public record Given(double room, double storeTop, double storeBottom, double building) {

    /** Nothing said. */
    public static final Given NOTHING = new Given(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    /** Whether nothing at all is said. */
    public boolean nothing() {
        return equals(NOTHING);
    }

    /** The states with what is said put in. */
    double[] in(Plant plant, double[] settled) {
        double[] y = settled.clone();
        if (!Double.isNaN(building)) {
            for (int i = 0; i < y.length; i++) if (plant.network().capacity(i) > 0) y[i] = building;
            // the water and its wall keep what they had unless the store is given too
            for (int layer : plant.store()) y[Plant.state(layer)] = settled[Plant.state(layer)];
        }
        if (!Double.isNaN(room)) {
            y[Plant.state(plant.room())] = room;
            y[Plant.state(plant.contents())] = room;
        }
        int layers = plant.store().length;
        if (!Double.isNaN(storeTop)) {
            for (int i = 0; i < layers; i++) {
                y[Plant.state(plant.store()[i])] = storeTop + (storeBottom - storeTop) * i / (layers - 1);
            }
        }
        double[] x = plant.network().columns(0, y);
        for (int[] sensor : plant.sensors()) y[Plant.state(sensor[0])] = 0.5 * (x[sensor[1]] + x[sensor[2]]);
        return y;
    }
}
