package stokewell.loop;

/**
 * How long a pipe of still water has. Lumped water that cools through one conductance, then a shell of ice that grows
 * inwards from the wall. Supercooling by a few kelvin, usual in still pipes, only delays the first ice and is left out.
 */
public final class Freezing {

    /** Heat of fusion of ice at 0 °C, J/kg; from memory, any handbook. */
    public static final double FUSION = 333_550;

    /** Conductivity of ice at 0 °C, W/(m K); from memory, any handbook. */
    public static final double ICE_CONDUCTIVITY = 2.2;

    private Freezing() {}

    /**
     * Time for the water to fall to 0 °C, s; 0 if it is there, infinite if it never will be.
     *
     * @param capacity of water and pipe wall together, J/K
     * @param ua water to surroundings, W/K
     * @param water now, °C
     * @param surroundings °C
     */
    public static double timeToZero(double capacity, double ua, double water, double surroundings) {
        if (water <= 0) {
            return 0;
        }
        return surroundings >= 0 ? Double.POSITIVE_INFINITY : capacity / ua * Math.log1p(-water / surroundings);
    }

    /**
     * Further time, from 0 °C, until a share of the water is ice, s. The shell of ice adds its own resistance:
     * {@code t = m h φ/ΔT [R + (1 + (1−φ) ln(1−φ)/φ) / (4 π k L)]}, the quasi-steady solution for a cylinder frozen from
     * outside (ice counted at the density of water).
     *
     * @param share φ, 0 to 1; a pipe is plugged and may burst long before 1
     * @param waterMass kg
     * @param length of pipe, m
     * @param ua water to surroundings, W/K
     * @param surroundings °C
     */
    public static double timeToIce(double share, double waterMass, double length, double ua, double surroundings) {
        if (share <= 0) {
            return 0;
        }
        if (surroundings >= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double left = 1 - share;
        double shell = left > 0 ? share + left * Math.log(left) : 1;
        double resistance = share / ua + shell / (4 * Math.PI * ICE_CONDUCTIVITY * length);
        return waterMass * FUSION * resistance / -surroundings;
    }

    /** Further time, from 0 °C, until all is ice, s. */
    public static double timeToSolid(double waterMass, double length, double ua, double surroundings) {
        return timeToIce(1, waterMass, length, ua, surroundings);
    }
}
