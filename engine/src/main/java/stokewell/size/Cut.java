package stokewell.size;

/**
 * A plate to cut.
 *
 * @param what      it becomes
 * @param count     how many of it
 * @param across    width of a rectangle, or diameter of a disc, m
 * @param along     length of a rectangle, m; 0 for a disc
 * @param thickness m
 */
public record Cut(String what, int count, double across, double along, double thickness) {

    /** Whether it is a disc. */
    public boolean disc() {
        return along == 0;
    }

    /** Area of all of them, m². */
    public double area() {
        return count * (disc() ? Math.PI / 4 * across * across : across * along);
    }

    /** Volume of all of them, m³. */
    public double volume() {
        return area() * thickness;
    }
}
