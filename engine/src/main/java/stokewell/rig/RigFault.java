package stokewell.rig;

/** A rig that cannot be built. Holds facts in SI; the edge adds file and line and words it in the user's units. */
public final class RigFault extends IllegalArgumentException {

    public final String part;
    public final String entry;
    /** The offending value, SI; {@code NaN} where the fault is not one of a number. */
    public final double value;

    public final Dimension dimension;
    /** Limits, SI; infinite where the fault is not one of range. */
    public final double low;

    public final double high;
    public final String why;
    public final String remedy;

    RigFault(String part, String entry, double value, Dimension dimension, double low, double high) {
        super(part + ": " + entry + " is " + value + " " + dimension.unit + ", allowed " + low + " to " + high);
        this.part = part;
        this.entry = entry;
        this.value = value;
        this.dimension = dimension;
        this.low = low;
        this.high = high;
        this.why = "";
        this.remedy = "";
    }

    /** A fault that is not one of range: two entries that do not fit each other, a missing part. */
    public RigFault(String part, String entry, String why, String remedy) {
        super(part + ": " + entry + ": " + why + ". " + remedy);
        this.part = part;
        this.entry = entry;
        this.value = Double.NaN;
        this.dimension = Dimension.NONE;
        this.low = Double.NEGATIVE_INFINITY;
        this.high = Double.POSITIVE_INFINITY;
        this.why = why;
        this.remedy = remedy;
    }
}
