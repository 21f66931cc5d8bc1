package stokewell.fit;

import java.util.List;
import stokewell.matter.Wood;

/**
 * A load of wood in a comparison of winters.
 *
 * @param time     s since 1970 on the clock of the place, standard time all year
 * @param mass     as fired, kg
 * @param moisture water over all the wood, 0 to 1; NaN where not measured
 */
public record WoodLoad(double time, double mass, double moisture) {

    /** Moisture that wood is told at where it was not measured, and that all results are told at. */
    public static final double TOLD_MOISTURE = 0.20;

    /** Between softwood and hardwood, J per dry kg: the species of a load is seldom known, and it differs by 4 %. */
    private static final double NET_DRY = 5.1 * 3.6e6;

    /** Net heat of a kilogram at {@link #TOLD_MOISTURE}, J/kg. */
    public static final double TOLD_HEAT = Wood.netHeat(NET_DRY, TOLD_MOISTURE);

    /**
     * Net heat, J.
     *
     * @param otherwise moisture to take where none was measured
     */
    public double heat(double otherwise) {
        return mass * Wood.netHeat(NET_DRY, Double.isNaN(moisture) ? otherwise : moisture);
    }

    /** Share of the mass whose moisture was measured. */
    public static double measured(List<WoodLoad> loads) {
        double all = 0;
        double known = 0;
        for (WoodLoad l : loads) {
            all += l.mass;
            if (!Double.isNaN(l.moisture)) known += l.mass;
        }
        return all == 0 ? 0 : known / all;
    }

    /** Mean moisture of the mass whose moisture was measured; NaN where none was. */
    public static double meanMoisture(List<WoodLoad> loads) {
        double water = 0;
        double known = 0;
        for (WoodLoad l : loads) {
            if (Double.isNaN(l.moisture)) continue;
            water += l.mass * l.moisture;
            known += l.mass;
        }
        return water / known;
    }
}
