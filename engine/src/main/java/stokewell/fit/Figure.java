package stokewell.fit;

/**
 * A number with its uncertainty.
 *
 * @param value likeliest
 * @param half  half the width of its 90 % interval
 */
public record Figure(double value, double half) {

    public double low() {
        return value - half;
    }

    public double high() {
        return value + half;
    }
}
