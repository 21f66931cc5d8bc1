package stokewell.loop;

/** The pull of warm water: what drives a loop with its pump dead. */
public final class Thermosiphon {

    /** Standard gravity, m/s². */
    public static final double GRAVITY = 9.80665;

    private Thermosiphon() {}

    /**
     * Pressure that drives the loop in the order in which its segments are listed, Pa: {@code −g ∮ρ dz}.
     *
     * @param density mean density of each segment, kg/m³
     * @param rise how far each segment's end is above its start, m; the rises of a closed loop sum to zero
     */
    public static double head(double[] density, double[] rise) {
        double sum = 0;
        for (int i = 0; i < density.length; i++) {
            sum += density[i] * rise[i];
        }
        return -GRAVITY * sum;
    }

    /** Pull of a hot riser against a cold downcomer, Pa. */
    public static double head(double coldDensity, double hotDensity, double height) {
        return GRAVITY * (coldDensity - hotDensity) * height;
    }

    /**
     * Steady flow of a uniform loop heated low and cooled high, laminar all round, by equating {@code ρ β g H P/(m c)}
     * with Hagen and Poiseuille's loss; exact within the Boussinesq approximation. An oracle for the network.
     *
     * @param power heat taken in and given off, W
     * @param height middle of the cooler above the middle of the heater, m
     * @param length of the whole loop, m
     * @param bore inside diameter, m
     * @param density kg/m³
     * @param expansion volumetric expansion coefficient, 1/K
     * @param viscosity dynamic, Pa s
     * @param specificHeat J/(kg K)
     * @return mass flow, kg/s; check that its Reynolds number is below 2000
     */
    public static double laminarFlow(
            double power,
            double height,
            double length,
            double bore,
            double density,
            double expansion,
            double viscosity,
            double specificHeat) {
        double drive = density * expansion * GRAVITY * height * power / specificHeat;
        double resistance = 128 * viscosity * length / (Math.PI * density * Math.pow(bore, 4));
        return Math.sqrt(drive / resistance);
    }

    /**
     * Steady flow of the same loop in any regime and with fittings, by bisection; for sizing, not for hot loops.
     *
     * @param roughness m
     * @param k sum of the loss coefficients of the fittings
     * @return mass flow, kg/s
     */
    public static double steadyFlow(
            double power,
            double height,
            double length,
            double bore,
            double roughness,
            double k,
            double density,
            double expansion,
            double viscosity,
            double specificHeat) {
        if (!(power > 0 && height > 0)) {
            return 0;
        }
        double drive = density * expansion * GRAVITY * height * power / specificHeat;
        double low = 0;
        double high = laminarFlow(power, height, length, bore, density, expansion, viscosity, specificHeat) * 1.001;
        for (int i = 0; i < 200 && high - low > 1e-14 * high; i++) {
            double m = (low + high) / 2;
            double loss = length * Friction.pressureGradient(m, bore, roughness, density, viscosity)
                    + Fittings.pressureLoss(k, m, bore, density);
            if (m * loss < drive) {
                low = m;
            } else {
                high = m;
            }
        }
        return (low + high) / 2;
    }
}
