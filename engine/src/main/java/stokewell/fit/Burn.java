package stokewell.fit;

/**
 * A load of wood in the readings' time.
 *
 * @param time  s on the weather's clock
 * @param mass  kg as it went in; where it was not noted, the usual load
 * @param noted whether somebody wrote it down; else only the stove's sensor tells of it
 */
public record Burn(double time, double mass, boolean noted) {}
