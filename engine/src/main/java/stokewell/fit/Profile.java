package stokewell.fit;

/**
 * How the misfit rises as one knob is held away from its best value and all else fitted anew.
 *
 * @param factor on what the rig file says, from low to high
 * @param rise   of the squared misfit, readings and what was known before together, over what the errors are wider
 * @param told   the part of it that the readings make
 * @param low    lower end of the 90 % interval by this curve; 0 where it does not rise enough
 * @param high   upper end; infinite where it does not rise enough
 */
public record Profile(Knob knob, double[] factor, double[] rise, double[] told, double low, double high) {

    /** Rise that a 90 % interval needs: the square of 1.645. */
    static final double RISE = 2.71;

    /** Whether the readings leave it flat: what the rig file says is all that holds the number. */
    public boolean isFlat() {
        return told[0] < RISE && told[told.length - 1] < RISE;
    }
}
