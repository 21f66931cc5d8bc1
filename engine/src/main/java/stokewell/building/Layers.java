package stokewell.building;

import java.util.List;

/**
 * U-values of plane walls, roofs and floors by ISO 6946, framed ones by its combined method: the mean of a resistance that is
 * too high (no heat crosses between sections) and one that is too low (every layer at one temperature). Metal framing that
 * bridges insulation is outside the method.
 */
public final class Layers {

    private Layers() {}

    /**
     * One layer, whole or crossed by a frame. The frame of one band stands anywhere relative to that of another.
     *
     * @param main between the frame
     * @param frame the studs, joists or mortar
     * @param frameShare share of the area that the frame takes, 0 to 1
     */
    public record Band(Layer main, Layer frame, double frameShare) {

        public Band {
            if (!(frameShare >= 0 && frameShare <= 1)) {
                throw new IllegalArgumentException("a frame cannot take " + frameShare + " of a wall");
            }
        }

        /** A layer without a frame. */
        public static Band whole(Layer layer) {
            return new Band(layer, layer, 0);
        }

        /** The plain layer that conducts (lower limit of resistance) and holds as much. */
        public Layer equivalent() {
            if (frameShare == 0) {
                return main;
            }
            double conductance = (1 - frameShare) / main.resistance() + frameShare / frame.resistance();
            return new Layer(1 / conductance, (1 - frameShare) * main.capacity() + frameShare * frame.capacity());
        }
    }

    /**
     * Resistance of a framed wall, films included.
     *
     * @param upper limit, m² K/W
     * @param lower limit, m² K/W
     */
    public record Resistance(double upper, double lower) {

        /** m² K/W, with an uncertainty of at most half the gap between the limits. */
        public double mean() {
            return (upper + lower) / 2;
        }

        /** W/(m² K). */
        public double u() {
            return 1 / mean();
        }
    }

    /** U-value of plain layers, W/(m² K), with the films given, m² K/W. */
    public static double u(double insideFilm, List<Layer> layers, double outsideFilm) {
        double sum = insideFilm + outsideFilm;
        for (Layer layer : layers) {
            sum += layer.resistance();
        }
        return 1 / sum;
    }

    /** Both limits of the resistance of framed layers, films given, m² K/W. ISO 6946 section 6.7.2. */
    public static Resistance framed(double insideFilm, List<Band> bands, double outsideFilm) {
        double lower = insideFilm + outsideFilm;
        for (Band band : bands) {
            lower += band.equivalent().resistance();
        }
        return new Resistance(1 / conductance(bands, 0, insideFilm + outsideFilm), lower);
    }

    /** Sum over all sections of the wall of share / resistance, W/(m² K). */
    private static double conductance(List<Band> bands, int from, double before) {
        if (from == bands.size()) {
            return 1 / before;
        }
        Band band = bands.get(from);
        double through = conductance(bands, from + 1, before + band.main().resistance());
        if (band.frameShare() == 0) {
            return through;
        }
        return (1 - band.frameShare()) * through
                + band.frameShare()
                        * conductance(bands, from + 1, before + band.frame().resistance());
    }
}
