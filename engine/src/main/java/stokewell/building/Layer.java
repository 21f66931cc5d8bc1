package stokewell.building;

/**
 * One layer of a wall, per m². For heat that goes straight through, its resistance and its capacity are all there is to know.
 *
 * @param resistance m² K/W, 0 or more
 * @param capacity J/(m² K), 0 or more
 */
public record Layer(double resistance, double capacity) {

    public Layer {
        if (!(resistance >= 0 && capacity >= 0 && resistance < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a layer of " + resistance + " m² K/W that holds " + capacity + " J/(m² K) cannot be");
        }
    }

    /**
     * A layer of a material.
     *
     * @param thickness m
     * @param conductivity W/(m K)
     * @param density kg/m³
     * @param specificHeat J/(kg K)
     */
    public static Layer of(double thickness, double conductivity, double density, double specificHeat) {
        return new Layer(thickness / conductivity, thickness * density * specificHeat);
    }

    /** An air gap or anything else that only resists. */
    public static Layer gap(double resistance) {
        return new Layer(resistance, 0);
    }
}
