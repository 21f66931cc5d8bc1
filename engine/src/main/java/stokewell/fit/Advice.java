package stokewell.fit;

/**
 * What would tell a number better.
 *
 * @param knob   the number
 * @param spot   a sensor there, as good as the others; null for as many days again with the sensors there are
 * @param before half the width of its interval now, of the factor's logarithm
 * @param after  with that
 */
public record Advice(Knob knob, Spot spot, double before, double after) {}
