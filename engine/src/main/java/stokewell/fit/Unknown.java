package stokewell.fit;

/**
 * A number to be estimated, with what was known of it before.
 *
 * @param name   short, one word
 * @param words  what it is
 * @param before most likely value before anything is measured
 * @param spread standard deviation of that
 * @param low    least value that is tried
 * @param high   greatest
 * @param step   for its finite difference; 0 where the model gives the slope itself
 */
public record Unknown(String name, String words, double before, double spread, double low, double high, double step) {

    double held(double value) {
        return Math.max(low, Math.min(high, value));
    }
}
