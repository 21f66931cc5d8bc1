package stokewell.file;

/** A text that is not the quantity it should be. */
public final class QuantityFault extends IllegalArgumentException {

    /** What is wrong. */
    public final String what;
    /** What would be right. */
    public final String right;

    /** A fault and its mending, each a sentence. */
    public QuantityFault(String what, String right) {
        super(what + " " + right);
        this.what = what;
        this.right = right;
    }
}
