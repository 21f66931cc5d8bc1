package stokewell.check;

import static stokewell.transfer.Radiation.SIGMA;

/**
 * A chimney in which tar burns: how hot a bare connector gets and what it sends to wood beside it. The gas is that of the
 * test that chimneys for solid fuel must stand, 1149 °C (2100 °F) for ten minutes (UL 103 HT, from memory).
 *
 * <p>A thin wall between gas and room: convection and the glow of the gas in, convection and radiation out, at rest. What wood
 * gets is that radiation thinned by distance as from a long cylinder, {@code r / (r + d)}. Wood lights by a spark from 12.5
 * kW/m² on in minutes, and chars from about 4 (fire safety engineering's usual figures, from memory).
 */
final class ChimneyFire {

    /** Gas of a burning chimney, K. */
    static final double GAS = 1422;
    /** How long tar burns in a drill, s: 5 to 30 minutes are told of. */
    static final double LASTS = 15 * 60;
    /** Flux at which wood is lit by a spark, W/m2. */
    static final double LIGHTS = 12500;
    /** Flux that wood bears without charring, W/m2. */
    static final double BEARS = 4000;

    /** Gas to wall in a roaring flue, W/(m2 K), and emissivity of sooty flame in a pipe of a hand's breadth: practice. */
    private static final double INSIDE = 30;

    private static final double FLAME = 0.3;
    /** Wall to room, W/(m2 K), and a black pipe: practice. */
    private static final double OUTSIDE = 10;

    private static final double BLACK = 0.9;

    private ChimneyFire() {}

    /** Wall of a bare connector round gas of this temperature in a room of that, K. */
    static double wall(double gas, double room) {
        double low = room;
        double high = gas;
        for (int i = 0; i < 60; i++) {
            double t = 0.5 * (low + high);
            double in = INSIDE * (gas - t) + FLAME * SIGMA * (fourth(gas) - fourth(t));
            double out = OUTSIDE * (t - room) + BLACK * SIGMA * (fourth(t) - fourth(room));
            if (in > out) low = t;
            else high = t;
        }
        return 0.5 * (low + high);
    }

    /** What wood beside a connector gets, W/m2. @param distance from the pipe's face, m */
    static double flux(double wall, double room, double diameter, double distance) {
        double radius = 0.5 * diameter;
        return BLACK * SIGMA * (fourth(wall) - fourth(room)) * radius / (radius + distance);
    }

    /** The distance at which no more than this arrives, m. */
    static double distance(double wall, double room, double diameter, double flux) {
        double radius = 0.5 * diameter;
        return Math.max(0, radius * (BLACK * SIGMA * (fourth(wall) - fourth(room)) / flux - 1));
    }

    private static double fourth(double t) {
        return t * t * t * t;
    }
}
