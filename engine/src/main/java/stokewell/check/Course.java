package stokewell.check;

/**
 * How a drill went, from the fault on: the hottest water of any pickup, where that water boils, the hottest metal.
 *
 * @param after   s from the fault, rising
 * @param water   K
 * @param boiling boiling point of that water, K
 * @param metal   K
 */
public record Course(float[] after, float[] water, float[] boiling, float[] metal) {

    static final Course NONE = new Course(new float[0], new float[0], new float[0], new float[0]);

    /** Number of samples. */
    public int size() {
        return after.length;
    }
}
