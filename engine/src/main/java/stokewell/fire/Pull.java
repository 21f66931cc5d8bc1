package stokewell.fire;

/** The draft of a stack, and the air that it pulls through inlet and flue. */
final class Pull {

    /** Smooths the square root of draft through zero, Pa. */
    private static final double BLUR = 0.3;

    private final Fire.Sizes size;
    private final Inlet inlet;

    /** Pa. */
    double draft;
    /** Air once it flows, kg/s. */
    double flow;

    private double plus;
    private double resistance;
    private double opening;

    /** Slopes of the flow: by the mean of 1/T along the stack, negative; by its mean T; by the air outdoors; by the body. */
    double byLightness;

    double byMean;
    double byOutdoors;
    double byBody;

    Pull(Fire.Sizes size, Inlet inlet) {
        this.size = size;
        this.inlet = inlet;
    }

    void at(Stack stack, double outdoors, double body) {
        double mean = 0;
        double lightness = 0;
        for (double t : stack.mean) {
            mean += t;
            lightness += 1 / t;
        }
        mean /= stack.pieces;
        draft = size.draftFactor() * (1 / outdoors - lightness / stack.pieces);
        plus = 0.5 * (draft + Math.sqrt(draft * draft + BLUR * BLUR));
        opening = inlet.opening(body);
        resistance = size.inletResistance() / (opening * opening) + size.flueResistance() * mean;
        flow = Math.sqrt(plus / resistance);
    }

    /** The slopes, after {@link #at} for the same values. */
    void slopes(double outdoors, double body) {
        double perDraft = 0.5 * (1 + draft / Math.sqrt(draft * draft + BLUR * BLUR));
        byLightness = 0.5 * flow / plus * perDraft * size.draftFactor();
        double byResistance = 0.5 * flow / resistance;
        byMean = -byResistance * size.flueResistance();
        byOutdoors = -byLightness / (outdoors * outdoors);
        byBody = byResistance * 2 * size.inletResistance() / (opening * opening * opening) * inlet.slope(body);
    }
}
