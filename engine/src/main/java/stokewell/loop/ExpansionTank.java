package stokewell.loop;

/** Where the grown water goes: a closed vessel with a gas cushion, or an open header. Pressures absolute, Pa. */
public final class ExpansionTank {

    private ExpansionTank() {}

    /**
     * Growth of the water, m³.
     *
     * @param content of the system when cold, m³
     * @param coldDensity kg/m³
     * @param hotDensity kg/m³
     */
    public static double expansion(double content, double coldDensity, double hotDensity) {
        return content * (coldDensity / hotDensity - 1);
    }

    /**
     * Smallest vessel, m³: {@code V = (Ve + Vr) pe/(pe − p0)}. EN 12828 in absolute pressures (from memory).
     *
     * @param expansion Ve, m³
     * @param reserve Vr, cold water held from the start, m³; see {@link #reserve}
     * @param precharge p0, Pa abs
     * @param highest pe, design end pressure, below the relief valve's, Pa abs
     */
    public static double vesselVolume(double expansion, double reserve, double precharge, double highest) {
        if (!(highest > precharge && precharge > 0)) {
            throw new IllegalArgumentException("no room for the water: precharge " + precharge
                    + " Pa and highest pressure " + highest + " Pa, both absolute");
        }
        return (expansion + reserve) / (1 - precharge / highest);
    }

    /**
     * Smallest vessel that still takes the growth when it is filled to a pressure over its precharge, m³: the gas law from
     * filling to end, {@code V = Ve / (p0/pf − p0/pe)}.
     *
     * @param expansion Ve, m³
     * @param precharge p0, Pa abs
     * @param filled pf, cold, Pa abs; below the precharge the vessel is still empty
     * @param highest pe, over pf, Pa abs
     */
    public static double filledVolume(double expansion, double precharge, double filled, double highest) {
        return expansion / (precharge / Math.max(precharge, filled) - precharge / highest);
    }

    /** Water held in reserve: 0.5 % of the content, 3 L at the least. EN 12828 (from memory). */
    public static double reserve(double content) {
        return Math.max(0.005 * content, 0.003);
    }

    /**
     * Pressure in a vessel whose gas keeps its temperature, Pa abs.
     *
     * @param vessel its whole volume, m³
     * @param precharge Pa abs, with no water in it
     * @param taken water in it, below {@code vessel}, m³
     */
    public static double pressure(double vessel, double precharge, double taken) {
        return precharge * vessel / (vessel - taken);
    }

    /** Derivative of {@link #pressure} by the water taken, Pa/m³. */
    public static double pressureSlope(double vessel, double precharge, double taken) {
        double gas = vessel - taken;
        return precharge * vessel / (gas * gas);
    }

    /** Water in the vessel at a pressure, m³; 0 below the precharge. */
    public static double taken(double vessel, double precharge, double pressure) {
        return Math.max(0, vessel * (1 - precharge / pressure));
    }

    /**
     * What an open header must hold to its overflow at the least, m³: what the water grows, and 5 % of the content in all.
     * Common practice.
     */
    public static double headerVolume(double content, double expansion) {
        return Math.max(expansion, 0.05 * content);
    }
}
