package stokewell.fit;

import java.util.List;

/** Anything with unknowns that says what should have been read: the model behind a least squares fit. */
public interface Response {

    /** What is to be estimated. */
    List<Unknown> unknowns();

    /**
     * What would be read.
     *
     * @param p values of the unknowns
     * @return one number a row of the observations, and behind them others that are read but not compared; null where the
     *     model has no answer for these values
     */
    double[] at(double[] p);

    /** The slope of every row by unknown j, where the model knows it without trying; null where it is to be tried. */
    default double[] slope(int j, double[] p) {
        return null;
    }

    /** Whether a run takes so long that slopes are rather mended than tried anew. */
    default boolean isDear() {
        return false;
    }
}
