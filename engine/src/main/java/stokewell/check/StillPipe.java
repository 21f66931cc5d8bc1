package stokewell.check;

import stokewell.loop.Freezing;
import stokewell.rig.Pipe;
import stokewell.transfer.Conduction;

/** Water that stands still in a pipe, in the cold. */
final class StillPipe {

    /** Of the water as ice when nothing passes any more: common practice, no source. */
    private static final double PLUGGED = 0.5;

    private static final double K = 273.15;
    private static final double WATER = 4.19e6;
    private static final double STEEL = 7800 * 480;
    /** Films round a pipe, W/(m2 K): still air by convection and radiation, wind outdoors; common practice, no source. */
    private static final double INDOORS = 10;

    private static final double LAGGED_INDOORS = 9;
    private static final double OUTDOORS = 20;

    private final Pipe pipe;
    private final double outer;
    private final double ua;

    StillPipe(Pipe pipe) {
        this.pipe = pipe;
        outer = pipe.bore() + 2 * pipe.wall();
        boolean out = pipe.where() == Pipe.Where.OUTDOORS;
        ua = pipe.insulation() > 0
                ? pipe.length()
                        * Conduction.pipeLoss(
                                outer / 2,
                                pipe.insulation(),
                                pipe.insulationConductivity(),
                                out ? OUTDOORS : LAGGED_INDOORS)
                : pipe.length() * Math.PI * outer * (out ? OUTDOORS : INDOORS);
    }

    /** Until its water is at 0 °C, s. @param water now, K @param around it, K */
    double toFreezing(double water, double around) {
        double metal = Math.PI / 4 * (outer * outer - pipe.bore() * pipe.bore()) * pipe.length();
        return Freezing.timeToZero(WATER * pipe.volume() + STEEL * metal, ua, water - K, around - K);
    }

    /** From 0 °C until it is plugged, s. @param around it, K */
    double toPlug(double around) {
        return Freezing.timeToIce(PLUGGED, pipe.volume() * 1000, pipe.length(), ua, around - K);
    }
}
