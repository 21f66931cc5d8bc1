package stokewell.solve;

/**
 * How exact a step has to be. The error weight of unknown i is
 * {@code absolute * scale(i) + relative * max(|y_i| before, |y_i| after)}, and a step is good when the root mean square of
 * error over weight, taken over the unknowns with a finite scale, is at most 1.
 *
 * @param relative part that grows with the unknown, 0 or more; leave 0 for temperatures in kelvin
 * @param absolute part that multiplies {@link Equations#scale}, above 0
 */
public record Tolerances(double relative, double absolute) {

    public Tolerances {
        if (!(relative >= 0 && relative < 1)) {
            throw new IllegalArgumentException("Tolerances: relative is " + relative + ", allowed 0 to 1");
        }
        if (!(absolute > 0 && absolute < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("Tolerances: absolute is " + absolute + ", allowed above 0");
        }
    }

    /** No relative part: the error allowed in y_i is absolute * scale(i), whatever y_i is. */
    public static Tolerances absolute(double absolute) {
        return new Tolerances(0, absolute);
    }
}
